// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.board;

import org.probeleaf.schematic.board.BoardChange;

/**
 * A link as it is drawn.
 *
 * @param change the change that made it
 * @param from   one end, or null where that has no spot on a sheet
 * @param to     the other end, or null
 * @param net    id of the net that it makes one
 */
public record LinkMark(BoardChange.Link change, Spot from, Spot to, String net) {
}
