// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.session;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.probeleaf.job.JobState;
import org.probeleaf.job.mark.LabelMark;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.PartUnit;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.trace.NetLocator;
import org.probeleaf.trace.NetLocator.PinHit;
import org.probeleaf.trace.SignalGraph;
import org.probeleaf.trace.TracedPin;
import org.probeleaf.trace.board.BoardState;
import org.probeleaf.trace.follow.SignalNetwork;

/**
 * What is known of the job at one moment, ready to be asked from the display thread. Immutable.
 *
 * @param state    the job
 * @param network  the nets and the ways between them, or null before recognition
 * @param locator  what is under a spot, or null before recognition
 * @param ownNames net id to the name that the technician gave it
 * @param book     the part book that the graph was made by
 */
public record Facts(JobState state, SignalNetwork network, NetLocator locator, Map<String, String> ownNames,
        PartBook book) {

    /** How far a label may lie from the net it names, in points. */
    private static final double LABEL_REACH = 6;

    public Facts {
        ownNames = Map.copyOf(ownNames);
    }

    /** The facts after a change; the graph is kept where the netlist is the same. */
    static Facts of(JobState state, PartBook book, Facts before) {
        Netlist board = state.onBench();
        if (board == null) {
            return new Facts(state, null, null, Map.of(), book);
        }
        boolean same = before != null && before.state.onBench() == board && before.book == book
                && before.network != null;
        SignalNetwork network = same ? before.network : SignalNetwork.of(board, book);
        NetLocator locator = same ? before.locator : NetLocator.of(board);
        Map<String, String> names = new HashMap<>();
        for (LabelMark label : state.labels()) {
            locator.netAt(label.page(), label.at(), LABEL_REACH).ifPresent(n -> names.put(n.id(), label.text()));
        }
        return new Facts(state, network, locator, names, book);
    }

    /** Whether the sheets have been recognised. */
    public boolean recognised() {
        return network != null;
    }

    /** The pins of each net, or null before recognition. */
    public SignalGraph graph() {
        return network == null ? null : network.signals();
    }

    /** What is connected on the board on the bench, or null before recognition. */
    public Netlist netlist() {
        return state.onBench();
    }

    /** The board on the bench, or null before recognition. */
    public BoardState board() {
        return state.boards().thisBoard();
    }

    /** What to call a net: the technician's name for it, else the sheet's, else its id. */
    public String title(Net net) {
        return ownNames.getOrDefault(net.id(), net.title());
    }

    /** The pins on a net, drivers first. */
    public List<TracedPin> pinsOn(Net net) {
        return network == null ? List.of() : graph().pinsOn(net.id());
    }

    /** The net with an id. */
    public Optional<Net> net(String id) {
        return network == null || id == null ? Optional.empty() : netlist().net(id);
    }

    /**
     * What is under a spot: a pin, else a net, else a part, else the spot alone.
     *
     * @param page  1-based
     * @param at    the spot, in points
     * @param reach how far off the ink it may be, in points
     */
    public Selection at(int page, Point at, double reach) {
        if (locator == null) {
            return Selection.spot(page, at);
        }
        Optional<PinHit> pin = locator.pinAt(page, at, reach).filter(h -> h.pin().at() != null);
        if (pin.isPresent()) {
            return Selection.pin(pin.get().part(), pin.get().pin(), pin.get().net());
        }
        Optional<Net> net = locator.netAt(page, at, reach);
        if (net.isPresent()) {
            return new Selection(page, at, netPlace(net.get(), page, at), net.get(), null, null);
        }
        return partAt(page, at).map(p -> new Selection(page, at, new Place.OfPart(p.ref()), null, p, null))
                .orElseGet(() -> Selection.spot(page, at));
    }

    /** A named net is called by its name; an unnamed one by the spot, since ids change with a new recognition. */
    private static Place netPlace(Net net, int page, Point at) {
        return net.name() != null ? new Place.OfNet(net.name()) : new Place.OnPage(page, at.x(), at.y());
    }

    /** The part whose body is at a spot, the smallest where they nest; also one of the drawing that is out. */
    public Optional<Part> partAt(int page, Point at) {
        Part best = null;
        double least = Double.MAX_VALUE;
        List<Part> all = new ArrayList<>();
        if (netlist() != null) {
            all.addAll(netlist().parts());
            all.addAll(board().removed());
        }
        for (Part part : all) {
            for (PartUnit unit : part.units()) {
                Box box = unit.box().grow(1.5);
                double area = box.width() * box.height();
                if (unit.page() == page && box.contains(at) && area < least) {
                    least = area;
                    best = part;
                }
            }
        }
        return Optional.ofNullable(best);
    }
}
