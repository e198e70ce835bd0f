// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.view;

import java.util.List;
import java.util.Optional;

import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.probeleaf.job.mark.ReadingMark;
import org.probeleaf.job.round.ProbeRound;
import org.probeleaf.job.round.RoundPin;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.session.SheetSession;

/**
 * The pins of the selected part in order: type what is read at one, Enter, and the next is on. Up and down choose
 * another pin; an empty Enter passes one over.
 */
public final class ProbeRoundView extends SessionView {

    private Head head;
    private PlainTable<RoundPin> table;
    private QuickEntry entry;
    private Look look;
    private String ref;
    private List<RoundPin> pins = List.of();
    private String current;
    private boolean going;

    @Override
    protected void createContent(Composite parent) {
        look = new Look(parent);
        Head.column(parent);
        head = new Head(parent, look);
        table = new PlainTable<>(parent, RoundPin.class, p -> entry.focus());
        table.column("Pin", 16, 50, p -> p.pin().label(), p -> look.icon(icon(p)));
        table.column("Name", 20, 50, RoundPin::name, null);
        table.column("Net", 22, 54, p -> p.net() == null ? "" : facts().map(f -> f.title(p.net())).orElse(""), null);
        table.column("Should be", 44, 90, RoundPin::should, null);
        table.column("Reading", 30, 70, ProbeRoundView::reading, this::verdict);
        table.hint("Select a part, or one of its pins, on the sheet: its pins are probed here one after another.");
        table.viewer().addSelectionChangedListener(e -> {
            if (!going && e.getSelection() instanceof IStructuredSelection s && s.getFirstElement() instanceof RoundPin p) {
                current = p.place().text();
                entry.show(p);
                walk(p);
            }
        });
        entry = new QuickEntry(parent, "Reading: 4.9V, L, bad; Enter goes on", new QuickEntry.Host() {
            @Override
            public Optional<SheetSession> session() {
                return ProbeRoundView.this.session();
            }

            @Override
            public void entered(boolean typed) {
                step(1);
            }
        });
        entry.onArrow(this::step);
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
    protected void refresh() {
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
        if (round.isEmpty()) {
            entry.show(null);
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
            entry.show(next);
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

    private void walk(RoundPin p) {
        session().ifPresent(s -> BoardWalk.go(s, p.place()));
    }

    private void step(int by) {
        int index = pins.indexOf(at(current).orElse(null)) + by;
        if (index >= 0 && index < pins.size()) {
            RoundPin next = pins.get(index);
            current = next.place().text();
            mark(next);
            entry.show(next);
            walk(next);
            entry.focus();
        }
    }

    @Override
    public void selectionChanged() {
        refresh();
    }

    @Override
    public void setFocus() {
        if (entry.visible()) {
            entry.focus();
        } else {
            table.focus();
        }
    }
}
