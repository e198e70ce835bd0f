// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.change;

import java.time.Instant;
import java.util.Locale;

import org.probeleaf.job.expectation.Outcome;
import org.probeleaf.job.mark.Marks;

/**
 * Gives a reading the person's own verdict, which counts before the one that follows from its value.
 *
 * @param id      of the mark
 * @param outcome the person's; null takes it back
 * @param why     the reason; never blank where there is an outcome
 * @param when    when
 */
public record OverruleReading(String id, Outcome outcome, String why, Instant when) implements Change {

    public OverruleReading {
        why = why.strip();
        if (outcome != null && why.isEmpty()) {
            throw new IllegalArgumentException("say why the reading is " + outcome.name().toLowerCase(Locale.ROOT)
                    + ": the next one who reads the job will ask");
        }
    }

    @Override
    public String words(Marks before) {
        return (outcome == null ? "own verdict taken back: " : outcome.name().toLowerCase(Locale.ROOT) + " for ")
                + Words.of(before, id);
    }

    @Override
    public Marks applyTo(Marks before) {
        return before.withReadings(Marks.replaced(before.readings(), id, m -> m.withWord(outcome, why)));
    }
}
