// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.measure;

/**
 * The two state levels of a waveform, s1 and s2 of IEEE Std 181, 5.2 (clause from memory). Where it stays at one level,
 * {@code two} is false and both are that level.
 *
 * @param low        in the channel's unit
 * @param high       in the channel's unit, at least {@code low}
 * @param lowBy      how the lower one was found
 * @param highBy     how the upper one was found
 * @param lowUnsure  uncertainty of the lower one
 * @param highUnsure uncertainty of the upper one
 * @param two        whether there are two states
 */
public record StateLevels(double low, double high, LevelMethod lowBy, LevelMethod highBy, double lowUnsure,
        double highUnsure, boolean two) {

    /** The difference of the levels. */
    public double amplitude() {
        return high - low;
    }

    /** The x % reference level. */
    public double reference(double percent) {
        return low + percent / 100 * amplitude();
    }
}
