// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.probeleaf.waveform.plot.Plot;
import org.probeleaf.waveform.plot.PlotFrame;
import org.probeleaf.waveform.plot.PlotPane;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;
import org.probeleaf.workbench.plot.PlotPaint;

/** A plot to work with, by mouse ({@link PlotMouse}) and by keys ({@link PlotKeys}). */
public final class PlotCanvas {

    private final Canvas canvas;
    private final PlotPaint paint;
    private final Look look;
    private final Runnable changed;
    private final Sight sight = new Sight();
    private final Cursors cursors = new Cursors();
    private Object shown;
    private double[] edges = {};
    private boolean snap;
    private final PlotKeys keys;

    /** @param changed called when a cursor is elsewhere */
    public PlotCanvas(Composite parent, Runnable changed) {
        this.changed = changed;
        canvas = new Canvas(parent, SWT.DOUBLE_BUFFERED | SWT.NO_BACKGROUND);
        canvas.setData("name", "plot");
        canvas.getAccessible().addAccessibleListener(new org.eclipse.swt.accessibility.AccessibleAdapter() {
            @Override
            public void getName(org.eclipse.swt.accessibility.AccessibleEvent e) {
                e.result = "Plot of the capture";
            }
        });
        look = new Look(canvas);
        paint = new PlotPaint(look);
        canvas.addPaintListener(e -> paint(e.gc));
        canvas.addListener(SWT.FocusIn, e -> canvas.redraw());
        canvas.addListener(SWT.FocusOut, e -> canvas.redraw());
        new PlotMouse(this);
        keys = new PlotKeys(this);
    }

    private void paint(org.eclipse.swt.graphics.GC gc) {
        Rectangle area = canvas.getClientArea();
        gc.setBackground(look.colour(Palette.WHITE));
        gc.fillRectangle(area);
        paint.paint(gc, plot(), 0, 0);
        if (canvas.isFocusControl()) {
            gc.setForeground(look.colour(Palette.BLUE));
            gc.drawRectangle(0, 0, area.width - 1, area.height - 1);
        }
    }

    /** The widget. */
    public Canvas control() {
        return canvas;
    }

    /**
     * Shows panes; of another capture all of it, of the same what was in sight.
     *
     * @param capture  tells whether it is the same
     * @param measured when the trace that is measured passes from state to state, in seconds, in order
     */
    public void show(Object capture, List<PlotPane> panes, double[] measured) {
        sight.of(panes);
        edges = measured;
        Object now = panes.isEmpty() ? null : capture;
        if (!java.util.Objects.equals(now, shown)) {
            shown = now;
            cursors.clear();
            sight.showAll();
        }
        canvas.redraw();
    }

    /** Whether a cursor goes to an edge that is near. */
    void snap(boolean on) {
        snap = on;
    }

    /** The plot as it is on the screen. */
    public Plot plot() {
        Point size = canvas.getSize();
        return new Plot(Math.max(100, size.x), Math.max(60, size.y), sight.from(), sight.to(), sight.panes(), cursors.put(),
                false);
    }

    Cursors cursors() {
        return cursors;
    }

    /** What is in sight; {@link #control} must be redrawn after a change of it. */
    Sight sight() {
        return sight;
    }

    /** Shows the times from one to another, in seconds; as near to that as the traces allow. */
    public void lookAt(double from, double to) {
        sight.show(from, to);
        canvas.redraw();
    }

    double[] edges() {
        return edges;
    }

    /** The time at a place of the screen, at an edge where cursors go to these. */
    double time(int x) {
        PlotFrame frame = plot().frame();
        double time = frame.time(Math.max(frame.left(), Math.min(frame.right(), x)));
        return snap ? Cursors.snapped(edges, time, pixels(PlotMouse.NEAR)) : time;
    }

    /** How long so many pixels are, in seconds. */
    double pixels(double many) {
        return many * (sight.to() - sight.from()) / plot().frame().width();
    }

    /** Which pane is at a height, -1 for none. */
    int paneAt(int y) {
        List<PlotFrame> frames = plot().frames();
        for (int i = 0; i < frames.size(); i++) {
            if (y >= frames.get(i).top() && y <= frames.get(i).bottom()) {
                return i;
            }
        }
        return -1;
    }

    /** Shows everything. */
    public void showAll() {
        sight.showAll();
        canvas.redraw();
    }

    /** Shows the keys over the plot, or takes them away. */
    void toggleKeys() {
        keys.toggle();
    }

    /** A cursor is elsewhere. */
    void moved() {
        canvas.redraw();
        changed.run();
    }

    void redraw(Event handled) {
        handled.doit = false;
        canvas.redraw();
    }
}
