// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.change;

import java.time.Instant;
import java.util.Objects;

import org.probeleaf.job.mark.Marks;

/**
 * Says what the levels of a capture are held against.
 *
 * @param id   of the mark
 * @param by   a logic family or a voltage as it is typed; empty for nothing
 * @param when when
 */
public record JudgeCaptureBy(String id, String by, Instant when) implements Change {

    public JudgeCaptureBy {
        Objects.requireNonNull(by);
    }

    @Override
    public String words(Marks before) {
        return (by.isBlank() ? "no levels for " : by.strip() + " for ") + Words.of(before, id);
    }

    @Override
    public Marks applyTo(Marks before) {
        return before.withCaptures(Marks.replaced(before.captures(), id, m -> m.withJudgedBy(by)));
    }
}
