// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.probeleaf.trace.TracedPin;
import org.probeleaf.trace.follow.Followed.Node;
import org.probeleaf.trace.follow.Stop;
import org.probeleaf.trace.follow.StopKind;
import org.probeleaf.workbench.session.Route;

/** A row of the tree of a route: a net, a pin on it, or why the whole net is the end. */
sealed interface RouteRow {

    /** The net that it is about. */
    Node node();

    /** A net that is reached, below the pin at which the way to it leaves the net before. */
    record OfNet(Node node) implements RouteRow {
    }

    /**
     * A pin on a net.
     *
     * @param stop why the signal is not followed on from it, or null
     */
    record OfPin(Node node, TracedPin pin, Stop stop) implements RouteRow {
    }

    /** Why the signal is not followed over the net. */
    record OfEnd(Node node, Stop stop) implements RouteRow {
    }

    /** The rows under a net: its pins but for the one of arrival, then why it ends. */
    static List<RouteRow> under(Route route, Node node) {
        List<RouteRow> rows = new ArrayList<>();
        TracedPin arrival = route.arrival(node);
        for (TracedPin pin : node.pins()) {
            if (!pin.equals(arrival)) {
                rows.add(new OfPin(node, pin, stopAt(node, pin)));
            }
        }
        node.stops().stream().filter(s -> s.at() == null).forEach(s -> rows.add(new OfEnd(node, s)));
        return rows;
    }

    /** The rows under a row. */
    static List<RouteRow> under(Route route, RouteRow row) {
        if (row instanceof OfNet net) {
            return under(route, net.node());
        }
        if (row instanceof OfPin pin) {
            List<RouteRow> rows = new ArrayList<>();
            pin.node().next().stream().filter(n -> pin.pin().equals(route.departure(n)))
                    .forEach(n -> rows.add(new OfNet(n)));
            return rows;
        }
        return List.of();
    }

    /** Nobody asks why what was not asked for is not followed. */
    private static Stop stopAt(Node node, TracedPin pin) {
        return node.stops().stream().filter(s -> s.kind() != StopKind.NOT_ASKED && Objects.equals(s.at(), pin))
                .findFirst().orElse(null);
    }
}
