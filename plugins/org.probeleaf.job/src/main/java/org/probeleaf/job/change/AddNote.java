// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.change;

import java.time.Instant;

import org.probeleaf.job.mark.NoteMark;
import org.probeleaf.job.mark.Marks;

/**
 * Pins a note.
 *
 * @param note the new mark
 */
public record AddNote(NoteMark note) implements Change {

    @Override
    public Instant when() {
        return note.when();
    }

    @Override
    public String words(Marks before) {
        return Words.of(note);
    }

    @Override
    public Marks applyTo(Marks before) {
        return before.withNotes(Marks.added(before.notes(), note));
    }
}
