// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.view;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;
import org.probeleaf.workbench.session.Following;
import org.probeleaf.workbench.session.Following.Reach;

/** Buttons that say how far the selected signal is followed, and which way. */
final class ReachBar {

    private final Map<Reach, Button> reaches = new EnumMap<>(Reach.class);
    private final Button back;
    private Following now = Following.NET;

    ReachBar(Composite parent, Consumer<Following> chosen) {
        Composite bar = new Composite(parent, SWT.NONE);
        bar.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        bar.setBackground(new Look(bar).colour(Palette.WHITE));
        bar.setBackgroundMode(SWT.INHERIT_FORCE);
        RowLayout row = new RowLayout(SWT.HORIZONTAL);
        row.marginLeft = 10;
        row.spacing = 10;
        bar.setLayout(row);
        for (Reach reach : Reach.values()) {
            Button button = new Button(bar, SWT.RADIO);
            button.setText(reach.title());
            button.setToolTipText(reach.words() + " (G)");
            button.addListener(SWT.Selection, e -> {
                if (button.getSelection()) {
                    chosen.accept(now.with(reach));
                }
            });
            reaches.put(reach, button);
        }
        back = new Button(bar, SWT.CHECK);
        back.setText("Where from");
        back.setToolTipText("Follow against the signal, to where it comes from");
        back.addListener(SWT.Selection, e -> chosen.accept(now.withBack(back.getSelection())));
        show(now);
    }

    /** Shows what is so; nobody is told. */
    void show(Following following) {
        if (!back.isDisposed()) {
            now = following;
            reaches.forEach((reach, button) -> button.setSelection(reach == following.reach()));
            back.setSelection(following.back());
            back.setEnabled(following.reach() != Reach.NET);
        }
    }
}
