// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.start;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;

/** A large action: a picture, a line, a word of explanation. Works by mouse, Enter and space. */
final class ActionTile extends Canvas {

    private final Look look;
    private final String icon;
    private final String title;
    private final String words;
    private boolean hot;

    ActionTile(Composite parent, Look look, String icon, String title, String words, Runnable action) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.look = look;
        this.icon = icon;
        this.title = title;
        this.words = words;
        setLayoutData(new GridData(248, 128));
        setCursor(getDisplay().getSystemCursor(SWT.CURSOR_HAND));
        addPaintListener(e -> paint(e.gc));
        addListener(SWT.MouseEnter, e -> hot(true));
        addListener(SWT.MouseExit, e -> hot(false));
        addListener(SWT.FocusIn, e -> redraw());
        addListener(SWT.FocusOut, e -> redraw());
        addListener(SWT.MouseUp, e -> {
            if (e.button == 1) {
                action.run();
            }
        });
        addListener(SWT.KeyDown, e -> key(e, action));
        addListener(SWT.Traverse, e -> e.doit = e.detail != SWT.TRAVERSE_RETURN);
        describe();
    }

    private void describe() {
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                e.result = title + ". " + words;
            }
        });
        getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent e) {
                e.detail = ACC.ROLE_PUSHBUTTON;
            }
        });
    }

    private void key(Event e, Runnable action) {
        if (e.character == SWT.CR || e.character == ' ') {
            action.run();
        }
    }

    private void hot(boolean on) {
        hot = on;
        redraw();
    }

    private void paint(GC gc) {
        Point size = getSize();
        boolean on = isEnabled();
        gc.setAntialias(SWT.ON);
        gc.setBackground(look.colour(Palette.BAR));
        gc.fillRectangle(0, 0, size.x, size.y);
        gc.setBackground(look.colour(hot && on ? Palette.tint(Palette.SKY, 0.18) : Palette.WHITE));
        gc.fillRoundRectangle(1, 1, size.x - 3, size.y - 3, 12, 12);
        gc.setForeground(look.colour((hot || isFocusControl()) && on ? Palette.BLUE : Palette.LINE));
        gc.setLineWidth(isFocusControl() ? 2 : 1);
        gc.drawRoundRectangle(1, 1, size.x - 3, size.y - 3, 12, 12);
        Image image = look.icon("start/" + icon);
        Rectangle b = image.getBounds();
        gc.drawImage(image, 20, 18);
        gc.setFont(look.font(2, true));
        gc.setForeground(look.colour(on ? Palette.TEXT : Palette.QUIET));
        gc.drawText(title, 20, 26 + b.height, true);
        int y = 32 + b.height + gc.textExtent(title).y;
        gc.setFont(look.font(-1, false));
        gc.setForeground(look.colour(Palette.QUIET));
        gc.drawText(words, 20, y, true);
    }
}
