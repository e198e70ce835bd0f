// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.job.mark.Board;
import org.probeleaf.job.mark.KeptBoardChange;
import org.probeleaf.schematic.board.BoardChange;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.trace.board.BoardState;

/**
 * The boards as they are: the drawing with what was done to each.
 *
 * @param drawn     the netlist of the sheets with their corrections, or null before recognition
 * @param kept      what was done to boards, in the order done, also what has been put back since
 * @param thisBoard the board on the bench, or null before recognition
 * @param knownGood a board that is known to work, or null before recognition
 */
public record Boards(Netlist drawn, List<KeptBoardChange> kept, BoardState thisBoard, BoardState knownGood) {

    public Boards {
        kept = List.copyOf(kept);
    }

    /** Puts to a drawing what was done to boards. */
    public static Boards of(Netlist drawn, List<KeptBoardChange> kept) {
        return new Boards(drawn, kept, drawn == null ? null : state(drawn, kept, Board.THIS),
                drawn == null ? null : state(drawn, kept, Board.KNOWN_GOOD));
    }

    /** These boards with another drawing or other changes; the very same where they are the same. */
    Boards with(Netlist otherDrawn, List<KeptBoardChange> others) {
        return otherDrawn == drawn && others.equals(kept) ? this : of(otherDrawn, others);
    }

    /** These boards with one more thing done. */
    Boards plus(KeptBoardChange one) {
        List<KeptBoardChange> next = new ArrayList<>(kept);
        next.add(one);
        return of(drawn, next);
    }

    private static BoardState state(Netlist drawn, List<KeptBoardChange> kept, Board board) {
        return BoardState.of(drawn, changes(kept, board));
    }

    private static List<BoardChange> changes(List<KeptBoardChange> kept, Board board) {
        return kept.stream().filter(k -> k.board() == board && k.stands()).map(KeptBoardChange::change).toList();
    }

    /** One of the boards, or null before recognition. */
    public BoardState state(Board board) {
        return board == Board.THIS ? thisBoard : knownGood;
    }

    /** A board with one more change, which is the last of its outcomes; to be asked after recognition only. */
    public BoardState tried(Board board, BoardChange more) {
        List<BoardChange> all = new ArrayList<>(changes(kept, board));
        all.add(more);
        return BoardState.of(drawn, all);
    }

    /** What was done to the board on the bench for now and is to be put back, in the order done. */
    public List<KeptBoardChange> open() {
        return kept.stream().filter(KeptBoardChange::open).toList();
    }

    /** What still stands, of both boards, in the order done. */
    public List<KeptBoardChange> standing() {
        return kept.stream().filter(KeptBoardChange::stands).toList();
    }
}
