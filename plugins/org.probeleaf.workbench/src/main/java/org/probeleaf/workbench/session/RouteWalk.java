// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.session;

import java.util.Optional;

import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.trace.TracedPin;
import org.probeleaf.trace.follow.Followed.Node;

/** Walks along a route, net by net in the order of its numbers. */
public final class RouteWalk {

    private RouteWalk() {
    }

    /** Goes to the next net, or to the one before where {@code by} is negative; round at the ends. */
    public static void step(SheetSession session, int by) {
        session.routes().route().filter(r -> r.nodes().size() > 1).ifPresent(r ->
                standAt(session, Math.floorMod(session.routes().at() + by, r.nodes().size())));
    }

    /** Selects the pin at which the route comes to a net, and brings it into sight; of the first net its driver. */
    public static void standAt(SheetSession session, int number) {
        Route route = session.routes().route().orElse(null);
        if (route == null) {
            return;
        }
        Node node = route.nodes().get(number);
        Optional<TracedPin> pin = Optional.ofNullable(route.arrival(node)).filter(p -> p.pin().at() != null)
                .or(() -> node.pins().stream().filter(p -> p.pin().at() != null).findFirst());
        pin.ifPresent(p -> {
            session.standAt(number, Selection.pin(p.part(), p.pin(), node.net()));
            session.reveal(p.pin().page(), Box.of(p.pin().at()).grow(40));
        });
    }
}
