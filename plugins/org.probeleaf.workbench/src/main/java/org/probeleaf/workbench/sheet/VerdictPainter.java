// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.sheet;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.probeleaf.job.expectation.Outcome;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;

/** Paints verdicts by shape as well as colour: tick in a circle, cross in a square, question mark in a diamond. */
public final class VerdictPainter {

    private VerdictPainter() {
    }

    /**
     * Paints a verdict.
     *
     * @param x    left edge
     * @param y    top edge
     * @param size side of the square that holds it, in logical pixels
     */
    public static void paint(GC gc, Look look, Outcome outcome, int x, int y, int size) {
        gc.setBackground(look.colour(CardText.colour(outcome)));
        gc.setForeground(look.colour(Palette.WHITE));
        int q = size / 4;
        gc.setLineWidth(Math.max(1, size / 8));
        gc.setLineCap(SWT.CAP_ROUND);
        switch (outcome) {
            case GOOD -> {
                gc.fillOval(x, y, size, size);
                gc.drawPolyline(new int[] {x + q, y + 2 * q, x + 2 * q - 1, y + 3 * q, x + 3 * q + 1, y + q + 1});
            }
            case BAD -> {
                gc.fillRectangle(x, y, size, size);
                gc.drawLine(x + q, y + q, x + size - q, y + size - q);
                gc.drawLine(x + size - q, y + q, x + q, y + size - q);
            }
            case UNSURE -> {
                int m = size / 2;
                gc.fillPolygon(new int[] {x + m, y - 1, x + size + 1, y + m, x + m, y + size + 1, x - 1, y + m});
                gc.drawArc(x + m - q / 2 - 1, y + q - 1, q + 2, q + 2, -90, 270);
                gc.drawLine(x + m, y + m, x + m, y + m + 1);
                gc.drawPoint(x + m, y + 3 * q);
            }
        }
        gc.setLineWidth(1);
        gc.setLineCap(SWT.CAP_FLAT);
    }
}
