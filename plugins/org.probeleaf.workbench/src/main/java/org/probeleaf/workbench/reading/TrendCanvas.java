// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.reading;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.probeleaf.job.expectation.Outcome;
import org.probeleaf.job.history.HistoryStep;
import org.probeleaf.job.history.HistoryStep.Done;
import org.probeleaf.job.history.HistoryStep.Read;
import org.probeleaf.job.mark.ReadingMark;
import org.probeleaf.schematic.quantity.QuantityKind;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;
import org.probeleaf.workbench.sheet.VerdictPainter;

/**
 * The readings of one kind at a place as a line, the oldest at the left, each with the sign of its verdict; dashes across it
 * show where something was done to the board. Not shown of fewer than two.
 */
final class TrendCanvas {

    private static final int HEIGHT = 74;
    private static final int SIDE = 44;
    private static final int ROOM = 20;
    private static final int SIGN = 11;

    /** A point of the line, or something done to the board where there is no reading. */
    private record Stop(ReadingMark reading) {
    }

    private final Canvas canvas;
    private final Look look;
    private final GridData data = new GridData(SWT.FILL, SWT.BEGINNING, true, false);
    private List<Stop> stops = List.of();

    TrendCanvas(Composite parent) {
        canvas = new Canvas(parent, SWT.DOUBLE_BUFFERED);
        canvas.setData("name", "trend");
        look = new Look(canvas);
        canvas.setBackground(look.colour(Palette.WHITE));
        data.heightHint = HEIGHT;
        data.exclude = true;
        canvas.setLayoutData(data);
        canvas.setVisible(false);
        canvas.addPaintListener(e -> paint(e.gc));
    }

    /** Shows the kind that was read last. */
    void show(List<HistoryStep> steps) {
        QuantityKind kind = null;
        for (HistoryStep step : steps) {
            if (step instanceof Read r && !r.reading().value().kind().isState()) {
                kind = r.reading().value().kind();
            }
        }
        List<Stop> all = new ArrayList<>();
        int readings = 0;
        for (HistoryStep step : steps) {
            if (step instanceof Done && !all.isEmpty() && all.get(all.size() - 1).reading() != null) {
                all.add(new Stop(null));
            } else if (step instanceof Read r && r.reading().value().kind() == kind) {
                all.add(new Stop(r.reading()));
                readings++;
            }
        }
        stops = readings < 2 ? List.of() : all;
        data.exclude = stops.isEmpty();
        canvas.setVisible(!stops.isEmpty());
        canvas.getParent().layout(true);
        canvas.redraw();
    }

    private void paint(GC gc) {
        if (stops.isEmpty()) {
            return;
        }
        Rectangle area = canvas.getClientArea();
        gc.setAntialias(SWT.ON);
        gc.setFont(look.font(-2, false));
        double low = readings().stream().mapToDouble(r -> r.value().value()).min().orElse(0);
        double high = readings().stream().mapToDouble(r -> r.value().value()).max().orElse(0);
        double span = high > low ? high - low : 1;
        int n = stops.size();
        Point before = null;
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            int x = SIDE + (n == 1 ? 0 : (area.width - 2 * SIDE) * i / (n - 1));
            ReadingMark r = stops.get(i).reading();
            if (r == null) {
                points.add(null);
                gc.setForeground(look.colour(Palette.QUIET));
                gc.setLineStyle(SWT.LINE_DASH);
                gc.drawLine(x, 6, x, area.height - 6);
                gc.setLineStyle(SWT.LINE_SOLID);
                continue;
            }
            double share = high > low ? (r.value().value() - low) / span : 0.5;
            Point at = new Point(x, (int) Math.round(area.height - ROOM - share * (area.height - 2 * ROOM)));
            if (before != null) {
                gc.setForeground(look.colour(Palette.BLUE));
                gc.setLineWidth(2);
                gc.drawLine(before.x, before.y, at.x, at.y);
                gc.setLineWidth(1);
            }
            points.add(at);
            before = at;
        }
        for (int i = 0; i < n; i++) {
            if (points.get(i) != null) {
                sign(gc, stops.get(i).reading(), points.get(i));
            }
        }
    }

    private void sign(GC gc, ReadingMark r, Point at) {
        Outcome outcome = r.verdict() == null ? null : r.verdict().outcome();
        if (outcome == null) {
            gc.setBackground(look.colour(Palette.BLUE));
            gc.fillOval(at.x - 4, at.y - 4, 8, 8);
        } else {
            VerdictPainter.paint(gc, look, outcome, at.x - SIGN / 2, at.y - SIGN / 2, SIGN);
        }
        String text = r.shown();
        Point size = gc.textExtent(text);
        boolean above = at.y > canvas.getClientArea().height / 2;
        gc.setForeground(look.colour(Palette.TEXT));
        gc.setBackground(look.colour(Palette.WHITE));
        gc.drawText(text, at.x - size.x / 2, above ? at.y - SIGN / 2 - size.y - 1 : at.y + SIGN / 2 + 1);
    }

    private List<ReadingMark> readings() {
        return stops.stream().map(Stop::reading).filter(r -> r != null).toList();
    }
}
