// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.video;

import java.util.List;

import org.probeleaf.waveform.measure.Figure;

/**
 * What is known of a composite video signal.
 *
 * @param system     the one whose line rate is nearest, or null where none is near
 * @param lineRate   in hertz
 * @param fieldRate  in hertz
 * @param lines      lines in a field: 262.5 and 312.5 are interlaced
 * @param interlaced null where it cannot be seen
 * @param sync       depth of sync below blanking, in volts
 * @param syncWidth  duration of line sync at half its depth, in seconds
 * @param frontPorch from the end of the picture to sync, in seconds
 * @param backPorch  from the end of sync to the picture, in seconds
 * @param blank      blanking level, in volts
 * @param white      the brightest there is above blanking, in volts
 * @param locks      whether a display would lock; null where that cannot be said
 * @param reasons    one sentence each, what matters most first
 */
public record VideoSignal(VideoSystem system, Figure lineRate, Figure fieldRate, Figure lines, Boolean interlaced,
        Figure sync, Figure syncWidth, Figure frontPorch, Figure backPorch, Figure blank, Figure white, Boolean locks,
        List<String> reasons) {

    public VideoSignal {
        reasons = List.copyOf(reasons);
    }

    /** Deeper sync than this, in volts, is a logic signal. */
    static final double LOGIC = 1.2;

    /** Whether it is composite video, and not sync pulses at logic levels. */
    public boolean composite() {
        return sync.value() <= LOGIC;
    }
}
