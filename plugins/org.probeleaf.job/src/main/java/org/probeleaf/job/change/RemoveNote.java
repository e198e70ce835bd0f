// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.change;

import java.time.Instant;

import org.probeleaf.job.mark.Marks;

/**
 * Takes a note away.
 *
 * @param id   of the mark
 * @param when when
 */
public record RemoveNote(String id, Instant when) implements Change {

    @Override
    public String words(Marks before) {
        return "removal of " + Words.of(before, id);
    }

    @Override
    public Marks applyTo(Marks before) {
        return before.withNotes(Marks.removed(before.notes(), id));
    }
}
