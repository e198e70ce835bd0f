// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.NetLabel;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.netlist.Wire;

/**
 * Finds the net and the pin under a spot of a page. Each page is laid over with square cells; a cell lists the pieces
 * of wire, pins and labels in it, and a question looks only at the cells about the spot. Any thread may use it.
 */
public final class NetLocator {

    /** Side of a cell in points: a few grid steps of a common sheet, so that a cell holds a handful of pieces. */
    private static final double CELL = 24;

    private final Map<Long, List<Piece>> cells = new HashMap<>();

    private NetLocator() {
    }

    /** Lays out the index, once for each netlist. */
    public static NetLocator of(Netlist netlist) {
        NetLocator locator = new NetLocator();
        Map<String, Net> nets = new HashMap<>();
        for (Net net : netlist.nets()) {
            nets.put(net.id(), net);
            for (Wire wire : net.wires()) {
                for (int i = 1; i < wire.points().size(); i++) {
                    locator.addLine(wire.page(), wire.points().get(i - 1), wire.points().get(i), net);
                }
            }
            for (NetLabel label : net.labels()) {
                locator.add(label.page(), new Piece(label.at(), label.at(), net, null, null));
            }
        }
        for (Part part : netlist.parts()) {
            for (Pin pin : part.pins()) {
                if (pin.at() != null) {
                    locator.add(pin.page(), new Piece(pin.at(), pin.at(), nets.get(pin.net()), part, pin));
                }
            }
        }
        return locator;
    }

    /**
     * The net nearest to a spot.
     *
     * @param page      1-based
     * @param at        the spot
     * @param tolerance the greatest distance, in points
     */
    public Optional<Net> netAt(int page, Point at, double tolerance) {
        return nearest(page, at, tolerance, false).map(Piece::net);
    }

    /** The pin nearest to a spot, as {@link #netAt}; it may be on no net. */
    public Optional<PinHit> pinAt(int page, Point at, double tolerance) {
        return nearest(page, at, tolerance, true).map(p -> new PinHit(p.part(), p.pin(), p.net()));
    }

    /**
     * A pin under a spot.
     *
     * @param part the part it belongs to
     * @param pin  the pin
     * @param net  its net, or null
     */
    public record PinHit(Part part, Pin pin, Net net) {
    }

    private Optional<Piece> nearest(int page, Point at, double tolerance, boolean pins) {
        Piece best = null;
        double least = tolerance;
        for (long cx = cell(at.x() - tolerance); cx <= cell(at.x() + tolerance); cx++) {
            for (long cy = cell(at.y() - tolerance); cy <= cell(at.y() + tolerance); cy++) {
                for (Piece piece : cells.getOrDefault(key(page, cx, cy), List.of())) {
                    if (pins ? piece.pin() == null : piece.net() == null) {
                        continue;
                    }
                    double d = piece.distance(at);
                    if (d < least || best == null && d <= least) {
                        best = piece;
                        least = d;
                    }
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** A long line goes in as pieces no longer than a cell, so that a diagonal does not fill a whole page of cells. */
    private void addLine(int page, Point a, Point b, Net net) {
        int parts = (int) Math.max(1, Math.ceil(a.distance(b) / CELL));
        Point from = a;
        for (int i = 1; i <= parts; i++) {
            double t = (double) i / parts;
            Point to = i == parts ? b : new Point(a.x() + t * (b.x() - a.x()), a.y() + t * (b.y() - a.y()));
            add(page, new Piece(from, to, net, null, null));
            from = to;
        }
    }

    private void add(int page, Piece piece) {
        long x1 = cell(Math.max(piece.a().x(), piece.b().x()));
        long y1 = cell(Math.max(piece.a().y(), piece.b().y()));
        for (long cx = cell(Math.min(piece.a().x(), piece.b().x())); cx <= x1; cx++) {
            for (long cy = cell(Math.min(piece.a().y(), piece.b().y())); cy <= y1; cy++) {
                cells.computeIfAbsent(key(page, cx, cy), k -> new ArrayList<>(4)).add(piece);
            }
        }
    }

    private static long cell(double v) {
        return (long) Math.floor(v / CELL);
    }

    private static long key(int page, long cx, long cy) {
        return (long) page << 40 ^ (cx & 0xFFFFF) << 20 ^ cy & 0xFFFFF;
    }

    private record Piece(Point a, Point b, Net net, Part part, Pin pin) {

        double distance(Point p) {
            return p.nearestOn(a, b).distance(p);
        }
    }
}
