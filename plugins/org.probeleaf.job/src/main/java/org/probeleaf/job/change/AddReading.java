// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.change;

import java.time.Instant;

import org.probeleaf.job.mark.ReadingMark;
import org.probeleaf.job.mark.Marks;

/**
 * Pins a reading.
 *
 * @param reading the new mark
 */
public record AddReading(ReadingMark reading) implements Change {

    @Override
    public Instant when() {
        return reading.when();
    }

    @Override
    public String words(Marks before) {
        return Words.of(reading);
    }

    @Override
    public Marks applyTo(Marks before) {
        return before.withReadings(Marks.added(before.readings(), reading));
    }
}
