// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Event;
import org.probeleaf.waveform.plot.PlotFrame;

/**
 * The mouse on a plot. The wheel draws times apart and together about the pointer, with Control the values of the pane, with
 * Shift it moves along; a drag moves the sheet of paper, or a cursor that is caught; a click puts a cursor, with Shift the
 * other; a double click shows all.
 */
final class PlotMouse {

    /** How near a cursor must be to be caught, and an edge to draw a cursor to it, in pixels. */
    static final int NEAR = 6;
    static final double ZOOM = 1.25;
    /** How far a press may wander and still be a click, in pixels. */
    private static final int STILL = 3;

    private final PlotCanvas plot;
    private int pressX = -1;
    private double pressFrom;
    private double pressTo;
    private int caught = -1;

    PlotMouse(PlotCanvas plot) {
        this.plot = plot;
        Canvas canvas = plot.control();
        canvas.addListener(SWT.MouseWheel, this::wheel);
        canvas.addListener(SWT.MouseDown, this::press);
        canvas.addListener(SWT.MouseMove, this::move);
        canvas.addListener(SWT.MouseUp, this::release);
        canvas.addListener(SWT.MouseDoubleClick, e -> {
            plot.cursors().clear();
            plot.showAll();
            plot.moved();
        });
    }

    private void wheel(Event e) {
        double factor = e.count > 0 ? ZOOM : 1 / ZOOM;
        if ((e.stateMask & SWT.CONTROL) != 0) {
            int pane = plot.paneAt(e.y);
            if (pane >= 0) {
                plot.sight().zoomValues(pane, factor, plot.plot().frames().get(pane).value(e.y));
            }
        } else if ((e.stateMask & SWT.SHIFT) != 0) {
            plot.sight().move(e.count > 0 ? -0.1 : 0.1);
        } else {
            PlotFrame frame = plot.plot().frame();
            plot.sight().zoom(factor, frame.time(Math.max(frame.left(), Math.min(frame.right(), e.x))));
        }
        plot.redraw(e);
    }

    private void press(Event e) {
        plot.control().setFocus();
        if (e.button == 1) {
            pressX = e.x;
            pressFrom = plot.sight().from();
            pressTo = plot.sight().to();
            caught = plot.cursors().near(plot.plot().frame().time(e.x), plot.pixels(NEAR));
        }
    }

    private void move(Event e) {
        if (pressX < 0) {
            boolean over = plot.cursors().near(plot.plot().frame().time(e.x), plot.pixels(NEAR)) >= 0;
            plot.control().setCursor(over ? e.display.getSystemCursor(SWT.CURSOR_SIZEWE) : null);
        } else if (Math.abs(e.x - pressX) > STILL) {
            if (caught >= 0) {
                plot.cursors().put(caught, plot.time(e.x));
                plot.moved();
            } else {
                double by = (pressX - e.x) / plot.plot().frame().width() * (pressTo - pressFrom);
                plot.sight().show(pressFrom + by, pressTo + by);
                plot.control().redraw();
            }
        }
    }

    private void release(Event e) {
        if (e.button == 1 && pressX >= 0 && Math.abs(e.x - pressX) <= STILL && within(e)) {
            plot.cursors().put((e.stateMask & SWT.SHIFT) != 0 ? 1 : 0, plot.time(e.x));
            plot.moved();
        }
        pressX = -1;
        caught = -1;
    }

    private boolean within(Event e) {
        List<PlotFrame> frames = plot.plot().frames();
        return !frames.isEmpty() && e.x >= frames.get(0).left() && e.x <= frames.get(0).right()
                && e.y >= frames.get(0).top() && e.y <= frames.get(frames.size() - 1).bottom();
    }
}
