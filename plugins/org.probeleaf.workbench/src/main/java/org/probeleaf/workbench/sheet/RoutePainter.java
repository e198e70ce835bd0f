// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.sheet;

import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.trace.TracedPin;
import org.probeleaf.trace.follow.Followed.Node;
import org.probeleaf.workbench.geometry.PageFrame;
import org.probeleaf.workbench.geometry.PinMark;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;
import org.probeleaf.workbench.session.Route;

/** Paints a route: a thin band along each net beyond the first, and its number where the signal comes to it. */
final class RoutePainter {

    private final Look look;
    private final NetPainter nets;
    private final Font font;

    RoutePainter(Look look, NetPainter nets) {
        this.look = look;
        this.nets = nets;
        this.font = look.font(-2, true);
    }

    /**
     * Under the ink.
     *
     * @param selected has a band of its own, or null
     */
    void bands(GC gc, PageFrame frame, Route route, Net selected) {
        for (Node node : route.nodes()) {
            if (selected != null && selected.id().equals(node.net().id())) {
                continue;
            }
            // A supply runs everywhere: its band would drown the signal.
            if (!node.kind().isSupply() && node.net().pages().contains(frame.page())) {
                nets.followed(gc, frame, node.net());
            }
        }
    }

    /**
     * Over the ink.
     *
     * @param at the number of the net where the person stands
     */
    void numbers(GC gc, PageFrame frame, Route route, int at) {
        for (Node node : route.nodes()) {
            TracedPin arrival = route.arrival(node);
            if (arrival != null && arrival.pin().at() != null && arrival.pin().page() == frame.page()) {
                Point out = PinMark.outwards(arrival.part(), arrival.pin());
                Point pin = frame.toScreen(arrival.pin().at());
                number(gc, pin.x() + out.x() * 20 - out.y() * 13, pin.y() + out.y() * 20 - Math.abs(out.x()) * 13,
                        String.valueOf(route.number(node)), route.number(node) == at);
            }
        }
    }

    private void number(GC gc, double x, double y, String text, boolean here) {
        gc.setFont(font);
        org.eclipse.swt.graphics.Point size = gc.textExtent(text);
        int height = size.y + 2;
        int width = Math.max(height, size.x + 8);
        int left = (int) Math.round(x - width / 2.0);
        int top = (int) Math.round(y - height / 2.0);
        gc.setBackground(look.colour(here ? Palette.BLUE : Palette.WHITE));
        gc.setForeground(look.colour(Palette.BLUE));
        gc.fillRoundRectangle(left, top, width, height, height, height);
        gc.drawRoundRectangle(left, top, width, height, height, height);
        gc.setForeground(look.colour(here ? Palette.WHITE : Palette.BLUE));
        gc.drawText(text, left + (width - size.x) / 2, top + 1, true);
    }
}
