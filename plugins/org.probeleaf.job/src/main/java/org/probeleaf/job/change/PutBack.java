// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.change;

import java.time.Instant;

import org.probeleaf.job.mark.BoardWords;
import org.probeleaf.job.mark.KeptBoardChange;
import org.probeleaf.job.mark.Marks;

/**
 * Notes that something done to a board is put back.
 *
 * @param id   of the {@link KeptBoardChange}
 * @param when it was put back
 */
public record PutBack(String id, Instant when) implements Change {

    @Override
    public String words(Marks before) {
        return "put back: " + before.boardChange(id).map(k -> BoardWords.done(k.change()))
                .orElse("a change that is gone");
    }

    @Override
    public Marks applyTo(Marks before) {
        return before.withBoardChange(id, k -> {
            if (!k.stands()) {
                throw new IllegalArgumentException(k.words() + ": that has been put back already");
            }
            return k.putBackAt(when);
        });
    }
}
