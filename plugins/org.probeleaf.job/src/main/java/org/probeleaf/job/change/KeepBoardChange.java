// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.change;

import java.time.Instant;

import org.probeleaf.job.mark.KeptBoardChange;
import org.probeleaf.job.mark.Marks;

/**
 * Decides that something done to a board for now is to stay.
 *
 * @param id   of the {@link KeptBoardChange}
 * @param when it was decided
 */
public record KeepBoardChange(String id, Instant when) implements Change {

    @Override
    public String words(Marks before) {
        return "to stay: " + before.boardChange(id).map(KeptBoardChange::words).orElse("a change that is gone");
    }

    @Override
    public Marks applyTo(Marks before) {
        return before.withBoardChange(id, k -> {
            if (!k.temporary() || !k.stands()) {
                throw new IllegalArgumentException(k.words() + ": that "
                        + (k.stands() ? "is to stay already" : "has been put back"));
            }
            return k.kept();
        });
    }
}
