// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.answer;

import java.io.PrintStream;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

import org.probeleaf.job.BoardComparison;
import org.probeleaf.job.Boards;
import org.probeleaf.job.mark.Board;
import org.probeleaf.job.mark.BoardWords;
import org.probeleaf.job.mark.KeptBoardChange;
import org.probeleaf.trace.board.ChangeOutcome;

/** What was done to the board, for people. */
public final class BoardText {

    private BoardText() {
    }

    /** What has just been done, and where to measure again. */
    public static void done(PrintStream out, List<KeptBoardChange> kept, List<ChangeOutcome> outcomes, Boards boards) {
        for (int i = 0; i < kept.size(); i++) {
            String text = outcomes.get(i).text();
            out.println(text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1) + where(kept.get(i)) + ".");
        }
        int open = boards.open().size();
        if (kept.get(0).open()) {
            out.println(Words.count(open, "thing") + " to be put back.");
        }
    }

    /** One thing done ({@code "IC5.8 lifted, for now (to see what drives it)"}). */
    public static String line(KeptBoardChange kept) {
        return kept.words() + where(kept);
    }

    private static String where(KeptBoardChange kept) {
        return (kept.board() == Board.THIS ? "" : " on " + kept.board().words())
                + (kept.temporary() ? ", for now" : "") + (kept.note().isEmpty() ? "" : " (" + kept.note() + ")");
    }

    /** The put-back list. */
    public static void open(PrintStream out, List<KeptBoardChange> open) {
        if (open.isEmpty()) {
            out.println("There is nothing to put back.");
            return;
        }
        out.println("To be put back");
        for (int i = 0; i < open.size(); i++) {
            KeptBoardChange one = open.get(i);
            String todo = BoardWords.toPutBack(one.change());
            out.println("  " + (i + 1) + ".  " + todo.substring(0, 1).toUpperCase(Locale.ROOT)
                    + todo.substring(1) + (one.note().isEmpty() ? "" : " (" + one.note() + ")"));
        }
    }

    /** The drawing and two boards side by side. */
    public static void compared(PrintStream out, List<BoardComparison.Row> rows) {
        if (rows.isEmpty()) {
            out.println("Both boards are as drawn, as far as is noted.");
            return;
        }
        List<Function<BoardComparison.Row, String>> columns = List.of(BoardComparison.Row::what,
                BoardComparison.Row::drawn, BoardComparison.Row::thisBoard, BoardComparison.Row::knownGood);
        List<String> titles = List.of("", "Drawing", "This board", "Known-good board");
        StringBuilder head = new StringBuilder();
        StringBuilder[] lines = rows.stream().map(r -> new StringBuilder()).toArray(StringBuilder[]::new);
        for (int c = 0; c < columns.size(); c++) {
            Function<BoardComparison.Row, String> column = columns.get(c);
            int width = Math.max(titles.get(c).length(),
                    rows.stream().mapToInt(r -> column.apply(r).length()).max().orElse(0)) + 2;
            head.append(Words.padded(titles.get(c), width));
            for (int r = 0; r < lines.length; r++) {
                lines[r].append(Words.padded(column.apply(rows.get(r)), width));
            }
        }
        out.println(head.toString().stripTrailing());
        for (StringBuilder line : lines) {
            out.println(line.toString().stripTrailing());
        }
    }
}
