// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.mark;

import java.time.Instant;
import java.util.UUID;

import org.probeleaf.recognition.correction.Correction;

/**
 * A correction of the reading, as the job keeps it.
 *
 * @param id         unique in its job
 * @param correction what the person said
 * @param when       when it was said
 */
public record KeptCorrection(String id, Correction correction, Instant when) {

    /** A new one with an id of its own. */
    public static KeptCorrection of(Correction correction, Instant when) {
        return new KeptCorrection(UUID.randomUUID().toString(), correction, when);
    }
}
