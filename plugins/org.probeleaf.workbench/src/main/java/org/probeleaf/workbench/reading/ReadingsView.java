// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.reading;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.probeleaf.job.change.Change;
import org.probeleaf.job.change.OverruleReading;
import org.probeleaf.job.change.RemoveReading;
import org.probeleaf.job.history.HistoryStep;
import org.probeleaf.job.history.HistoryStep.Captured;
import org.probeleaf.job.history.HistoryStep.Done;
import org.probeleaf.job.history.HistoryStep.Read;
import org.probeleaf.job.history.PlaceHistory;
import org.probeleaf.job.mark.Mark;
import org.probeleaf.job.mark.ReadingMark;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;
import org.probeleaf.workbench.session.OwnPartBook;
import org.probeleaf.workbench.session.Selection;
import org.probeleaf.workbench.session.SheetSession;
import org.probeleaf.workbench.view.Foot;
import org.probeleaf.workbench.view.Head;
import org.probeleaf.workbench.view.PlainTable;
import org.probeleaf.workbench.view.SessionView;
import org.probeleaf.workbench.view.VerdictIcons;

/** The readings of the selected place over time, the latest first, with what was done to the board between; all readings where nothing is selected. */
public final class ReadingsView extends SessionView {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm");
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM HH:mm");

    private Look look;
    private Head head;
    private TrendCanvas trend;
    private PlainTable<HistoryStep> table;
    private Foot foot;

    @Override
    protected void createContent(Composite parent) {
        look = new Look(parent);
        Head.column(parent);
        head = new Head(parent, look);
        trend = new TrendCanvas(parent);
        table = new PlainTable<>(parent, HistoryStep.class, this::go);
        table.column("When", 12, 54, s -> when(s.when()), null);
        table.column("At", 12, 52, ReadingsView::at, null);
        table.column("Reading", 42, 120, ReadingsView::what, this::icon);
        table.column("Change", 34, 100, ReadingsView::change, null);
        table.hint("Select a pin or a net on the sheet to see what was read there over time. R pins a reading.");
        table.colours(s -> s instanceof Done ? look.colour(Palette.QUIET) : null);
        foot = new Foot(parent);
        table.viewer().addSelectionChangedListener(e -> chosen(e.getSelection() instanceof IStructuredSelection s ? s : null));
        table.viewer().getTable().addListener(SWT.KeyDown, e -> {
            if (e.keyCode == SWT.DEL) {
                chosenReading().ifPresent(this::remove);
            }
        });
    }

    @Override
    protected void refresh() {
        Place place = session().flatMap(SheetSession::selection).filter(s -> s.net() != null || s.pin() != null)
                .map(Selection::place).orElse(null);
        List<HistoryStep> steps = facts().map(f -> place == null ? all(f.state().readings())
                : PlaceHistory.of(f.state(), place, OwnPartBook.shared().book()).steps()).orElse(List.of());
        List<HistoryStep> latestFirst = new ArrayList<>(steps);
        Collections.reverse(latestFirst);
        long count = steps.stream().filter(Read.class::isInstance).count();
        head.show(place == null ? "All readings" : shown(place), count == 0 ? steps.isEmpty() ? place == null ? "Nothing has been read yet." : "Nothing has been read here yet." : "No readings, but waveforms."
                : count == 1 ? "One reading." : count + " readings, the latest first.");
        trend.show(place == null ? List.of() : steps);
        table.show(latestFirst);
        foot.show("");
    }

    private static List<HistoryStep> all(List<ReadingMark> readings) {
        return readings.stream().<HistoryStep>map(r -> new Read(r, Double.NaN, "")).toList();
    }

    @Override
    public void selectionChanged() {
        refresh();
    }

    private static String when(Instant when) {
        ZonedDateTime t = when.atZone(ZoneId.systemDefault());
        return (t.toLocalDate().equals(LocalDate.now()) ? TIME : DAY).format(t);
    }

    private static String at(HistoryStep step) {
        return step instanceof Read r ? shown(r.reading().place()) : step instanceof Captured c ? shown(c.capture().place()) : "";
    }

    /** A place as people say it. */
    private static String shown(Place place) {
        return place instanceof Place.OfNet net ? net.net() : place.text();
    }

    private static String what(HistoryStep step) {
        if (step instanceof Read r) {
            ReadingMark m = r.reading();
            return m.shown() + (m.remark().isEmpty() ? "" : " " + m.remark())
                    + (m.circumstances().isEmpty() ? "" : " " + m.circumstances().text());
        }
        return step instanceof Captured c ? "waveform " + c.capture().fileName() : ((Done) step).words();
    }

    private static String change(HistoryStep step) {
        return !(step instanceof Read r) || r.changeText().isEmpty() ? ""
                : r.changeText() + (r.board().isEmpty() ? "" : " " + r.board());
    }

    private Image icon(HistoryStep step) {
        if (step instanceof Read r) {
            return look.icon(r.reading().verdict() == null ? "reading" : VerdictIcons.of(r.reading().verdict().outcome()));
        }
        return look.icon(step instanceof Captured ? "wave" : "board");
    }

    private void go(HistoryStep step) {
        Mark mark = step instanceof Read r ? r.reading() : step instanceof Captured c ? c.capture() : null;
        if (mark != null) {
            session().ifPresent(s -> {
                Selection there = facts().map(f -> f.at(mark.page(), mark.at(), 3)).orElse(Selection.spot(mark.page(), mark.at()));
                s.selectMark(mark.id(), there);
                s.reveal(mark.page(), Box.of(mark.at()).grow(60));
            });
        }
    }

    private Optional<ReadingMark> chosenReading() {
        return table.viewer().getStructuredSelection().getFirstElement() instanceof Read r ? Optional.of(r.reading())
                : Optional.empty();
    }

    private void chosen(IStructuredSelection selection) {
        if (selection == null || !(selection.getFirstElement() instanceof Read r)) {
            foot.show("");
            return;
        }
        ReadingMark m = r.reading();
        String expected = m.expectation() == null ? "" : ", expected " + m.expectation().text();
        foot.show(shown(m.place()) + ": " + what(r) + expected
                + (m.verdict() == null ? "" : ". It is " + m.verdict().outcome().name().toLowerCase(Locale.ROOT) + ": "
                        + m.verdict().reason()) + ".");
        if (session().filter(s -> !s.readOnly()).isPresent()) {
            foot.button("Put it right\u2026", "reading", () -> putRight(m));
            foot.button("Own verdict\u2026", "confirm", () -> overrule(m));
            if (m.overruled() && m.judged() != null) {
                foot.button("As judged", "undo", () -> apply(new OverruleReading(m.id(), null, "", Instant.now())));
            }
            foot.button("Take it away", "remove", () -> remove(m));
        }
    }

    private void putRight(ReadingMark mark) {
        ReadingDialog dialog = new ReadingDialog(getSite().getShell(), mark);
        if (dialog.open() == Window.OK) {
            apply(dialog.change());
        }
    }

    private void overrule(ReadingMark mark) {
        OwnVerdictDialog dialog = new OwnVerdictDialog(getSite().getShell(), mark);
        if (dialog.open() == Window.OK) {
            apply(dialog.change());
        }
    }

    private void remove(ReadingMark mark) {
        apply(new RemoveReading(mark.id(), Instant.now()));
    }

    private void apply(Change change) {
        session().filter(s -> !s.readOnly()).ifPresent(s -> s.apply(change));
    }

    @Override
    public void setFocus() {
        table.focus();
    }
}
