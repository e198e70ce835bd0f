// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.view;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.probeleaf.diagnosis.NextProbe;
import org.probeleaf.job.round.ProbeRound;
import org.probeleaf.job.round.RoundPin;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;
import org.probeleaf.workbench.session.Facts;
import org.probeleaf.workbench.session.SheetSession;

/** Where to probe next and why, with a line to say what was read there. */
final class NextProbePane {

    private final Supplier<Optional<SheetSession>> session;
    private final Supplier<Optional<Facts>> facts;
    private final Composite pane;
    private final Label title;
    private final Label why;
    private final QuickEntry entry;
    private NextProbe now;

    NextProbePane(Composite parent, Supplier<Optional<SheetSession>> session, Supplier<Optional<Facts>> facts) {
        this.session = session;
        this.facts = facts;
        pane = new Composite(parent, SWT.NONE);
        Look look = new Look(pane);
        pane.setLayoutData(new GridData(SWT.FILL, SWT.END, true, false));
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.verticalSpacing = 0;
        pane.setLayout(layout);
        Composite words = new Composite(pane, SWT.NONE);
        words.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        words.setLayout(new GridLayout(1, false));
        title = new Label(words, SWT.WRAP);
        title.setFont(look.font(1, true));
        title.setForeground(look.colour(Palette.TEXT));
        title.setLayoutData(wide());
        why = new Label(words, SWT.WRAP);
        why.setForeground(look.colour(Palette.QUIET));
        why.setLayoutData(wide());
        entry = new QuickEntry(pane, "0.2V, H, bad", new QuickEntry.Host() {
            @Override
            public Optional<SheetSession> session() {
                return session.get();
            }

            @Override
            public void entered(boolean typed) {
                entry().focus();
            }
        }, "Good", "Bad", "Low", "High");
        title.addListener(SWT.MouseDown, e -> go());
        why.addListener(SWT.MouseDown, e -> go());
        title.setToolTipText("Click to go there");
        show(null, false);
    }

    private QuickEntry entry() {
        return entry;
    }

    private static GridData wide() {
        GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
        data.widthHint = 200;
        return data;
    }

    private void go() {
        if (now != null) {
            BoardWalk.go(session.get().orElse(null), now.at());
        }
    }

    /**
     * Shows a probe.
     *
     * @param next   the probe, or null where none tells more
     * @param wrong  whether anything is suspected
     */
    void show(NextProbe next, boolean wrong) {
        if (pane.isDisposed()) {
            return;
        }
        now = next;
        boolean writable = session.get().filter(s -> !s.readOnly()).isPresent();
        boolean visible = wrong && (next == null || writable);
        ((GridData) pane.getLayoutData()).exclude = !visible;
        pane.setVisible(visible);
        if (next != null) {
            title.setText(("Probe next: " + next.at().text() + (next.net() == null ? "" : "  "
                    + facts.get().map(f -> f.title(next.net())).orElse(""))).replace("&", "&&"));
            why.setText((PutBackView.capital(next.why()) + String.format(Locale.ROOT, ". About %.1f more probes.",
                    next.expectedProbes())).replace("&", "&&"));
        } else {
            title.setText("No probe tells more");
            why.setText("What is left cannot be told apart by probing: lift a pin, or replace the likeliest part.");
        }
        entry.show(next == null ? null : pin(next.at()).orElse(null));
        pane.getParent().layout(true, true);
    }

    /** The place as a pin of a round, with what it should look like. */
    private Optional<RoundPin> pin(Place place) {
        return place instanceof Place.OfPin p ? facts.get().flatMap(f -> ProbeRound.of(f.state(), f.book(), p.ref()))
                .flatMap(r -> r.pins().stream().filter(x -> x.place().text().equalsIgnoreCase(place.text())).findFirst())
                : Optional.empty();
    }

    /** Puts the caret into the line; says whether there is one. */
    boolean focus() {
        if (pane.isVisible() && entry.visible()) {
            entry.focus();
            return true;
        }
        return false;
    }
}
