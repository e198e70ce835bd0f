// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.sheet;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.commands.Command;
import org.eclipse.core.commands.common.NotDefinedException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.ui.IWorkbenchPartSite;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.keys.IBindingService;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;

/** The list of keys over the sheet, made of the bindings as they are, changed ones included. */
final class KeysOverlay {

    private static final String OURS = "org.probeleaf.workbench.command.";
    private static final int LINE = 24;
    private static final int COLUMN = 290;

    private record Row(String keys, String name) {
    }

    private final Canvas parent;
    private final IWorkbenchPartSite site;
    private Canvas panel;

    KeysOverlay(Canvas parent, IWorkbenchPartSite site) {
        this.parent = parent;
        this.site = site;
    }

    boolean isOpen() {
        return panel != null && !panel.isDisposed();
    }

    void toggle() {
        if (isOpen()) {
            panel.dispose();
            parent.redraw();
            return;
        }
        List<Row> rows = rows();
        panel = new Canvas(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        Look look = new Look(panel);
        int lines = (rows.size() + 1) / 2;
        Point size = new Point(2 * COLUMN + 40, lines * LINE + 76);
        Rectangle area = parent.getClientArea();
        panel.setBounds(Math.max(0, (area.width - size.x) / 2), Math.max(0, (area.height - size.y) / 2), size.x,
                size.y);
        panel.addPaintListener(e -> paint(e.gc, look, rows, lines, size));
        panel.addListener(SWT.MouseDown, e -> toggle());
        panel.moveAbove(null);
    }

    private List<Row> rows() {
        IBindingService bindings = site.getService(IBindingService.class);
        List<Row> rows = new ArrayList<>(List.of(new Row("Wheel", "Zoom to the pointer"),
                new Row("Space + drag", "Move the sheet"), new Row("Double click", "Fit a part")));
        List<Command> commands = new ArrayList<>(List.of(site.getService(ICommandService.class).getDefinedCommands()));
        commands.sort((a, b) -> a.getId().compareTo(b.getId()));
        for (Command command : commands) {
            String keys = command.getId().startsWith(OURS) ? bindings.getBestActiveBindingFormattedFor(command.getId())
                    : null;
            if (keys != null) {
                try {
                    rows.add(new Row(keys, command.getName()));
                } catch (NotDefinedException e) {
                    rows.add(new Row(keys, command.getId()));
                }
            }
        }
        return rows;
    }

    private void paint(GC gc, Look look, List<Row> rows, int lines, Point size) {
        gc.setAntialias(SWT.ON);
        gc.setBackground(look.colour(Palette.WHITE));
        gc.fillRectangle(0, 0, size.x, size.y);
        gc.setForeground(look.colour(Palette.BLUE));
        gc.drawRectangle(0, 0, size.x - 1, size.y - 1);
        gc.setFont(look.font(2, true));
        gc.setForeground(look.colour(Palette.TEXT));
        gc.drawText("Keys on the sheet", 24, 18, true);
        for (int i = 0; i < rows.size(); i++) {
            int x = 24 + i / lines * COLUMN;
            int y = 56 + i % lines * LINE;
            gc.setFont(look.font(-1, true));
            Point k = gc.textExtent(rows.get(i).keys());
            gc.setBackground(look.colour(Palette.BAR));
            gc.fillRoundRectangle(x, y, k.x + 12, LINE - 5, 6, 6);
            gc.setForeground(look.colour(Palette.LINE));
            gc.drawRoundRectangle(x, y, k.x + 12, LINE - 5, 6, 6);
            gc.setForeground(look.colour(Palette.TEXT));
            gc.drawText(rows.get(i).keys(), x + 6, y + (LINE - 5 - k.y) / 2, true);
            gc.setFont(look.font(0, false));
            gc.drawText(rows.get(i).name(), x + 118, y, true);
        }
    }
}
