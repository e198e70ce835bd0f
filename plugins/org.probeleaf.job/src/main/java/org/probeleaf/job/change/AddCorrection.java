// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.change;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

import org.probeleaf.job.mark.KeptCorrection;
import org.probeleaf.job.mark.Marks;

/**
 * Corrects the reading of the sheets.
 *
 * @param kept the new correction
 */
public record AddCorrection(KeptCorrection kept) implements Change {

    @Override
    public Instant when() {
        return kept.when();
    }

    @Override
    public String words(Marks before) {
        return kept.correction().words();
    }

    @Override
    public Marks applyTo(Marks before) {
        if (before.corrections().stream().anyMatch(k -> k.id().equals(kept.id()))) {
            throw new IllegalArgumentException("there already is a correction with the id " + kept.id());
        }
        List<KeptCorrection> next = new ArrayList<>(before.corrections());
        next.add(kept);
        return before.withCorrections(next);
    }
}
