// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.trace.TracedPin;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;

/** Tabs at the right edge of the view for pins of the selected net on sheets that are out of sight. */
final class EdgeTabs {

    private static final int MOST = 8;
    private static final int HEIGHT = 24;

    private record Tab(Rectangle area, TracedPin pin) {
    }

    private final Look look;
    private final NetPainter nets;
    private final Font font;
    private final List<Tab> tabs = new ArrayList<>();

    EdgeTabs(Look look, NetPainter nets) {
        this.look = look;
        this.nets = nets;
        this.font = look.font(-1, false);
    }

    /** Paints a tab for each pin, from the top down; those that find no room are counted in a last line. */
    void paint(GC gc, Box canvas, List<TracedPin> pins) {
        tabs.clear();
        int y = 14;
        for (TracedPin pin : pins.subList(0, Math.min(MOST, pins.size()))) {
            tab(gc, canvas, y, pin, "sheet " + pin.pin().page() + "  " + pin.place().text());
            y += HEIGHT + 4;
        }
        if (pins.size() > MOST) {
            tab(gc, canvas, y, null, "and " + (pins.size() - MOST) + " more");
        }
    }

    private void tab(GC gc, Box canvas, int y, TracedPin pin, String words) {
        gc.setFont(font);
        org.eclipse.swt.graphics.Point extent = gc.textExtent(words);
        int width = extent.x + (pin == null ? 20 : 38);
        Rectangle r = new Rectangle((int) canvas.x1() - width, y, width + 8, HEIGHT);
        gc.setBackground(look.colour(Palette.WHITE));
        gc.fillRoundRectangle(r.x, r.y, r.width, r.height, 10, 10);
        gc.setForeground(look.colour(Palette.BLUE));
        gc.drawRoundRectangle(r.x, r.y, r.width, r.height, 10, 10);
        if (pin != null) {
            nets.mark(gc, new Point(r.x + 16, r.y + HEIGHT / 2.0), 5, pin.direction(), new Point(1, 0));
            tabs.add(new Tab(r, pin));
        }
        gc.setForeground(look.colour(pin == null ? Palette.QUIET : Palette.TEXT));
        gc.drawText(words, r.x + (pin == null ? 10 : 28), r.y + (HEIGHT - extent.y) / 2, true);
    }

    /** Forgets the tabs. */
    void clear() {
        tabs.clear();
    }

    /** The pin whose tab is at a place on the screen. */
    Optional<TracedPin> at(int x, int y) {
        return tabs.stream().filter(t -> t.area().contains(x, y)).map(Tab::pin).findFirst();
    }
}
