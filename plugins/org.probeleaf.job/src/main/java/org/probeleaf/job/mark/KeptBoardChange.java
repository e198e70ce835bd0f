// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.mark;

import java.time.Instant;
import java.util.Objects;
import java.util.UUID;

import org.probeleaf.schematic.board.BoardChange;

/**
 * Something done to a board, as the job keeps it.
 *
 * @param id        unique in its job
 * @param board     to which board
 * @param change    what was done
 * @param temporary whether it is to be put back before the unit leaves
 * @param note      a remark; empty where there is none, never null
 * @param when      when it was done
 * @param putBack   when it was put back, or null while it stands
 */
public record KeptBoardChange(String id, Board board, BoardChange change, boolean temporary, String note, Instant when,
        Instant putBack) {

    public KeptBoardChange {
        Objects.requireNonNull(note);
    }

    /** A new one with an id of its own. */
    public static KeptBoardChange of(Board board, BoardChange change, boolean temporary, String note, Instant when) {
        return new KeptBoardChange(UUID.randomUUID().toString(), board, change, temporary, note.strip(), when, null);
    }

    /** Whether the board still is this way. */
    public boolean stands() {
        return putBack == null;
    }

    /** Whether it is on the put-back list: temporary, on the board on the bench, and not put back yet. */
    public boolean open() {
        return temporary && stands() && board == Board.THIS;
    }

    /** The same, to stay. */
    public KeptBoardChange kept() {
        return new KeptBoardChange(id, board, change, false, note, when, putBack);
    }

    /** The same, put back. */
    public KeptBoardChange putBackAt(Instant then) {
        return new KeptBoardChange(id, board, change, temporary, note, when, then);
    }

    /** What was done, in a few words for a person ({@code "IC5.8 lifted"}). */
    public String words() {
        return BoardWords.done(change);
    }
}
