// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.follow;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.Set;

import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.trace.TracedPin;

/** Follows a signal breadth first, so that each net stands where the fewest parts lead to it. */
final class Follower {

    private final SignalNetwork network;
    private final FollowOptions options;
    private final Stops stops;
    private final Map<String, Growing> shown = new HashMap<>();
    private final Queue<Growing> open = new ArrayDeque<>();
    private final boolean down;
    private final Place from;
    private int count;
    private boolean cut;

    Follower(SignalNetwork network, FollowOptions options, Place from) {
        this.network = network;
        this.options = options;
        this.from = from;
        this.down = options.flow() == Flow.DOWNSTREAM;
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

    Followed follow(Net net) {
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
            node.stops.add(Stops.supply(node.net, kind));
            return;
        }
        List<TracedPin> pins = network.signals().pinsOn(node.net.id());
        List<Step> all = down ? network.waysFrom(node.net.id()) : network.waysTo(node.net.id());
        List<Step> onward = onward(node, all);
        Stop whole = node.step == null ? null : stops.whole(node.net, pins, onward);
        if (whole == null && node.depth >= options.depth() && !onward.isEmpty()) {
            whole = Stop.ofNet(StopKind.DEPTH, "followed through " + options.depth() + " parts, as far as was asked");
        }
        if (whole != null) {
            cut |= whole.kind() == StopKind.FAN_OUT || whole.kind() == StopKind.DEPTH;
            node.stops.add(whole);
            return;
        }
        for (Step way : onward) {
            if (count >= options.nets()) {
                cut = true;
                node.stops.add(Stop.ofNet(StopKind.SIZE, "more is not shown: " + options.nets()
                        + " nets are shown, as many as were asked for"));
                break;
            }
            branch(node, way);
        }
        node.stops.addAll(stops.atPins(pins, all, known(node)));
    }

    private void branch(Growing node, Step way) {
        String id = down ? way.toNet() : way.fromNet();
        count++;
        Growing next = new Growing(network.net(id), way, node.depth + 1);
        node.next.add(next);
        Stop driven = stops.driven(way);
        if (driven != null) {
            next.stops.add(driven);
            return;
        }
        Growing before = network.kind(id).isSupply() ? null : shown.putIfAbsent(id, next);
        if (before == null) {
            open.add(next);
        } else {
            next.stops.add(Stop.ofNet(StopKind.SHOWN, shownAt(before)));
        }
    }

    /** The ways onward, one for each section and net, without those that leave by the pin where the signal came. */
    private List<Step> onward(Growing node, List<Step> ways) {
        Map<List<Object>, Step> found = new LinkedHashMap<>();
        Pin came = arrival(node) == null ? null : arrival(node).pin();
        for (Step way : ways) {
            if (options.takes(way.kind()) && (down ? way.in() : way.out()).pin() != came) {
                String unit = way.unit() == null ? "" : way.unit().name();
                found.putIfAbsent(List.of(way.part().ref(), unit, down ? way.toNet() : way.fromNet()), way);
            }
        }
        return new ArrayList<>(found.values());
    }

    /** The pins at which no reason for an end is wanted: where the signal came in, and where it was asked about. */
    private Set<Pin> known(Growing node) {
        Set<Pin> pins = Collections.newSetFromMap(new IdentityHashMap<>());
        if (node.step != null) {
            pins.add(arrival(node).pin());
        } else if (from instanceof Place.OfPin) {
            network.places().endAt(from).pins().forEach(p -> pins.add(p.pin()));
        }
        return pins;
    }

    /** The pin at which the way came onto the node's net, or null at the root. */
    private TracedPin arrival(Growing node) {
        return node.step == null ? null : down ? node.step.out() : node.step.in();
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
