// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.change;

import java.time.Instant;
import java.util.List;

import org.probeleaf.job.mark.KeptCorrection;
import org.probeleaf.job.mark.Marks;

/**
 * Takes a correction back.
 *
 * @param id   of the correction
 * @param when when
 */
public record RemoveCorrection(String id, Instant when) implements Change {

    @Override
    public String words(Marks before) {
        return "withdrawal of " + before.corrections().stream().filter(k -> k.id().equals(id)).findFirst()
                .map(k -> k.correction().words()).orElse("a correction that is gone");
    }

    @Override
    public Marks applyTo(Marks before) {
        List<KeptCorrection> next = before.corrections().stream().filter(k -> !k.id().equals(id)).toList();
        if (next.size() == before.corrections().size()) {
            throw new IllegalArgumentException("there is no such correction (any more): " + id);
        }
        return before.withCorrections(next);
    }
}
