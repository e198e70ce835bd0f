// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.view;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.probeleaf.job.change.AddReading;
import org.probeleaf.job.expectation.Expectation;
import org.probeleaf.job.mark.Anchor;
import org.probeleaf.job.mark.ReadingMark;
import org.probeleaf.job.round.ProbeRound;
import org.probeleaf.job.round.RoundPin;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;
import org.probeleaf.workbench.session.SheetSession;

/**
 * The pins of the selected part in order: type what is read at one, Enter, and the next is on. Up and down choose
 * another pin; an empty Enter passes one over.
 */
public final class ProbeRoundView extends SessionView {

    private Head head;
    private PlainTable<RoundPin> table;
    private Composite entry;
    private Label pin;
    private Text text;
    private Label understood;
    private Look look;
    private String ref;
    private List<RoundPin> pins = List.of();
    private String current;
    private boolean going;

    @Override
    void createContent(Composite parent) {
        look = new Look(parent);
        Head.column(parent);
        head = new Head(parent, look);
        table = new PlainTable<>(parent, RoundPin.class, p -> text.setFocus());
        table.column("Pin", 16, 50, p -> p.pin().label(), p -> look.icon(icon(p)));
        table.column("Name", 20, 50, RoundPin::name, null);
        table.column("Net", 22, 54, p -> p.net() == null ? "" : facts().map(f -> f.title(p.net())).orElse(""), null);
        table.column("Should be", 44, 90, RoundPin::should, null);
        table.column("Reading", 30, 70, ProbeRoundView::reading, this::verdict);
        table.hint("Select a part, or one of its pins, on the sheet: its pins are probed here one after another.");
        table.viewer().addSelectionChangedListener(e -> {
            if (!going && e.getSelection() instanceof IStructuredSelection s && s.getFirstElement() instanceof RoundPin p) {
                current = p.place().text();
                show(p);
                walk(p);
            }
        });
        makeEntry(parent);
    }

    private void makeEntry(Composite parent) {
        entry = new Composite(parent, SWT.NONE);
        entry.setLayoutData(new GridData(SWT.FILL, SWT.END, true, false));
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 8;
        entry.setLayout(layout);
        pin = new Label(entry, SWT.NONE);
        pin.setFont(look.font(0, true));
        GridData wide = new GridData(SWT.BEGINNING, SWT.CENTER, false, false);
        wide.widthHint = 70;
        pin.setLayoutData(wide);
        text = new Text(entry, SWT.BORDER | SWT.SINGLE);
        text.setMessage("Reading: 4.9V, L, 2.2V flat; Enter goes on");
        text.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        understood = new Label(entry, SWT.WRAP);
        understood.setFont(look.font(-1, false));
        GridData line = new GridData(SWT.FILL, SWT.CENTER, true, false, 2, 1);
        line.widthHint = 200;
        understood.setLayoutData(line);
        text.addListener(SWT.Modify, e -> understand());
        text.addListener(SWT.DefaultSelection, e -> enter());
        text.addListener(SWT.KeyDown, this::arrow);
        entry.setVisible(false);
    }

    private void arrow(Event e) {
        if (e.keyCode == SWT.ARROW_DOWN || e.keyCode == SWT.ARROW_UP) {
            e.doit = false;
            step(e.keyCode == SWT.ARROW_DOWN ? 1 : -1);
        }
    }

    private static String icon(RoundPin p) {
        return WhereItGoesView.icon(p.direction());
    }

    private static String reading(RoundPin p) {
        ReadingMark r = p.latest();
        return r == null ? "" : r.shown() + (r.remark().isEmpty() ? "" : " " + r.remark());
    }

    private Image verdict(RoundPin p) {
        return p.latest() == null || p.latest().verdict() == null ? null
                : look.icon(VerdictIcons.of(p.latest().verdict().outcome()));
    }

    @Override
    void refresh() {
        String selected = session().flatMap(SheetSession::selection).filter(s -> s.part() != null)
                .map(s -> s.part().ref()).orElse(ref);
        if (selected != null && !selected.equals(ref)) {
            current = session().flatMap(SheetSession::selection).filter(s -> s.pin() != null)
                    .map(s -> s.place().text()).orElse(null);
        }
        ref = selected;
        Optional<ProbeRound> round = ref == null ? Optional.empty()
                : facts().flatMap(f -> ProbeRound.of(f.state(), f.book(), ref));
        pins = round.map(ProbeRound::pins).orElse(List.of());
        table.show(pins);
        entry.setVisible(!pins.isEmpty() && session().filter(s -> !s.readOnly()).isPresent());
        if (round.isEmpty()) {
            head.show("No part selected", "Click a part or a pin on the sheet.");
            return;
        }
        long read = pins.stream().filter(p -> p.latest() != null).count();
        head.show(ref + (round.get().part().value() == null ? "" : "  " + round.get().part().value()),
                read + " of " + pins.size() + " pins read");
        RoundPin next = at(current).or(round.get()::firstUnread).orElse(pins.isEmpty() ? null : pins.get(0));
        if (next != null) {
            current = next.place().text();
            mark(next);
            show(next);
        }
    }

    private Optional<RoundPin> at(String place) {
        return pins.stream().filter(p -> p.place().text().equals(place)).findFirst();
    }

    private void mark(RoundPin p) {
        going = true;
        table.viewer().setSelection(new StructuredSelection(p), true);
        going = false;
    }

    private void show(RoundPin p) {
        pin.setText(p.place().text().replace("&", "&&"));
        understand();
        entry.layout(true, true);
    }

    private void walk(RoundPin p) {
        session().ifPresent(s -> BoardWalk.go(s, p.place()));
    }

    private void understand() {
        RoundPin p = at(current).orElse(null);
        if (p == null || text.getText().isBlank()) {
            understood.setText(p == null || p.should().isEmpty() ? "" : "Should be: " + p.should());
            understood.setForeground(look.colour(Palette.QUIET));
            return;
        }
        try {
            ReadingMark r = reading(p, new Anchor(1, new Point(0, 0)));
            understood.setText(r.value().text() + "  " + r.value().kind().title()
                    + (r.verdict() == null ? "" : ": " + r.verdict().reason()));
            understood.setForeground(look.colour(Palette.QUIET));
        } catch (IllegalArgumentException e) {
            understood.setText(e.getMessage());
            understood.setForeground(look.colour(Palette.VERMILLION));
        }
    }

    private ReadingMark reading(RoundPin p, Anchor anchor) {
        Expectation expected = p.expected().isEmpty() ? null : Expectation.parse(p.expected());
        return ReadingMark.of(p.place(), anchor, text.getText(), "", expected, Instant.now());
    }

    private void enter() {
        RoundPin p = at(current).orElse(null);
        if (p == null) {
            return;
        }
        if (!text.getText().isBlank()) {
            Anchor anchor = facts().flatMap(f -> Anchor.of(p.place(), f.netlist())
                    .or(() -> Anchor.of(p.place(), f.board().drawn()))).orElse(null);
            try {
                ReadingMark mark = anchor == null ? null : reading(p, anchor);
                if (mark != null) {
                    session().ifPresent(s -> s.apply(new AddReading(mark)));
                }
            } catch (IllegalArgumentException e) {
                understand();
                return;
            }
            text.setText("");
        }
        step(1);
    }

    private void step(int by) {
        int index = pins.indexOf(at(current).orElse(null)) + by;
        if (index >= 0 && index < pins.size()) {
            RoundPin next = pins.get(index);
            current = next.place().text();
            mark(next);
            show(next);
            walk(next);
            text.setFocus();
        }
    }

    @Override
    public void selectionChanged() {
        refresh();
    }

    @Override
    public void setFocus() {
        if (entry.isVisible()) {
            text.setFocus();
        } else {
            table.focus();
        }
    }
}
