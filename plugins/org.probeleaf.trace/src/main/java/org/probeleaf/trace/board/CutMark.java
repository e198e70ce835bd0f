// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.board;

import java.util.List;

import org.probeleaf.schematic.board.BoardChange;

/**
 * A cut track as it is drawn.
 *
 * @param change the change that made it
 * @param at     the spot, on a wire or at a pin; null at a pin that is not drawn
 * @param nets   ids of the nets on its sides; one where they hang together another way, or where the cut is at a pin
 */
public record CutMark(BoardChange.Cut change, Spot at, List<String> nets) {

    public CutMark {
        nets = List.copyOf(nets);
    }
}
