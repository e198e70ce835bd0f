// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.board;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

import org.jgrapht.alg.util.UnionFind;

import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.LabelKind;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.NetLabel;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.netlist.Wire;

/**
 * A net in pieces, with a cut: pieces of its wires, those through the cut in two, then its drawn pins, then its labels.
 * Pieces are in one group where the drawing joins them: where wires touch end to end or at a junction, where a pin or a
 * label is on a wire, and where labels have one text.
 */
final class NetPieces {

    /** How near two ends are drawn where they touch, in points: a line's width. */
    static final double TOUCH = 1;

    private final Net net;
    private final Spot cut;
    private final List<Pin> pins;
    /** For each piece of wire, the wire that it is part of. */
    private final List<Integer> wireOf = new ArrayList<>();
    private final List<Piece> pieces = new ArrayList<>();
    private final UnionFind<Integer> groups;

    /**
     * Lays a net out.
     *
     * @param net  the net
     * @param pins the pins on it
     * @param cut  the spot of the cut, on one of its wires
     * @throws RefusedException where several wires meet at the spot
     */
    NetPieces(Net net, List<Pin> pins, Spot cut) throws RefusedException {
        this.net = net;
        this.cut = cut;
        this.pins = pins.stream().filter(p -> p.at() != null).toList();
        layOut();
        groups = new UnionFind<>(new HashSet<>(IntStream.range(0, pieces.size()).boxed().toList()));
        joinTouching();
        joinNames();
    }

    int size() {
        return pieces.size();
    }

    /** The number of pieces of wire, which come first. */
    int wires() {
        return wireOf.size();
    }

    int wireOf(int piece) {
        return wireOf.get(piece);
    }

    /** The drawn pins; the first has the number {@link #wires}. */
    List<Pin> pins() {
        return pins;
    }

    /** The number of the first label. */
    int labels() {
        return wireOf.size() + pins.size();
    }

    Piece piece(int i) {
        return pieces.get(i);
    }

    boolean together(int i, int j) {
        return groups.inSameSet(i, j);
    }

    /** Pieces of wire, those through the cut in two; then pins; then labels. */
    private void layOut() throws RefusedException {
        List<Piece> there = new ArrayList<>();
        for (int w = 0; w < net.wires().size(); w++) {
            Wire wire = net.wires().get(w);
            for (int i = 1; i < wire.points().size(); i++) {
                Piece piece = new Piece(wire.page(), wire.points().get(i - 1), wire.points().get(i));
                boolean at = piece.page() == cut.page() && piece.distance(cut.at()) <= TOUCH;
                if (at) {
                    there.add(piece);
                }
                if (at && !piece.endsAt(cut.at(), TOUCH)) {
                    addPiece(w, new Piece(piece.page(), piece.a(), cut.at()));
                    addPiece(w, new Piece(piece.page(), cut.at(), piece.b()));
                } else {
                    addPiece(w, piece);
                }
            }
        }
        refuseJoint(there);
        pins.forEach(p -> pieces.add(new Piece(p.page(), p.at(), p.at())));
        net.labels().forEach(l -> pieces.add(new Piece(l.page(), l.at(), l.at())));
    }

    private void addPiece(int wire, Piece piece) {
        pieces.add(piece);
        wireOf.add(wire);
    }

    /** At a corner two ends meet, and along a wire all run one way; anything more is a joint of several branches. */
    private void refuseJoint(List<Piece> there) throws RefusedException {
        boolean corner = there.size() == 2 && there.stream().allMatch(p -> p.endsAt(cut.at(), TOUCH));
        boolean along = there.stream().allMatch(p -> p.alongside(there.get(0)));
        boolean dot = net.junctions().stream().anyMatch(j -> isAtCut(j.page(), j.at()));
        if (!corner && (!along || dot)) {
            throw new RefusedException("several wires meet at " + cut.place().text()
                    + "; name a spot on the one that is cut, away from where they meet");
        }
    }

    private boolean isAtCut(int page, Point p) {
        return page == cut.page() && p.distance(cut.at()) <= TOUCH;
    }

    private void joinTouching() {
        int drawn = labels();
        for (int i = 0; i < drawn; i++) {
            for (int j = i + 1; j < drawn; j++) {
                if (touches(pieces.get(i), pieces.get(j))) {
                    groups.union(i, j);
                }
            }
        }
        for (int i = drawn; i < pieces.size(); i++) {
            int nearest = nearest(i, drawn);
            if (nearest >= 0) {
                groups.union(i, nearest);
            }
        }
    }

    private boolean touches(Piece s, Piece t) {
        if (s.page() != t.page() || !s.mayTouch(t, TOUCH)) {
            return false;
        }
        for (Point p : new Point[] {s.a(), s.b()}) {
            if (t.distance(p) <= TOUCH && !isAtCut(s.page(), p)) {
                return true;
            }
        }
        for (Point p : new Point[] {t.a(), t.b()}) {
            if (s.distance(p) <= TOUCH && !isAtCut(s.page(), p)) {
                return true;
            }
        }
        Point x = s.crossing(t);
        return x != null && !isAtCut(s.page(), x) && net.junctions().stream().anyMatch(j -> j.page() == s.page()
                && j.at().distance(x) <= 2 * TOUCH);
    }

    /** The piece of wire or pin on the same page that is nearest to a label, or -1. */
    private int nearest(int label, int drawn) {
        int best = -1;
        double least = Double.MAX_VALUE;
        for (int i = 0; i < drawn; i++) {
            double d = pieces.get(i).page() == pieces.get(label).page()
                    ? pieces.get(i).distance(pieces.get(label).a()) : Double.MAX_VALUE;
            if (d < least) {
                least = d;
                best = i;
            }
        }
        return best;
    }

    private void joinNames() {
        int first = labels();
        Map<String, Integer> bearers = new HashMap<>();
        for (int i = 0; i < net.labels().size(); i++) {
            NetLabel label = net.labels().get(i);
            if (label.kind() != LabelKind.BUS) {
                Integer other = bearers.putIfAbsent(label.text(), first + i);
                if (other != null) {
                    groups.union(first + i, other);
                }
            }
        }
    }

    /** A piece of wire on each side of the cut, the sides as far as they are told apart there. */
    List<Integer> endsAtCut() {
        List<Integer> ends = new ArrayList<>();
        for (int i = 0; i < wireOf.size(); i++) {
            Piece p = pieces.get(i);
            if (p.page() == cut.page() && p.endsAt(cut.at(), TOUCH)
                    && (ends.isEmpty() || ends.size() == 1 && !groups.inSameSet(ends.get(0), i))) {
                ends.add(i);
            }
        }
        return ends;
    }
}
