// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.sheet;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.graphics.RGB;
import org.probeleaf.job.expectation.Outcome;
import org.probeleaf.job.mark.CaptureMark;
import org.probeleaf.job.mark.LabelMark;
import org.probeleaf.job.mark.Mark;
import org.probeleaf.job.mark.NoteMark;
import org.probeleaf.job.mark.ReadingMark;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.workbench.look.Palette;

/**
 * What a card says.
 *
 * @param head    the first line
 * @param body    further lines, already wrapped; may be empty
 * @param colour  of its edge and leader, passes 3:1 on white
 * @param outcome the verdict, or null where there is none
 */
record CardText(String head, List<String> body, RGB colour, Outcome outcome) {

    private static final int WRAP = 34;
    private static final int MOST_LINES = 4;

    /** The same with a verdict. */
    CardText with(Outcome other) {
        return new CardText(head, body, colour(other), other);
    }

    /** The text of a mark. */
    static CardText of(Mark mark) {
        if (mark instanceof LabelMark label) {
            return new CardText(label.text(), List.of(), Palette.PURPLE, null);
        }
        if (mark instanceof NoteMark note) {
            List<String> lines = wrapped(note.text());
            return new CardText(lines.get(0), lines.subList(1, lines.size()), Palette.QUIET, null);
        }
        if (mark instanceof CaptureMark capture) {
            return new CardText(capture.place() instanceof Place.OnPage ? capture.fileName() : shown(capture.place()),
                    capture.note().isEmpty() ? List.of() : wrapped(capture.note()), Palette.BLUE, null);
        }
        ReadingMark r = (ReadingMark) mark;
        List<String> body = new ArrayList<>();
        String where = r.place() instanceof Place.OnPage ? "" : shown(r.place());
        String line = r.remark().isEmpty() ? where : where.isEmpty() ? r.remark() : where + "  " + r.remark();
        String all = r.circumstances().isEmpty() ? line : (line + " " + r.circumstances().text()).strip();
        if (!all.isEmpty()) {
            body.addAll(wrapped(all));
        }
        Outcome outcome = r.verdict() == null ? null : r.verdict().outcome();
        return new CardText(r.shown(), body, colour(outcome), outcome);
    }

    /** A place as people say it. */
    static String shown(Place place) {
        return place instanceof Place.OfNet net ? net.net() : place.text();
    }

    /** The colour of a verdict; blue without one. */
    static RGB colour(Outcome outcome) {
        if (outcome == null) {
            return Palette.BLUE;
        }
        return switch (outcome) {
            case GOOD -> Palette.GREEN;
            case BAD -> Palette.VERMILLION;
            case UNSURE -> Palette.QUIET;
        };
    }

    static List<String> wrapped(String text) {
        List<String> lines = new ArrayList<>();
        for (String paragraph : text.strip().split("\\R")) {
            StringBuilder line = new StringBuilder();
            for (String word : paragraph.split("\\s+")) {
                if (line.length() > 0 && line.length() + 1 + word.length() > WRAP) {
                    lines.add(line.toString());
                    line.setLength(0);
                }
                line.append(line.length() == 0 ? "" : " ").append(word);
            }
            lines.add(line.toString());
        }
        if (lines.size() > MOST_LINES) {
            List<String> cut = new ArrayList<>(lines.subList(0, MOST_LINES));
            cut.set(MOST_LINES - 1, cut.get(MOST_LINES - 1) + " \u2026");
            return cut;
        }
        return lines;
    }
}
