// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Event;
import org.probeleaf.workbench.look.KeysPanel;

/** The keys on a plot. */
final class PlotKeys {

    private static final double FINE = 1;
    private static final double COARSE = 10;

    /** What the keys do, for people. */
    private static final List<KeysPanel.Row> ROWS = List.of(
            new KeysPanel.Row("Click", "Put cursor A"),
            new KeysPanel.Row("Shift + click", "Put cursor B"),
            new KeysPanel.Row("A   B", "Keys move A, or B"),
            new KeysPanel.Row("\u2190   \u2192", "Move it, with Shift far"),
            new KeysPanel.Row("Ctrl + \u2190 \u2192", "Move it to the next edge"),
            new KeysPanel.Row("Esc", "Take the cursors away"),
            new KeysPanel.Row("Tab", "Go on to the figures"),
            new KeysPanel.Row("Wheel, + \u2212", "Zoom in time"),
            new KeysPanel.Row("Ctrl + wheel", "Zoom in values"),
            new KeysPanel.Row("Ctrl + \u2191 \u2193", "Zoom in values"),
            new KeysPanel.Row("\u2191   \u2193", "Move in values"),
            new KeysPanel.Row("Page \u2191 \u2193", "Move in time"),
            new KeysPanel.Row("Home", "Show all, as double click"),
            new KeysPanel.Row("?", "These keys"));

    private final PlotCanvas plot;
    private final KeysPanel panel;

    PlotKeys(PlotCanvas plot) {
        this.plot = plot;
        Canvas canvas = plot.control();
        panel = new KeysPanel(canvas, "Keys on the plot", ROWS);
        canvas.addListener(SWT.KeyDown, this::key);
        canvas.addListener(SWT.Traverse, e -> e.doit = e.detail == SWT.TRAVERSE_TAB_NEXT
                || e.detail == SWT.TRAVERSE_TAB_PREVIOUS);
    }

    private void key(Event e) {
        boolean control = (e.stateMask & SWT.MOD1) != 0;
        boolean done = switch (e.keyCode) {
            case SWT.ARROW_LEFT, SWT.ARROW_RIGHT -> sideways(e.keyCode == SWT.ARROW_RIGHT, control,
                    (e.stateMask & SWT.SHIFT) != 0 ? COARSE : FINE);
            case SWT.ARROW_UP, SWT.ARROW_DOWN -> upright(e.keyCode == SWT.ARROW_UP, control);
            case SWT.PAGE_UP, SWT.PAGE_DOWN -> {
                plot.sight().move(e.keyCode == SWT.PAGE_UP ? -0.5 : 0.5);
                yield true;
            }
            case SWT.HOME -> {
                plot.showAll();
                yield true;
            }
            case SWT.ESC -> {
                if (panel.isOpen()) {
                    panel.toggle();
                } else {
                    plot.cursors().clear();
                    plot.moved();
                }
                yield true;
            }
            default -> !control && letter(e.character);
        };
        if (done) {
            plot.redraw(e);
        }
    }

    private boolean letter(char c) {
        switch (Character.toLowerCase(c)) {
            case '+', '=', '-' -> {
                Cursors cursors = plot.cursors();
                double middle = (plot.sight().from() + plot.sight().to()) / 2;
                double at = cursors.at(cursors.active());
                boolean seen = at >= plot.sight().from() && at <= plot.sight().to();
                plot.sight().zoom(c == '-' ? 1 / PlotMouse.ZOOM : PlotMouse.ZOOM, seen ? at : middle);
            }
            case 'a', 'b' -> {
                plot.cursors().activate(Character.toLowerCase(c) - 'a');
                step(0);
            }
            case '?' -> panel.toggle();
            default -> {
                return false;
            }
        }
        return true;
    }

    private boolean sideways(boolean later, boolean toEdge, double pixels) {
        Cursors cursors = plot.cursors();
        if (toEdge) {
            double at = cursors.at(cursors.active());
            double start = Double.isNaN(at) ? later ? plot.sight().from() : plot.sight().to() : at;
            double edge = Cursors.edge(plot.edges(), start, later);
            if (!Double.isNaN(edge)) {
                cursors.put(cursors.active(), edge);
                follow();
                plot.moved();
            }
        } else {
            step((later ? 1 : -1) * plot.pixels(pixels));
        }
        return true;
    }

    private void step(double by) {
        plot.cursors().step(by, (plot.sight().from() + plot.sight().to()) / 2);
        follow();
        plot.moved();
    }

    /** Keeps the cursor in sight. */
    private void follow() {
        Sight sight = plot.sight();
        double at = plot.cursors().at(plot.cursors().active());
        double length = sight.to() - sight.from();
        if (at < sight.from() || at > sight.to()) {
            sight.show(at - length / 2, at + length / 2);
        }
    }

    /** The values of the first pane. */
    private boolean upright(boolean up, boolean apart) {
        if (apart) {
            var pane = plot.sight().panes().get(0);
            plot.sight().zoomValues(0, up ? PlotMouse.ZOOM : 1 / PlotMouse.ZOOM, (pane.low() + pane.high()) / 2);
        } else {
            plot.sight().moveValues(0, up ? 0.1 : -0.1);
        }
        return true;
    }

    /** Shows the keys, or hides them. */
    void toggle() {
        panel.toggle();
    }
}
