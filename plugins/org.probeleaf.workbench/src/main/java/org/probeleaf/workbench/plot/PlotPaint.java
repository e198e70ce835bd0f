// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.plot;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.RGB;
import org.probeleaf.waveform.plot.Ink;
import org.probeleaf.waveform.plot.Plot;
import org.probeleaf.waveform.plot.PlotShape;
import org.probeleaf.waveform.plot.PlotShape.Area;
import org.probeleaf.waveform.plot.PlotShape.Line;
import org.probeleaf.waveform.plot.PlotShape.Words;
import org.probeleaf.workbench.look.Look;

/** Paints plots on the screen. */
public final class PlotPaint {

    private final Look look;

    public PlotPaint(Look look) {
        this.look = look;
    }

    /** Paints a plot with its top left corner at a place; the background is left as it is. */
    public void paint(GC gc, Plot plot, int x, int y) {
        gc.setAntialias(SWT.ON);
        gc.setLineJoin(SWT.JOIN_ROUND);
        for (PlotShape shape : plot.shapes()) {
            gc.setForeground(look.colour(colour(shape.ink())));
            if (shape instanceof Line line) {
                line(gc, line, x, y);
            } else if (shape instanceof Area area) {
                area(gc, area, x, y);
            } else {
                words(gc, (Words) shape, x, y);
            }
        }
        gc.setLineStyle(SWT.LINE_SOLID);
        gc.setLineWidth(1);
    }

    private static void line(GC gc, Line line, int x, int y) {
        double[] dashes = line.ink().dashes();
        if (dashes.length == 0) {
            gc.setLineStyle(SWT.LINE_SOLID);
        } else {
            int[] pattern = new int[dashes.length];
            for (int i = 0; i < dashes.length; i++) {
                pattern[i] = (int) Math.max(1, Math.round(dashes[i]));
            }
            gc.setLineDash(pattern);
        }
        gc.setLineWidth(line.ink().width() > 1.05 ? 2 : 1);
        double[] xy = line.xy();
        if (xy.length == 4 && (xy[0] == xy[2] || xy[1] == xy[3])) {
            // On whole pixels: sharp, and quick for the many strokes of a grid.
            gc.setAntialias(SWT.OFF);
            gc.drawLine((int) Math.round(x + xy[0]), (int) Math.round(y + xy[1]), (int) Math.round(x + xy[2]),
                    (int) Math.round(y + xy[3]));
            gc.setAntialias(SWT.ON);
            return;
        }
        Path path = path(gc, line.xy(), x, y);
        gc.drawPath(path);
        path.dispose();
    }

    private void area(GC gc, Area area, int x, int y) {
        gc.setBackground(look.colour(colour(area.ink())));
        Path path = path(gc, area.xy(), x, y);
        path.close();
        gc.fillPath(path);
        path.dispose();
    }

    private static Path path(GC gc, double[] xy, int x, int y) {
        Path path = new Path(gc.getDevice());
        path.moveTo((float) (x + xy[0]), (float) (y + xy[1]));
        for (int i = 2; i < xy.length; i += 2) {
            path.lineTo((float) (x + xy[i]), (float) (y + xy[i + 1]));
        }
        return path;
    }

    private void words(GC gc, Words words, int x, int y) {
        gc.setFont(look.font(-2, words.bold()));
        Point size = gc.textExtent(words.text());
        double left = switch (words.lean()) {
            case START -> words.x();
            case MIDDLE -> words.x() - size.x / 2.0;
            case END -> words.x() - size.x;
        };
        gc.drawText(words.text(), (int) Math.round(x + left), (int) Math.round(y + words.y() - size.y / 2.0), true);
    }

    static RGB colour(Ink ink) {
        return new RGB(ink.rgb() >> 16 & 0xff, ink.rgb() >> 8 & 0xff, ink.rgb() & 0xff);
    }
}
