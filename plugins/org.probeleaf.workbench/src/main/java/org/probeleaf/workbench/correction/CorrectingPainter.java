// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.correction;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.RGB;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Wire;
import org.probeleaf.workbench.correction.Task.Aim;
import org.probeleaf.workbench.geometry.PageFrame;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;
import org.probeleaf.workbench.session.Selection;
import org.probeleaf.workbench.session.Trial;

/** Paints what is being corrected: places pointed at, the rectangle being drawn, the nets that would come of it. */
public final class CorrectingPainter {

    /** The nets that would come of it are told apart by their dashes as well as by colour. */
    private static final int[] STYLES = {SWT.LINE_SOLID, SWT.LINE_DASH, SWT.LINE_DOT, SWT.LINE_DASHDOT};
    private static final List<RGB> COLOURS = List.of(Palette.tint(Palette.SKY, 0.75), Palette.tint(Palette.ORANGE, 0.75),
            Palette.tint(Palette.GREEN, 0.6), Palette.tint(Palette.PURPLE, 0.7));

    private final Look look;
    private final Correcting correcting;

    public CorrectingPainter(Look look, Correcting correcting) {
        this.look = look;
        this.correcting = correcting;
    }

    /** Whether the sheet is to be free of what else lies over it. */
    public boolean covers() {
        return correcting.active();
    }

    /** Whether the nets that would come of it are shown. */
    public boolean shows() {
        return correcting.trial().isPresent();
    }

    /** What lies under the ink. */
    public void under(GC gc, PageFrame frame) {
        correcting.trial().filter(Trial::holds).ifPresent(t -> {
            for (int i = 0; i < Math.min(t.changed().size(), COLOURS.size()); i++) {
                band(gc, frame, t.changed().get(i), i);
            }
        });
    }

    private void band(GC gc, PageFrame frame, Net net, int index) {
        gc.setForeground(look.colour(COLOURS.get(index)));
        gc.setLineWidth((int) Math.max(6, Math.min(22, frame.zoom() * 6)));
        gc.setLineStyle(STYLES[index]);
        for (Wire wire : net.wires()) {
            for (int i = 1; wire.page() == frame.page() && i < wire.points().size(); i++) {
                Point a = frame.toScreen(wire.points().get(i - 1));
                Point b = frame.toScreen(wire.points().get(i));
                gc.drawLine((int) a.x(), (int) a.y(), (int) b.x(), (int) b.y());
            }
        }
        gc.setLineStyle(SWT.LINE_SOLID);
        gc.setLineWidth(1);
    }

    /** What lies over the ink. */
    public void over(GC gc, PageFrame frame) {
        List<Selection> picks = correcting.picks();
        gc.setForeground(look.colour(Palette.BLUE));
        for (int i = 0; i < picks.size(); i++) {
            if (picks.get(i).page() == frame.page()) {
                ring(gc, frame.toScreen(picks.get(i).at()), i + 1);
            }
        }
        boolean corners = correcting.task().map(t -> t.steps().get(0).aim() == Aim.CORNER).orElse(false);
        Selection other = picks.size() > 1 ? picks.get(1) : correcting.pointer().orElse(null);
        if (corners && !picks.isEmpty() && other != null && other.page() == frame.page()
                && picks.get(0).page() == frame.page()) {
            rectangle(gc, frame.toScreen(picks.get(0).at()), frame.toScreen(other.at()));
        }
    }

    private void ring(GC gc, Point at, int number) {
        int x = (int) Math.round(at.x());
        int y = (int) Math.round(at.y());
        gc.setLineWidth(2);
        gc.drawOval(x - 8, y - 8, 16, 16);
        gc.setLineWidth(1);
        gc.setFont(look.font(-1, true));
        gc.drawText(String.valueOf(number), x + 10, y - 22, SWT.DRAW_TRANSPARENT);
    }

    private static void rectangle(GC gc, Point a, Point b) {
        int x = (int) Math.round(Math.min(a.x(), b.x()));
        int y = (int) Math.round(Math.min(a.y(), b.y()));
        gc.setLineWidth(2);
        gc.setLineStyle(SWT.LINE_DASH);
        gc.drawRectangle(x, y, (int) Math.round(Math.abs(a.x() - b.x())), (int) Math.round(Math.abs(a.y() - b.y())));
        gc.setLineStyle(SWT.LINE_SOLID);
        gc.setLineWidth(1);
    }
}
