// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.probeleaf.waveform.plot.Plot;
import org.probeleaf.waveform.plot.PlotCursor;
import org.probeleaf.waveform.plot.PlotFrame;
import org.probeleaf.waveform.plot.PlotLevel;
import org.probeleaf.waveform.plot.PlotPane;
import org.probeleaf.waveform.plot.PlotTrace;
import org.probeleaf.waveform.plot.PlotWindow;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;
import org.probeleaf.workbench.plot.PlotPaint;

/**
 * A plot to work with. The wheel draws it apart and together about the pointer, a drag moves it along, two cursors are put
 * with a click and a click with Shift and moved with the arrow keys; Home shows all.
 */
final class PlotCanvas {

    private static final double ZOOM = 1.25;
    /** How far a press may wander and still be a click, in pixels. */
    private static final int STILL = 3;
    private static final double STEP = 0.002;

    private final Canvas canvas;
    private final PlotPaint paint;
    private final Look look;
    private final Runnable changed;
    private List<PlotTrace> traces = List.of();
    private List<PlotLevel> levels = List.of();
    private PlotWindow window = Plot.whole(List.of());
    private final double[] cursors = {Double.NaN, Double.NaN};
    private int lastCursor;
    private int pressX = -1;
    private PlotWindow pressWindow;

    /** @param changed called when a cursor is elsewhere */
    PlotCanvas(Composite parent, Runnable changed) {
        this.changed = changed;
        canvas = new Canvas(parent, SWT.DOUBLE_BUFFERED | SWT.NO_BACKGROUND);
        canvas.setData("name", "plot");
        look = new Look(canvas);
        paint = new PlotPaint(look);
        canvas.addPaintListener(e -> {
            Rectangle area = canvas.getClientArea();
            e.gc.setBackground(look.colour(Palette.WHITE));
            e.gc.fillRectangle(area);
            paint.paint(e.gc, plot(), 0, 0);
        });
        canvas.addListener(SWT.MouseWheel, this::wheel);
        canvas.addListener(SWT.MouseDown, this::press);
        canvas.addListener(SWT.MouseMove, this::drag);
        canvas.addListener(SWT.MouseUp, this::release);
        canvas.addListener(SWT.KeyDown, this::key);
        canvas.addListener(SWT.MouseDoubleClick, e -> showAll());
    }

    Canvas control() {
        return canvas;
    }

    /** Shows traces, all of them at first. */
    void show(List<PlotTrace> other, List<PlotLevel> otherLevels) {
        boolean same = traces.stream().map(PlotTrace::channel).toList().equals(other.stream().map(PlotTrace::channel)
                .toList());
        traces = other;
        levels = otherLevels;
        if (!same) {
            window = Plot.whole(traces);
        }
        canvas.redraw();
    }

    /** The plot as it is on the screen. */
    Plot plot() {
        Rectangle area = canvas.getClientArea();
        List<PlotCursor> set = new ArrayList<>();
        for (int i = 0; i < cursors.length; i++) {
            if (!Double.isNaN(cursors[i])) {
                set.add(new PlotCursor(i == 0 ? "A" : "B", cursors[i]));
            }
        }
        PlotPane pane = PlotPane.of(traces, levels).between(window.low(), window.high());
        return new Plot(Math.max(100, area.width), Math.max(60, area.height), window.from(), window.to(), List.of(pane), set,
                false);
    }

    /** The time of a cursor in seconds, NaN where it is not set; there are two. */
    double cursor(int index) {
        return cursors[index];
    }

    /** Takes both cursors away. */
    void clearCursors() {
        cursors[0] = Double.NaN;
        cursors[1] = Double.NaN;
        moved();
    }

    void showAll() {
        window = Plot.whole(traces);
        canvas.redraw();
    }

    private void moved() {
        canvas.redraw();
        changed.run();
    }

    private void wheel(Event e) {
        PlotFrame frame = plot().frame();
        if ((e.stateMask & SWT.SHIFT) != 0) {
            window = window.moved(e.count > 0 ? -0.1 : 0.1);
        } else {
            double about = frame.time(Math.max(frame.left(), Math.min(frame.right(), e.x)));
            PlotWindow next = window.zoomed(e.count > 0 ? ZOOM : 1 / ZOOM, about);
            if (next.to() - next.from() > 1e-13) {
                window = next;
            }
        }
        e.doit = false;
        canvas.redraw();
    }

    private void press(Event e) {
        canvas.setFocus();
        if (e.button == 1) {
            pressX = e.x;
            pressWindow = window;
        }
    }

    private void drag(Event e) {
        if (pressX >= 0 && Math.abs(e.x - pressX) > STILL) {
            double share = (pressX - e.x) / plot().frame().width();
            window = pressWindow.moved(share);
            canvas.redraw();
        }
    }

    private void release(Event e) {
        if (e.button == 1 && pressX >= 0 && Math.abs(e.x - pressX) <= STILL) {
            PlotFrame frame = plot().frame();
            if (e.x >= frame.left() && e.x <= frame.right()) {
                lastCursor = (e.stateMask & SWT.SHIFT) != 0 ? 1 : 0;
                cursors[lastCursor] = frame.time(e.x);
                moved();
            }
        }
        pressX = -1;
    }

    private void key(Event e) {
        double width = window.to() - window.from();
        switch (e.keyCode) {
            case SWT.ARROW_LEFT, SWT.ARROW_RIGHT -> {
                double by = (e.keyCode == SWT.ARROW_LEFT ? -1 : 1) * width * STEP * ((e.stateMask & SWT.SHIFT) != 0 ? 10 : 1);
                if (Double.isNaN(cursors[lastCursor])) {
                    cursors[lastCursor] = (window.from() + window.to()) / 2;
                }
                cursors[lastCursor] += by;
                moved();
            }
            case SWT.HOME -> showAll();
            case SWT.ESC -> clearCursors();
            default -> {
                if (e.character == '+' || e.character == '-') {
                    window = window.zoomed(e.character == '+' ? ZOOM : 1 / ZOOM, (window.from() + window.to()) / 2);
                    canvas.redraw();
                } else if (e.character == 'x' || e.character == 'X') {
                    lastCursor = 1 - lastCursor;
                }
            }
        }
    }
}
