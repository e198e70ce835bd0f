// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.change;

import java.time.Instant;

import org.probeleaf.job.mark.Marks;

/**
 * Takes a capture off the sheet. Its file stays in the job, so that undo brings it back.
 *
 * @param id   of the mark
 * @param when when
 */
public record RemoveCapture(String id, Instant when) implements Change {

    @Override
    public String words(Marks before) {
        return "removal of " + Words.of(before, id);
    }

    @Override
    public Marks applyTo(Marks before) {
        return before.withCaptures(Marks.removed(before.captures(), id));
    }
}
