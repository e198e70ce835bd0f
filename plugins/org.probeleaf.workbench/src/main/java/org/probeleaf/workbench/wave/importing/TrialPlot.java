// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave.importing;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.events.PaintEvent;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.probeleaf.waveform.plot.Plot;
import org.probeleaf.waveform.plot.PlotPane;
import org.probeleaf.waveform.plot.PlotTrace;
import org.probeleaf.waveform.plot.PlotWindow;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;
import org.probeleaf.workbench.plot.PlotPaint;

/** What comes out of a capture, small; or a word on why there is nothing to see. */
final class TrialPlot {

    private static final int LEAST = 40;

    private final Canvas canvas;
    private final Look look;
    private final PlotPaint paint;
    private List<PlotTrace> traces = List.of();
    private boolean states;
    private String words = "";

    TrialPlot(Composite parent) {
        canvas = new Canvas(parent, SWT.DOUBLE_BUFFERED | SWT.BORDER | SWT.NO_FOCUS);
        look = new Look(canvas);
        paint = new PlotPaint(look);
        canvas.setBackground(look.colour(Palette.WHITE));
        canvas.addPaintListener(this::paint);
    }

    Canvas control() {
        return canvas;
    }

    /** @param lanes whether the traces are lines of logic states */
    void show(List<PlotTrace> drawn, boolean lanes, String instead) {
        traces = drawn;
        states = lanes;
        words = instead;
        canvas.redraw();
    }

    private void paint(PaintEvent e) {
        Rectangle area = canvas.getClientArea();
        if (traces.isEmpty() || area.width < LEAST || area.height < LEAST) {
            e.gc.setForeground(look.colour(Palette.QUIET));
            org.eclipse.swt.graphics.Point size = e.gc.textExtent(words);
            e.gc.drawText(words, (area.width - size.x) / 2, (area.height - size.y) / 2, true);
            return;
        }
        if (!states) {
            paint.paint(e.gc, Plot.of(traces, List.of(), area.width, area.height), 0, 0);
            return;
        }
        PlotWindow all = Plot.whole(traces);
        paint.paint(e.gc, new Plot(area.width, area.height, all.from(), all.to(), traces.stream().map(PlotPane::lane).toList(),
                List.of(), false), 0, 0);
    }
}
