// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.board;

import org.probeleaf.schematic.board.BoardChange;

/**
 * What became of a change.
 *
 * @param change the change
 * @param done   whether it was put to the board
 * @param text   what was done, or why it cannot be and what to do: one sentence without a stop
 */
public record ChangeOutcome(BoardChange change, boolean done, String text) {
}
