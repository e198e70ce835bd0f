// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.change;

import java.time.Instant;

import org.probeleaf.job.mark.Marks;
import org.probeleaf.job.mark.Offset;

/**
 * Moves the card of a mark.
 *
 * @param id   of the mark
 * @param card where to, or null to have it laid out by itself again
 * @param when when
 */
public record MoveCard(String id, Offset card, Instant when) implements Change {

    @Override
    public String words(Marks before) {
        return "move of " + Words.of(before, id);
    }

    @Override
    public Marks applyTo(Marks before) {
        if (before.find(id).isEmpty()) {
            throw new IllegalArgumentException("there is no such mark (any more): " + id);
        }
        return before.withCardMoved(id, card);
    }
}
