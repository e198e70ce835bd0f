// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.change;

import java.time.Instant;

import org.probeleaf.job.mark.Marks;
import org.probeleaf.job.mark.ReadingMark;

/**
 * Puts a reading right that was mistyped.
 *
 * @param reading as it should be, under the id that it has
 * @param when    when
 */
public record EditReading(ReadingMark reading, Instant when) implements Change {

    /** Of the mark. */
    public String id() {
        return reading.id();
    }

    @Override
    public String words(Marks before) {
        return Words.brief(reading.typed()) + " in place of " + Words.of(before, id());
    }

    @Override
    public Marks applyTo(Marks before) {
        return before.withReadings(Marks.replaced(before.readings(), id(), m -> reading.withCard(m.card())));
    }
}
