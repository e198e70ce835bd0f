// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.view;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;

/** The foot of a view with a list: the selected row in full, and buttons for what can be done to it. */
public final class Foot {

    private final Composite foot;
    private final Label words;
    private final Composite buttons;
    private final Look look;

    /** Makes it at the foot of a view. */
    public Foot(Composite parent) {
        foot = new Composite(parent, SWT.NONE);
        look = new Look(foot);
        foot.setLayoutData(new GridData(SWT.FILL, SWT.END, true, false));
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = 8;
        layout.marginHeight = 6;
        foot.setLayout(layout);
        words = new Label(foot, SWT.WRAP);
        words.setForeground(look.colour(Palette.TEXT));
        GridData wide = new GridData(SWT.FILL, SWT.CENTER, true, false);
        wide.widthHint = 180;
        words.setLayoutData(wide);
        buttons = new Composite(foot, SWT.NONE);
        buttons.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        RowLayout row = new RowLayout(SWT.HORIZONTAL);
        row.marginLeft = 0;
        buttons.setLayout(row);
        show("");
    }

    /** Says something and takes all buttons away; nothing is shown of an empty text. */
    public void show(String text) {
        if (foot.isDisposed()) {
            return;
        }
        for (Control c : buttons.getChildren()) {
            c.dispose();
        }
        words.setText(text.replace("&", "&&"));
        ((GridData) foot.getLayoutData()).exclude = text.isEmpty();
        foot.setVisible(!text.isEmpty());
        foot.getParent().layout(true, true);
    }

    /** Adds something that can be done. */
    public void button(String text, String icon, Runnable action) {
        if (!foot.isDisposed()) {
            Button button = new Button(buttons, SWT.PUSH);
            button.setText(text);
            button.setImage(look.icon(icon));
            button.addListener(SWT.Selection, e -> action.run());
            foot.getParent().layout(true, true);
        }
    }
}
