// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.view;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.probeleaf.job.SheetReading;
import org.probeleaf.job.change.RemoveCorrection;
import org.probeleaf.job.mark.KeptCorrection;
import org.probeleaf.recognition.correction.Outcome;
import org.probeleaf.recognition.correction.Spot;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;
import org.probeleaf.workbench.session.Facts;

/** The corrections of the reading, in their order, each with what became of it; any one can be taken back. */
public final class CorrectionsView extends SessionView {

    private record Row(KeptCorrection kept, Outcome outcome) {
    }

    private PlainTable<Row> table;
    private Foot foot;

    @Override
    protected void createContent(Composite parent) {
        Look look = new Look(parent);
        Head.column(parent);
        table = new PlainTable<>(parent, Row.class, this::go);
        table.column("Correction", 50, 140, r -> capital(r.kept().correction().words()), r -> look.icon("corrections"));
        table.column("Sheet", 12, 52, r -> String.valueOf(spot(r).page()), null);
        table.column("Shows", 38, 80, CorrectionsView::state, r -> holds(r) ? null : look.icon("doubts"));
        table.colours(r -> holds(r) ? null : look.colour(Palette.VERMILLION));
        table.hint("What you correct in the reading of the sheets stands here. Right-click a place on the sheet, or"
                + " choose from the Correct menu.");
        foot = new Foot(parent);
        table.viewer().addSelectionChangedListener(e -> selected(selected()));
        table.viewer().getTable().addListener(SWT.KeyDown, e -> {
            if (e.keyCode == SWT.DEL && selected() != null) {
                takeBack(selected());
            }
        });
    }

    private void selected(Row row) {
        foot.show(row == null ? "" : capital(row.kept().correction().words()) + ". Shows: " + state(row) + ".");
        if (row != null) {
            go(row);
            if (session().filter(s -> !s.readOnly()).isPresent()) {
                foot.button("Take it back", "remove", () -> takeBack(row));
            }
        }
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private static Spot spot(Row row) {
        return row.kept().correction().spots().get(0);
    }

    private static boolean holds(Row row) {
        return row.outcome() == null || row.outcome().holds();
    }

    private static String state(Row row) {
        Outcome outcome = row.outcome();
        return outcome == null ? "when the sheets have been read" : switch (outcome.state()) {
            case DONE -> "yes";
            case ALREADY -> "the sheets are now read that way";
            case WITHOUT_EFFECT -> "no: " + outcome.why();
            case NO_PLACE -> "no place: " + outcome.why();
        };
    }

    @Override
    protected void refresh() {
        List<Row> rows = new ArrayList<>();
        facts().map(Facts::state).ifPresent(state -> {
            SheetReading reading = state.sheetReading();
            for (int i = 0; i < reading.corrections().size(); i++) {
                rows.add(new Row(reading.corrections().get(i), reading.outcome(i)));
            }
        });
        table.show(rows);
    }

    private Row selected() {
        return table.viewer().getSelection() instanceof IStructuredSelection s && s.getFirstElement() instanceof Row row
                ? row : null;
    }

    private void takeBack(Row row) {
        session().filter(s -> !s.readOnly())
                .ifPresent(s -> s.apply(new RemoveCorrection(row.kept().id(), Instant.now())));
    }

    private void go(Row row) {
        Spot spot = spot(row);
        session().ifPresent(s -> {
            s.select(facts().map(f -> f.at(spot.page(), spot.at(), 3)).orElse(null));
            s.reveal(spot.page(), Box.of(spot.at()).grow(40));
        });
    }

    @Override
    public void setFocus() {
        table.focus();
    }
}
