// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.follow;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Queue;

import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.trace.TracedPin;

/** Follows a signal breadth first, so that each net stands where the fewest parts lead to it. */
final class Follower {

    private final SignalNetwork network;
    private final FollowOptions options;
    private final Stops stops;
    private final Map<String, Growing> shown = new HashMap<>();
    private final Queue<Growing> open = new ArrayDeque<>();
    private int count;
    private boolean cut;

    Follower(SignalNetwork network, FollowOptions options) {
        this.network = network;
        this.options = options;
        this.stops = new Stops(network, options);
    }

    /** A node whose branches are still being found. */
    private static final class Growing {

        private final Net net;
        private final Step step;
        private final int depth;
        private final List<Growing> next = new ArrayList<>();
        private final List<Stop> stops = new ArrayList<>();

        Growing(Net net, Step step, int depth) {
            this.net = net;
            this.step = step;
            this.depth = depth;
        }
    }

    Followed follow(Place from, Net net) {
        Growing root = new Growing(net, null, 0);
        shown.put(net.id(), root);
        open.add(root);
        count = 1;
        while (!open.isEmpty()) {
            grow(open.remove());
        }
        return new Followed(from, options, grown(root), cut);
    }

    private void grow(Growing node) {
        NetKind kind = network.kind(node.net.id());
        if (kind.isSupply()) {
            node.stops.add(stops.supply(node.net, kind));
            return;
        }
        List<TracedPin> pins = network.signals().pinsOn(node.net.id());
        List<Step> ways = onward(node);
        if (node.step != null) {
            Stop whole = stops.whole(node.net, pins, ways);
            if (whole != null) {
                cut |= whole.kind() == StopKind.FAN_OUT;
                node.stops.add(whole);
                return;
            }
        }
        if (node.depth >= options.depth() && !ways.isEmpty()) {
            cut = true;
            node.stops.add(Stop.ofNet(StopKind.DEPTH, "followed through " + options.depth() + " parts, as far as was asked"));
            return;
        }
        for (Step way : ways) {
            branch(node, way);
        }
        stops.atPins(pins, arrival(node)).forEach(node.stops::add);
    }

    private void branch(Growing node, Step way) {
        String id = options.flow() == Flow.DOWNSTREAM ? way.toNet() : way.fromNet();
        if (count >= options.nets()) {
            if (!cut || node.stops.stream().noneMatch(s -> s.kind() == StopKind.SIZE)) {
                node.stops.add(Stop.ofNet(StopKind.SIZE, "more is not shown: " + options.nets() + " nets, as many as were asked for"));
            }
            cut = true;
            return;
        }
        count++;
        Growing next = new Growing(network.net(id), way, node.depth + 1);
        node.next.add(next);
        Growing before = network.kind(id).isSupply() ? null : shown.putIfAbsent(id, next);
        if (before == null) {
            open.add(next);
        } else {
            next.stops.add(Stop.ofNet(StopKind.SHOWN, shownAt(before)));
        }
    }

    /** The ways onward, one for each pin where the signal leaves the part, without the one that leads straight back. */
    private List<Step> onward(Growing node) {
        Map<TracedPin, Step> byEnd = new LinkedHashMap<>();
        boolean down = options.flow() == Flow.DOWNSTREAM;
        for (Step way : down ? network.waysFrom(node.net.id()) : network.waysTo(node.net.id())) {
            if (options.takes(way.kind()) && !way.undoes(node.step) && (down ? way.in() : way.out()).pin() != arrivalPin(node)) {
                byEnd.putIfAbsent(down ? way.out() : way.in(), way);
            }
        }
        return new ArrayList<>(byEnd.values());
    }

    private org.probeleaf.schematic.netlist.Pin arrivalPin(Growing node) {
        TracedPin pin = arrival(node);
        return pin == null ? null : pin.pin();
    }

    /** The pin at which the way came onto the node's net, or null at the root. */
    private TracedPin arrival(Growing node) {
        return node.step == null ? null : options.flow() == Flow.DOWNSTREAM ? node.step.out() : node.step.in();
    }

    private String shownAt(Growing before) {
        return before.step == null ? "already shown: this is where it began"
                : "already shown at " + arrival(before).place().text();
    }

    private Followed.Node grown(Growing node) {
        return new Followed.Node(node.net, network.kind(node.net.id()), node.step, node.depth,
                network.signals().pinsOn(node.net.id()), node.next.stream().map(this::grown).toList(), node.stops);
    }
}
