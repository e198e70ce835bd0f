// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.change;

import java.time.Instant;
import java.util.Objects;

import org.probeleaf.job.mark.Marks;

/**
 * Says how a capture's file is to be understood.
 *
 * @param id     of the mark
 * @param readAs as import options are written; empty to guess again
 * @param when   when
 */
public record ReadCaptureAs(String id, String readAs, Instant when) implements Change {

    public ReadCaptureAs {
        Objects.requireNonNull(readAs);
    }

    @Override
    public String words(Marks before) {
        return "another reading of " + Words.of(before, id);
    }

    @Override
    public Marks applyTo(Marks before) {
        return before.withCaptures(Marks.replaced(before.captures(), id, m -> m.withReadAs(readAs)));
    }
}
