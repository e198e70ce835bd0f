// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.sheet;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;
import org.probeleaf.workbench.session.SessionListener;
import org.probeleaf.workbench.session.SheetSession;
import org.probeleaf.workbench.session.Trouble;

/** The strip above the sheet that says what stands in the way, with the way out beside it. */
final class NoticeStrip {

    private final SheetSession session;
    private final Composite strip;
    private final Look look;
    private Trouble shown;

    NoticeStrip(Composite parent, SheetSession session) {
        this.session = session;
        strip = new Composite(parent, SWT.NONE);
        look = new Look(strip);
        strip.setBackground(look.colour(Palette.NOTICE));
        strip.setBackgroundMode(SWT.INHERIT_FORCE);
        GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
        data.exclude = true;
        strip.setLayoutData(data);
        GridLayout layout = new GridLayout(4, false);
        layout.marginWidth = 12;
        layout.marginHeight = 6;
        layout.horizontalSpacing = 10;
        strip.setLayout(layout);
        strip.setVisible(false);
        session.addListener(new SessionListener() {
            @Override
            public void statusChanged() {
                show(session.trouble().orElse(null));
            }
        });
    }

    private void show(Trouble trouble) {
        if (strip.isDisposed() || trouble == shown) {
            return;
        }
        shown = trouble;
        for (Control c : strip.getChildren()) {
            c.dispose();
        }
        if (trouble != null) {
            fill(trouble);
        }
        ((GridData) strip.getLayoutData()).exclude = trouble == null;
        strip.setVisible(trouble != null);
        strip.getParent().layout(true, true);
        for (Control c : strip.getChildren()) {
            if (c instanceof Text) {
                c.setFocus();
            }
        }
    }

    private void fill(Trouble trouble) {
        Label text = new Label(strip, SWT.WRAP);
        text.setText(trouble.text().replace("&", "&&"));
        text.setForeground(look.colour(Palette.TEXT));
        text.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        switch (trouble.kind()) {
            case PASSWORD -> {
                Text password = new Text(strip, SWT.BORDER | SWT.PASSWORD);
                GridData wide = new GridData(180, SWT.DEFAULT);
                password.setLayoutData(wide);
                password.addListener(SWT.DefaultSelection, e -> session.open(password.getText()));
                button("Open", () -> session.open(password.getText()));
                password.setBackground(look.colour(Palette.WHITE));
            }
            case RETRY -> {
                button("Try again", () -> session.open(null));
                button("Dismiss", session::clearTrouble);
            }
            case READ -> {
                button("Read the sheets", () -> {
                    session.clearTrouble();
                    session.recognise();
                });
                button("Dismiss", session::clearTrouble);
            }
            case OPEN_CHANGES -> {
                button("Hand over all the same", () -> {
                    session.clearTrouble();
                    session.handOver(true);
                });
                button("Dismiss", session::clearTrouble);
            }
            case NOTICE -> button("Dismiss", session::clearTrouble);
        }
    }

    private void button(String text, Runnable action) {
        Button button = new Button(strip, SWT.PUSH | SWT.FLAT);
        button.setText(text);
        button.addListener(SWT.Selection, e -> action.run());
    }
}
