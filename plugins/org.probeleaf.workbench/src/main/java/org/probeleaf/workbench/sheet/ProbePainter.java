// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.sheet;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.probeleaf.diagnosis.NextProbe;
import org.probeleaf.job.mark.Anchor;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.workbench.geometry.PageFrame;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;
import org.probeleaf.workbench.session.Facts;

/** Paints where to probe next: two rings, and a flag that says so. */
final class ProbePainter {

    private static final String WORDS = "probe next";

    private final Look look;
    private final Font font;

    ProbePainter(Look look) {
        this.look = look;
        this.font = look.font(-2, true);
    }

    void paint(GC gc, PageFrame frame, Facts facts, NextProbe next) {
        Anchor anchor = Anchor.of(next.at(), facts.netlist()).or(() -> Anchor.of(next.at(), facts.board().drawn()))
                .filter(a -> a.page() == frame.page()).orElse(null);
        if (anchor == null) {
            return;
        }
        Point at = frame.toScreen(anchor.at());
        int x = (int) Math.round(at.x());
        int y = (int) Math.round(at.y());
        gc.setForeground(look.colour(Palette.VERMILLION));
        gc.setLineWidth(3);
        ring(gc, x, y, 8);
        gc.setLineWidth(1);
        ring(gc, x, y, 13);
        gc.setFont(font);
        org.eclipse.swt.graphics.Point size = gc.textExtent(WORDS);
        int left = x - size.x / 2 - 6;
        int top = y + 20;
        gc.drawLine(x, y + 13, x, top);
        gc.setBackground(look.colour(Palette.VERMILLION));
        gc.fillRoundRectangle(left, top, size.x + 12, size.y + 4, 6, 6);
        gc.setForeground(look.colour(Palette.WHITE));
        gc.drawText(WORDS, left + 6, top + 2, SWT.DRAW_TRANSPARENT);
    }

    private static void ring(GC gc, int x, int y, int radius) {
        gc.drawOval(x - radius, y - radius, 2 * radius, 2 * radius);
    }
}
