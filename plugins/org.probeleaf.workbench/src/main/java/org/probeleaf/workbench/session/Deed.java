// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.session;

import java.util.Objects;

import org.probeleaf.job.mark.Board;
import org.probeleaf.recognition.correction.Correction;
import org.probeleaf.schematic.board.BoardChange;

/** What a person does on the sheet with a few clicks. */
public sealed interface Deed {

    /** Corrects the reading of the sheet. */
    record OnReading(Correction correction) implements Deed {
        public OnReading {
            Objects.requireNonNull(correction);
        }
    }

    /**
     * Notes what was done to a board.
     *
     * @param board     which board
     * @param temporary whether it is to be put back
     */
    record OnBoard(Board board, BoardChange change, boolean temporary) implements Deed {
        public OnBoard {
            Objects.requireNonNull(change);
        }
    }
}
