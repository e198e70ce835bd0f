// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.follow;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.Set;

import org.probeleaf.schematic.board.BoardChange;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.trace.TracedPin;
import org.probeleaf.trace.internal.PlaceResolver;

/**
 * The nets and pins that a signal reaches, with one pin lifted or one part out. Supplies are not part of it, nor nets
 * that an output drives anyway where the signal only comes through a passive part.
 */
final class Reach {

    private final SignalNetwork network;
    private final FollowOptions options;
    private final boolean down;
    private final Pin lifted;
    private final Part out;
    private final Set<String> nets = new LinkedHashSet<>();
    /** The pins at which a way arrived, also where it does not go on from there. */
    private final Map<Pin, TracedPin> arrived = new IdentityHashMap<>();
    private final List<Step> steps = new ArrayList<>();
    private final Queue<String> open = new ArrayDeque<>();

    private Reach(SignalNetwork network, FollowOptions options, BoardChange change) {
        this.network = network;
        this.options = options;
        this.down = options.flow() == Flow.DOWNSTREAM;
        this.lifted = change instanceof BoardChange.Lift lift ? pin(network, lift.pin()) : null;
        this.out = change instanceof BoardChange.Remove remove
                ? network.signals().netlist().part(remove.ref()).orElse(null) : null;
    }

    /**
     * What a signal reaches from a place.
     *
     * @param change a lift or a removal, or null for the board as it is
     */
    static Reach of(SignalNetwork network, Place from, FollowOptions options, BoardChange change) {
        Reach reach = new Reach(network, options, change);
        String net = network.signals().trace(from).net().id();
        if (from instanceof Place.OfPin place && pin(network, place) == reach.lifted) {
            reach.fromLifted(net);
        } else {
            reach.add(net);
        }
        reach.go();
        return reach;
    }

    Set<String> nets() {
        return nets;
    }

    /** The pins that are reached, net by net; those of nets that are not reached themselves come last. */
    List<TracedPin> pins() {
        List<TracedPin> all = new ArrayList<>();
        nets.forEach(n -> network.signals().pinsOn(n).stream().filter(this::reaches).forEach(all::add));
        arrived.values().stream().filter(p -> !nets.contains(p.pin().net())).sorted(TracedPin.BY_PLACE).forEach(all::add);
        return all;
    }

    boolean reaches(TracedPin pin) {
        return pin.pin() != lifted && !isOut(pin) && nets.contains(pin.pin().net()) || arrived.containsKey(pin.pin());
    }

    /** Lifting each pin and removing each part that hands the signal on, each once. */
    List<BoardChange> changes() {
        Set<BoardChange> changes = new LinkedHashSet<>();
        for (Step step : steps) {
            for (TracedPin pin : List.of(step.in(), step.out())) {
                if (pin.place() instanceof Place.OfPin place) {
                    changes.add(new BoardChange.Lift(place));
                }
                changes.add(new BoardChange.Remove(pin.part().ref()));
            }
        }
        return List.copyOf(changes);
    }

    private static Pin pin(SignalNetwork network, Place.OfPin place) {
        return network.signals().netlist().part(place.ref()).flatMap(p -> PlaceResolver.pin(p, place.pin())).orElse(null);
    }

    /** A lifted pin still works on its own part. */
    private void fromLifted(String net) {
        network.signals().pinsOn(net).stream().filter(p -> p.pin() == lifted).forEach(p -> arrived.put(lifted, p));
        for (Step step : down ? network.waysFrom(net) : network.waysTo(net)) {
            if (enters(step).pin() == lifted && options.takes(step.kind())) {
                arrive(step);
            }
        }
    }

    private void go() {
        while (!open.isEmpty()) {
            String net = open.remove();
            for (Step step : down ? network.waysFrom(net) : network.waysTo(net)) {
                if (options.takes(step.kind()) && enters(step).pin() != lifted && !isOut(step.in()) && !isOut(step.out())) {
                    steps.add(step);
                    arrive(step);
                }
            }
        }
    }

    private void arrive(Step step) {
        TracedPin end = down ? step.out() : step.in();
        arrived.put(end.pin(), end);
        boolean driven = down && step.kind().passive() && network.alwaysDriving(end.pin().net()).stream()
                .anyMatch(p -> p.pin() != lifted && !isOut(p));
        if (end.pin() != lifted && !driven) {
            add(end.pin().net());
        }
    }

    private TracedPin enters(Step step) {
        return down ? step.in() : step.out();
    }

    private void add(String net) {
        if (!network.kind(net).isSupply() && nets.size() < options.nets() && nets.add(net)) {
            open.add(net);
        }
    }

    private boolean isOut(TracedPin pin) {
        return pin.part() == out;
    }
}
