// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.compare;

import java.util.List;

/**
 * A capture against a reference.
 *
 * @param name        of the reference's channel
 * @param shift       by how much the capture was moved to lie on the reference, in seconds; positive where it is late
 * @param correlation of the two when they lie on each other, -1 to 1
 * @param gain        what the reference is best multiplied with to give the capture
 * @param offset      what is best added then, in the channel's unit
 * @param rms         root mean square of the difference as it is, in the channel's unit
 * @param scaledRms   the same once gain and offset are taken off, as a share of the reference's span: how much the shapes differ
 * @param max         greatest amount of the difference as it is
 * @param outside     share of the samples outside of the tolerance mask
 * @param same        whether it passes
 * @param reasons     one sentence each
 * @param overlay     for drawing; null where the two cannot be compared
 */
public record Comparison(String name, double shift, double correlation, double gain, double offset, double rms,
        double scaledRms, double max, double outside, boolean same, List<String> reasons,
        Overlay overlay) {

    public Comparison {
        reasons = List.copyOf(reasons);
    }
}
