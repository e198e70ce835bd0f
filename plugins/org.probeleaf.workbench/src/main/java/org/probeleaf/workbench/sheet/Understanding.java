// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.sheet;

import java.time.Instant;
import java.util.List;

import org.probeleaf.job.change.AddLabel;
import org.probeleaf.job.change.AddNote;
import org.probeleaf.job.change.AddReading;
import org.probeleaf.job.change.Change;
import org.probeleaf.job.expectation.Expectation;
import org.probeleaf.job.expectation.Outcome;
import org.probeleaf.job.mark.Circumstances;
import org.probeleaf.job.mark.LabelMark;
import org.probeleaf.job.mark.NoteMark;
import org.probeleaf.job.mark.ReadingMark;
import org.probeleaf.workbench.session.Selection;

/**
 * What was understood of a text typed on the sheet.
 *
 * @param words   for the person: what it is taken for, or what is missing
 * @param outcome verdict of a reading, or null
 * @param change  what Enter does, or null while the text makes no sense
 */
record Understanding(String words, Outcome outcome, Change change) {

    /**
     * Understands a text.
     *
     * @param expected what a reading should be; may be blank
     * @param before   what was read so far, the oldest first
     */
    static Understanding of(EntryKind kind, String text, String expected, Selection at, List<ReadingMark> before) {
        if (text.isBlank()) {
            return new Understanding(kind.hint(), null, null);
        }
        Instant now = Instant.now();
        return switch (kind) {
            case NAME -> new Understanding("Names it " + text.strip() + " on every sheet", null,
                    new AddLabel(LabelMark.of(at.place(), at.anchor(), text, now)));
            case NOTE -> new Understanding("Enter pins the note", null,
                    new AddNote(NoteMark.of(at.place(), at.anchor(), text, now)));
            case READING -> reading(text, expected, at, before, now);
        };
    }

    private static Understanding reading(String text, String expected, Selection at, List<ReadingMark> before, Instant now) {
        try {
            Expectation expectation = expected.isBlank() ? null : Expectation.parse(expected);
            ReadingMark mark = ReadingMark.of(at.place(), at.anchor(), Circumstances.sameInstrument(text, before), "",
                    expectation, now);
            String words = mark.shown() + "  " + mark.value().kind().title()
                    + (mark.remark().isEmpty() ? "" : ", " + mark.remark())
                    + (mark.circumstances().conditions().isEmpty() ? "" : ", conditions: " + mark.circumstances().conditions())
                    + (mark.circumstances().instrument().isEmpty() ? "" : ", read with: " + mark.circumstances().instrument())
                    + (mark.verdict() == null ? "" : ": " + mark.verdict().reason());
            return new Understanding(words, mark.verdict() == null ? null : mark.verdict().outcome(),
                    new AddReading(mark));
        } catch (IllegalArgumentException e) {
            return new Understanding(e.getMessage(), null, null);
        }
    }
}
