// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.view;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;

/** Two lines at the top of a view: what it is about, and a word on it. */
public final class Head {

    private final Label title;
    private final Label words;

    /** Makes it at the top of a view. */
    public Head(Composite parent, Look look) {
        Composite head = new Composite(parent, SWT.NONE);
        head.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        head.setBackground(look.colour(Palette.WHITE));
        head.setBackgroundMode(SWT.INHERIT_FORCE);
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = 10;
        layout.marginHeight = 7;
        layout.verticalSpacing = 2;
        head.setLayout(layout);
        title = new Label(head, SWT.NONE);
        title.setFont(look.font(2, true));
        title.setForeground(look.colour(Palette.TEXT));
        title.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        words = new Label(head, SWT.WRAP);
        words.setForeground(look.colour(Palette.QUIET));
        GridData wide = new GridData(SWT.FILL, SWT.CENTER, true, false);
        wide.widthHint = 180;
        words.setLayoutData(wide);
    }

    /** Shows a title and a word on it. */
    public void show(String head, String line) {
        if (!title.isDisposed()) {
            title.setText(head.replace("&", "&&"));
            words.setText(line.replace("&", "&&"));
            title.getParent().getParent().layout(true, true);
        }
    }

    /** A view's content: one column without margins, on white. */
    public static void column(Composite parent) {
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.verticalSpacing = 0;
        parent.setLayout(layout);
    }
}
