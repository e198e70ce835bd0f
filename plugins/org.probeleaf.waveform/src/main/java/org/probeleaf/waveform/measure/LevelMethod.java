// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.measure;

/** How a state level was found. */
public enum LevelMethod {
    /** The mode of its half of the histogram. */
    HISTOGRAM("mode of the histogram"),
    /** The extreme of all samples, because the waveform does not dwell at a level. */
    EXTREME("least or greatest sample, as it does not dwell at a level"),
    /** The extremes of its cycles, averaged, because the waveform does not dwell at a level. */
    CYCLES("mean of the extremes of its cycles, as it does not dwell at a level"),
    /** Said by the caller. */
    GIVEN("as given");

    private final String words;

    LevelMethod(String words) {
        this.words = words;
    }

    /** For a person. */
    public String words() {
        return words;
    }
}
