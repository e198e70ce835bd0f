// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.follow;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.trace.TracedPin;

/**
 * A signal followed from a place, as a tree of nets. Each net has its branches in one spot of the tree, the one with the
 * fewest parts before it; where it is met again it is a leaf that says where it stands.
 *
 * @param from    the place
 * @param options what it was followed through, which way and how far
 * @param root    the net at the place
 * @param cut     whether a limit of the options ended it somewhere
 */
public record Followed(Place from, FollowOptions options, Node root, boolean cut) {

    /**
     * A net that the signal reaches.
     *
     * @param net   the net
     * @param kind  what it carries
     * @param step  how the signal gets here from the net above, in the direction of the signal: upstream its
     *              {@link Step#out} lies on the net above; null at the root
     * @param depth how many parts the signal has gone through, 0 at the root
     * @param pins  all pins on the net, drivers first
     * @param next  the nets it goes on to, in the order of the parts between
     * @param stops why it ends: at the net as a whole (then {@code next} is empty), or at single pins
     */
    public record Node(Net net, NetKind kind, Step step, int depth, List<TracedPin> pins, List<Node> next,
            List<Stop> stops) {

        public Node {
            pins = List.copyOf(pins);
            next = List.copyOf(next);
            stops = List.copyOf(stops);
        }

        /** Whether the net's branches stand in another spot of the tree. */
        public boolean shownElsewhere() {
            return stops.stream().anyMatch(s -> s.kind() == StopKind.SHOWN);
        }
    }

    /** All nodes in the order in which the tree is read, the root first. */
    public List<Node> nodes() {
        List<Node> all = new ArrayList<>();
        Deque<Node> open = new ArrayDeque<>(List.of(root));
        while (!open.isEmpty()) {
            Node node = open.pop();
            all.add(node);
            for (int i = node.next().size() - 1; i >= 0; i--) {
                open.push(node.next().get(i));
            }
        }
        return all;
    }

    /** The nodes from the root to a node of this tree, both included; empty for another node. */
    public List<Node> wayTo(Node wanted) {
        List<Node> way = new ArrayList<>();
        return leadsTo(root, wanted, way) ? way : List.of();
    }

    private static boolean leadsTo(Node node, Node wanted, List<Node> way) {
        way.add(node);
        if (node == wanted) {
            return true;
        }
        for (Node next : node.next()) {
            if (leadsTo(next, wanted, way)) {
                return true;
            }
        }
        way.remove(way.size() - 1);
        return false;
    }
}
