// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.look;

import java.util.List;
import java.util.function.Supplier;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;

/** A list of keys over a canvas, in two columns; a click takes it away. */
public final class KeysPanel {

    private static final int LINE = 24;
    private static final int COLUMN = 290;
    private static final int HEAD = 56;
    private static final int FOOT = 20;
    /** Keys that are wider than this move the words beside them. */
    private static final int KEYS = 110;

    /**
     * A line of it.
     *
     * @param keys what is pressed
     * @param name what that does
     */
    public record Row(String keys, String name) {
    }

    private final Canvas parent;
    private final String title;
    private final Supplier<List<Row>> rows;
    private Canvas panel;

    /** @param rows asked for when it opens */
    public KeysPanel(Canvas parent, String title, Supplier<List<Row>> rows) {
        this.parent = parent;
        this.title = title;
        this.rows = rows;
    }

    /** A list that does not change. */
    public KeysPanel(Canvas parent, String title, List<Row> rows) {
        this(parent, title, () -> rows);
    }

    /** Whether it is in sight. */
    public boolean isOpen() {
        return panel != null && !panel.isDisposed();
    }

    /** Shows it, or takes it away. */
    public void toggle() {
        if (isOpen()) {
            panel.dispose();
            parent.redraw();
            return;
        }
        List<Row> shown = rows.get();
        panel = new Canvas(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        Look look = new Look(panel);
        Rectangle area = parent.getClientArea();
        int lines = (shown.size() + 1) / 2;
        int line = Math.max(18, Math.min(LINE, (area.height - HEAD - FOOT) / Math.max(1, lines)));
        Point size = new Point(2 * COLUMN + 40, lines * line + HEAD + FOOT);
        panel.setBounds(Math.max(0, (area.width - size.x) / 2), Math.max(0, (area.height - size.y) / 2), size.x, size.y);
        panel.addPaintListener(e -> paint(e.gc, look, shown, lines, line, size));
        panel.addListener(SWT.MouseDown, e -> toggle());
        panel.moveAbove(null);
    }

    private void paint(GC gc, Look look, List<Row> shown, int lines, int line, Point size) {
        gc.setAntialias(SWT.ON);
        gc.setBackground(look.colour(Palette.WHITE));
        gc.fillRectangle(0, 0, size.x, size.y);
        gc.setForeground(look.colour(Palette.BLUE));
        gc.drawRectangle(0, 0, size.x - 1, size.y - 1);
        gc.setFont(look.font(2, true));
        gc.setForeground(look.colour(Palette.TEXT));
        gc.drawText(title, 24, 18, true);
        for (int i = 0; i < shown.size(); i++) {
            int x = 24 + i / lines * COLUMN;
            int y = HEAD + i % lines * line;
            gc.setFont(look.font(-1, true));
            Point k = gc.textExtent(shown.get(i).keys());
            gc.setBackground(look.colour(Palette.BAR));
            gc.fillRoundRectangle(x, y, k.x + 12, line - 5, 6, 6);
            gc.setForeground(look.colour(Palette.LINE));
            gc.drawRoundRectangle(x, y, k.x + 12, line - 5, 6, 6);
            gc.setForeground(look.colour(Palette.TEXT));
            gc.drawText(shown.get(i).keys(), x + 6, y + (line - 5 - k.y) / 2, true);
            gc.setFont(look.font(0, false));
            Point n = gc.textExtent(shown.get(i).name());
            gc.drawText(shown.get(i).name(), x + Math.max(KEYS, k.x + 12) + 8, y + (line - 5 - n.y) / 2, true);
        }
    }
}
