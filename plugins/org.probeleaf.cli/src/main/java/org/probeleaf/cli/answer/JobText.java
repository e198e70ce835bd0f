// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.answer;

import java.io.PrintStream;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.probeleaf.job.JobSheet;
import org.probeleaf.job.JobState;
import org.probeleaf.job.LogEntry;
import org.probeleaf.job.details.Hazard;
import org.probeleaf.job.mark.Mark;
import org.probeleaf.job.mark.ReadingMark;
import org.probeleaf.schematic.netlist.Netlist;

/** A job for people. */
public final class JobText {

    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT)
            .withZone(ZoneId.systemDefault());

    private JobText() {
    }

    /** The head, the sheets and the cautions. */
    public static void writeHead(PrintStream out, JobState state) {
        head(out, "Unit", state.details().unit());
        head(out, "Customer", state.details().customer());
        head(out, "Complaint", state.details().complaint());
        head(out, "Technician", state.details().technician());
        for (JobSheet sheet : state.sheets()) {
            int last = sheet.firstPage() + sheet.pageCount() - 1;
            head(out, "Sheet", sheet.fileName() + ", page " + sheet.firstPage()
                    + (last > sheet.firstPage() ? " to " + last : ""));
        }
        Netlist netlist = state.netlist();
        head(out, "Connected", netlist == null ? "not read yet" : Words.count(netlist.parts().size(), "part") + ", "
                + Words.count(netlist.nets().size(), "net") + ", " + Words.count(netlist.doubts().size(), "doubt"));
        cautions(out, state.details().hazards());
    }

    /** Everything. */
    public static void write(PrintStream out, JobState state) {
        writeHead(out, state);
        marks(out, "Labels", state.labels(), l -> at(l) + "  " + l.text());
        marks(out, "Notes", state.notes(), n -> at(n) + "  " + n.text().replaceAll("\\s*\\R\\s*", " / "));
        marks(out, "Readings", state.readings(), JobText::reading);
        marks(out, "Captures", state.captures(), c -> at(c) + "  " + c.fileName()
                + (c.note().isEmpty() ? "" : "  " + c.note()));
        marks(out, "Corrections", CorrectionText.lines(state), l -> l);
        marks(out, "On the board", state.boards().standing(), BoardText::line);
        if (!state.boards().open().isEmpty()) {
            BoardText.open(out, state.boards().open());
        }
        marks(out, "Log", state.log(), e -> WHEN.format(e.when()) + "  " + e.words() + status(e));
        head(out, "Undo", state.undoName() == null ? "" : state.undoName());
        head(out, "Redo", state.redoName() == null ? "" : state.redoName());
    }

    /** A reading in one line, with its verdict and the reason. */
    public static String reading(ReadingMark r) {
        String verdict = r.verdict() == null ? ""
                : (r.expectation() == null ? "; " : "; expected " + r.expectation().text() + ": ") + r.verdict().outcome().name().toLowerCase(Locale.ROOT)
                + " (" + r.verdict().reason() + ")";
        String circumstances = r.circumstances().isEmpty() ? "" : " " + r.circumstances().text();
        return at(r) + "  " + r.shown() + (r.remark().isEmpty() ? "" : " " + r.remark()) + circumstances + verdict;
    }

    /** What can hurt, for the person who works on it. */
    public static void cautions(PrintStream out, List<Hazard> hazards) {
        for (Hazard h : hazards) {
            Words.wrapped(out, "CAUTION  ", List.of((h.title() + ". " + h.caution()).split(" ")));
        }
        if (!hazards.isEmpty()) {
            Words.wrapped(out, "         ", List.of(Hazard.CLOSING.split(" ")));
        }
    }

    private static String at(Mark mark) {
        return mark.place().text() + " (sheet " + mark.page() + ")";
    }

    private static String status(LogEntry e) {
        return switch (e.status()) {
            case DONE -> "";
            case UNDONE -> "  (undone)";
            case ABANDONED -> "  (undone, replaced by later changes)";
        };
    }

    private static void head(PrintStream out, String name, String text) {
        if (!text.isBlank()) {
            out.println(Words.padded(name, 11) + text);
        }
    }

    private static <T> void marks(PrintStream out, String title, List<T> items, Function<T, String> line) {
        if (!items.isEmpty()) {
            out.println(title);
            out.println(items.stream().map(i -> "  " + line.apply(i)).collect(Collectors.joining("\n")));
        }
    }
}
