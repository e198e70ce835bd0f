// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.change;

import java.time.Instant;

import org.probeleaf.job.mark.CaptureMark;
import org.probeleaf.job.mark.Marks;

/**
 * Pins a capture, whose file the job has already.
 *
 * @param capture the new mark
 */
public record AddCapture(CaptureMark capture) implements Change {

    @Override
    public Instant when() {
        return capture.when();
    }

    @Override
    public String words(Marks before) {
        return Words.of(capture);
    }

    @Override
    public Marks applyTo(Marks before) {
        return before.withCaptures(Marks.added(before.captures(), capture));
    }
}
