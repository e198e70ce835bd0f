// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.change;

import org.probeleaf.job.mark.CaptureMark;
import org.probeleaf.job.mark.LabelMark;
import org.probeleaf.job.mark.Mark;
import org.probeleaf.job.mark.Marks;
import org.probeleaf.job.mark.NoteMark;
import org.probeleaf.job.mark.ReadingMark;

/** How marks are spoken of in the names of changes. */
final class Words {

    private static final int LONGEST = 40;

    private Words() {
    }

    /** {@code label /RD at IC4.21}, or {@code a mark that is gone}. */
    static String of(Marks marks, String id) {
        return marks.find(id).map(Words::of).orElse("a mark that is gone");
    }

    static String of(Mark mark) {
        String place = " at " + mark.place().text();
        if (mark instanceof LabelMark label) {
            return "label " + brief(label.text()) + place;
        }
        if (mark instanceof NoteMark note) {
            return "note \u201c" + brief(note.text()) + "\u201d" + place;
        }
        if (mark instanceof CaptureMark capture) {
            return "capture " + brief(capture.fileName()) + place;
        }
        return "reading " + brief(((ReadingMark) mark).typed()) + place;
    }

    /** The first line of a text, cut short. */
    static String brief(String text) {
        String line = text.strip().lines().findFirst().orElse("");
        return line.codePointCount(0, line.length()) <= LONGEST ? line
                : line.substring(0, line.offsetByCodePoints(0, LONGEST - 1)).strip() + "\u2026";
    }
}
