// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.view;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.probeleaf.job.JobState;
import org.probeleaf.job.LogEntry;
import org.probeleaf.job.mark.CaptureMark;
import org.probeleaf.job.mark.LabelMark;
import org.probeleaf.job.mark.Mark;
import org.probeleaf.job.mark.NoteMark;
import org.probeleaf.job.mark.ReadingMark;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;
import org.probeleaf.workbench.session.Selection;

/** Every reading, note, label and change in order of time, the latest first; what was undone stands back. */
public final class BenchLogView extends SessionView {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm");
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM HH:mm");

    private record Row(LogEntry entry, Mark mark) {
    }

    private PlainTable<Row> table;
    private Look look;

    @Override
    protected void createContent(Composite parent) {
        look = new Look(parent);
        Head.column(parent);
        table = new PlainTable<>(parent, Row.class, this::go);
        table.column("When", 14, 62, r -> when(r.entry().when()), null);
        table.column("What", 54, 120, BenchLogView::words, this::icon);
        table.column("Verdict", 40, 60, BenchLogView::verdict, this::verdictIcon);
        table.hint("Readings, notes and names stand here in order of time.");
        table.colours(r -> r.entry().status() == LogEntry.Status.DONE ? null : look.colour(Palette.QUIET));
    }

    @Override
    protected void refresh() {
        List<Row> rows = new ArrayList<>();
        facts().ifPresent(facts -> {
            JobState state = facts.state();
            Map<Instant, Mark> marks = new HashMap<>();
            Stream.of(state.labels(), state.notes(), state.readings(), state.captures()).flatMap(List::stream)
                    .forEach(m -> marks.put(m.when(), m));
            state.log().forEach(e -> rows.add(new Row(e, marks.get(e.when()))));
        });
        Collections.reverse(rows);
        table.show(rows);
    }

    private static String when(Instant when) {
        ZonedDateTime t = when.atZone(ZoneId.systemDefault());
        return (t.toLocalDate().equals(LocalDate.now()) ? TIME : DAY).format(t);
    }

    private static String words(Row row) {
        String words = row.entry().words();
        String start = words.isEmpty() ? "" : words.substring(0, 1).toUpperCase(java.util.Locale.ROOT)
                + words.substring(1);
        return row.entry().status() == LogEntry.Status.DONE ? start : start + "  (undone)";
    }

    private static String verdict(Row row) {
        return row.mark() instanceof ReadingMark r && r.verdict() != null ? r.verdict().reason() : "";
    }

    private Image icon(Row row) {
        if (row.mark() instanceof ReadingMark) {
            return look.icon("reading");
        }
        if (row.mark() instanceof CaptureMark) {
            return look.icon("wave");
        }
        if (row.mark() instanceof NoteMark) {
            return look.icon("note");
        }
        return row.mark() instanceof LabelMark ? look.icon("name") : look.icon("log");
    }

    private Image verdictIcon(Row row) {
        if (!(row.mark() instanceof ReadingMark r) || r.verdict() == null) {
            return null;
        }
        return look.icon(VerdictIcons.of(r.verdict().outcome()));
    }

    private void go(Row row) {
        Mark mark = row.mark();
        if (mark == null) {
            return;
        }
        session().ifPresent(s -> {
            Selection there = facts().map(f -> f.at(mark.page(), mark.at(), 3))
                    .orElse(Selection.spot(mark.page(), mark.at()));
            s.selectMark(mark.id(), there);
            s.reveal(mark.page(), Box.of(mark.at()).grow(60));
        });
    }

    @Override
    public void setFocus() {
        table.focus();
    }
}
