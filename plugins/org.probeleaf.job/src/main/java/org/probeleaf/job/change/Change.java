// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.change;

import java.time.Instant;

import org.probeleaf.job.mark.Marks;

/**
 * A named change of a job. A change is a value: applied to the same marks it always gives the same marks, so that a
 * job's state is its changes replayed.
 */
public sealed interface Change permits SetDetails, AddCapture, RemoveCapture, ReadCaptureAs, JudgeCaptureBy, AddLabel, EditLabel, RemoveLabel, AddNote, EditNote, RemoveNote,
        AddReading, EditReading, OverruleReading, RemoveReading, MoveCard, AddCorrection, RemoveCorrection,
        ChangeBoard, PutBack, KeepBoardChange {

    /** When the person made it. */
    Instant when();

    /**
     * What it does, in a few words for a person, to stand after "Undo" ({@code "label /RD at IC4.21"}).
     *
     * @param before the marks it is applied to
     */
    String words(Marks before);

    /**
     * Makes the change.
     *
     * @param before the marks it is applied to
     * @return the marks after it
     * @throws IllegalArgumentException with one sentence for a person where the marks do not allow it
     */
    Marks applyTo(Marks before);
}
