// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.change;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.probeleaf.job.mark.Board;
import org.probeleaf.job.mark.KeptBoardChange;
import org.probeleaf.job.mark.Marks;

/**
 * Notes what was done to a board.
 *
 * @param kept what was done, at least one
 */
public record ChangeBoard(List<KeptBoardChange> kept) implements Change {

    public ChangeBoard {
        kept = List.copyOf(kept);
        if (kept.isEmpty()) {
            throw new IllegalArgumentException("nothing was done to the board");
        }
    }

    @Override
    public Instant when() {
        return kept.get(0).when();
    }

    @Override
    public String words(Marks before) {
        KeptBoardChange first = kept.get(0);
        return kept.stream().map(KeptBoardChange::words).collect(Collectors.joining(", "))
                + (first.board() == Board.THIS ? "" : " on " + first.board().words())
                + (first.temporary() ? ", for now" : "");
    }

    @Override
    public Marks applyTo(Marks before) {
        List<KeptBoardChange> next = new ArrayList<>(before.board());
        for (KeptBoardChange one : kept) {
            if (next.stream().anyMatch(k -> k.id().equals(one.id()))) {
                throw new IllegalArgumentException("there already is a change of the board with the id " + one.id());
            }
            next.add(one);
        }
        return before.withBoard(next);
    }
}
