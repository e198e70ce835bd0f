// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.change;

import java.time.Instant;

import org.probeleaf.job.mark.Marks;

/**
 * Writes another text on a note.
 *
 * @param id   of the mark
 * @param text the new text, never blank
 * @param when when
 */
public record EditNote(String id, String text, Instant when) implements Change {

    public EditNote {
        text = text.strip();
        if (text.isEmpty()) {
            throw new IllegalArgumentException("there is no text; type what it should say, or remove it");
        }
    }

    @Override
    public String words(Marks before) {
        return "\u201c" + Words.brief(text) + "\u201d in place of " + Words.of(before, id);
    }

    @Override
    public Marks applyTo(Marks before) {
        return before.withNotes(Marks.replaced(before.notes(), id, m -> m.withText(text)));
    }
}
