// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.view;

import java.time.Instant;
import java.util.Locale;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.probeleaf.job.change.AddReading;
import org.probeleaf.job.expectation.Expectation;
import org.probeleaf.job.mark.Anchor;
import org.probeleaf.job.mark.Circumstances;
import org.probeleaf.job.mark.ReadingMark;
import org.probeleaf.job.round.RoundPin;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;
import org.probeleaf.workbench.session.Facts;
import org.probeleaf.workbench.session.SheetSession;

/** One line in a view to type what is read at a pin: what is understood stands below while it is typed. */
final class QuickEntry {

    private final Composite entry;
    private final Label pin;
    private final Text text;
    private final Label understood;
    private final Look look;
    private RoundPin now;

    /** Who keeps readings. */
    interface Host {
        Optional<SheetSession> session();

        /** Enter was pressed and what was typed is kept; {@code typed} says whether there was anything. */
        void entered(boolean typed);
    }

    private final Host host;

    /**
     * Makes the line.
     *
     * @param words what is said with a button in place of typing
     */
    QuickEntry(Composite parent, String message, Host host, String... words) {
        this.host = host;
        entry = new Composite(parent, SWT.NONE);
        look = new Look(entry);
        entry.setLayoutData(new GridData(SWT.FILL, SWT.END, true, false));
        GridLayout layout = new GridLayout(2 + words.length, false);
        layout.marginWidth = 8;
        entry.setLayout(layout);
        pin = new Label(entry, SWT.NONE);
        pin.setFont(look.font(0, true));
        GridData wide = new GridData(SWT.BEGINNING, SWT.CENTER, false, false);
        wide.widthHint = 62;
        pin.setLayoutData(wide);
        text = new Text(entry, SWT.BORDER | SWT.SINGLE);
        text.setMessage(message);
        text.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        for (String word : words) {
            Button button = new Button(entry, SWT.PUSH);
            button.setText(word);
            button.setToolTipText("Note " + word.toLowerCase(Locale.ROOT) + " at this pin");
            button.addListener(SWT.Selection, e -> keep(word));
        }
        understood = new Label(entry, SWT.WRAP);
        understood.setFont(look.font(-1, false));
        GridData line = new GridData(SWT.FILL, SWT.CENTER, true, false, 2 + words.length, 1);
        line.widthHint = 200;
        understood.setLayoutData(line);
        text.addListener(SWT.Modify, e -> understand());
        text.addListener(SWT.DefaultSelection, e -> enter());
        entry.setVisible(false);
    }

    /** Up and down arrows in the line, as -1 and 1. */
    void onArrow(Consumer<Integer> arrow) {
        text.addListener(SWT.KeyDown, e -> {
            if (e.keyCode == SWT.ARROW_DOWN || e.keyCode == SWT.ARROW_UP) {
                e.doit = false;
                arrow.accept(e.keyCode == SWT.ARROW_DOWN ? 1 : -1);
            }
        });
    }

    /** @param at where it is read, or null to hide the line */
    void show(RoundPin at) {
        boolean writable = host.session().filter(s -> !s.readOnly()).isPresent();
        now = at;
        entry.setVisible(at != null && writable);
        if (at != null) {
            pin.setText(at.place().text().replace("&", "&&"));
            understand();
            entry.layout(true, true);
        }
    }

    boolean visible() {
        return entry.isVisible();
    }

    void focus() {
        text.setFocus();
    }

    private void understand() {
        if (now == null || text.getText().isBlank()) {
            say(now == null || now.should().isEmpty() ? "" : "Should be: " + now.should(), false);
            return;
        }
        try {
            ReadingMark r = reading(new Anchor(1, new Point(0, 0)), text.getText());
            say(r.shown() + "  " + r.value().kind().title()
                    + (r.circumstances().isEmpty() ? "" : " " + r.circumstances().text())
                    + (r.verdict() == null ? "" : ": " + r.verdict().reason()), false);
        } catch (IllegalArgumentException e) {
            say(e.getMessage(), true);
        }
    }

    private void say(String sentence, boolean wrong) {
        understood.setText(sentence.replace("&", "&&"));
        understood.setForeground(look.colour(wrong ? Palette.VERMILLION : Palette.QUIET));
    }

    private ReadingMark reading(Anchor anchor, String typed) {
        Expectation expected = now.expected().isEmpty() ? null : Expectation.parse(now.expected());
        List<ReadingMark> before = host.session().flatMap(SheetSession::facts).map(f -> f.state().readings()).orElse(List.of());
        return ReadingMark.of(now.place(), anchor, Circumstances.sameInstrument(typed, before), "", expected, Instant.now());
    }

    private void enter() {
        boolean typed = !text.getText().isBlank();
        if (!typed || keep(text.getText())) {
            text.setText("");
            host.entered(typed);
        }
    }

    /** Keeps a reading as if it had been typed; says whether it could be understood. */
    boolean keep(String typed) {
        if (now == null) {
            return false;
        }
        Optional<Anchor> anchor = host.session().flatMap(SheetSession::facts).flatMap(this::anchor);
        try {
            ReadingMark mark = anchor.isEmpty() ? null : reading(anchor.get(), typed);
            if (mark != null) {
                host.session().ifPresent(s -> s.apply(new AddReading(mark)));
            }
            return mark != null;
        } catch (IllegalArgumentException e) {
            understand();
            return false;
        }
    }

    private Optional<Anchor> anchor(Facts f) {
        return Anchor.of(now.place(), f.netlist()).or(() -> Anchor.of(now.place(), f.board().drawn()));
    }
}
