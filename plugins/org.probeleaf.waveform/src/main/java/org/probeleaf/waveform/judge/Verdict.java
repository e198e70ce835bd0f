// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.judge;

import java.util.EnumSet;
import java.util.Set;

/** What is said of a signal in one word. */
public enum Verdict {
    /** Goes up and down with an even beat. */
    CLOCKING("clocking"),
    /** Goes up and down without an even beat, as data do. */
    TOGGLING("toggling"),
    /** Stays high. */
    STATIC_HIGH("static-high"),
    /** Stays low. */
    STATIC_LOW("static-low"),
    /** Stays at one level, and nobody knows how many volts that is. */
    STATIC("static"),
    /** Stays where it is neither a valid low nor a valid high. */
    BETWEEN("between"),
    /** Its upper level is not a valid high. */
    WEAK_HIGH("weak-high"),
    /** Its lower level is not a valid low. */
    WEAK_LOW("weak-low"),
    /** Dwells between the levels at times: two outputs drive against each other. */
    CONTENTION("contention"),
    /** Some pulses turn back before they reach the other level. */
    RUNT("runt"),
    /** An even beat with beats left out. */
    MISSING_PULSES("missing-pulses"),
    /** Swings back over the threshold after its edges. */
    RINGING("ringing"),
    /** Takes longer from one level to the other than its receivers allow. */
    SLOW_EDGES("slow-edges"),
    /** Noise takes up what the levels have to spare. */
    NOISE("noise"),
    /** A logic trace that is not known. */
    UNKNOWN("unknown"),
    /** A logic trace that nobody drives. */
    FLOATING("floating"),
    /** Composite video, which is no logic signal. */
    VIDEO("video"),
    /** There is nothing to judge. */
    NO_SIGNAL("no-signal");

    private static final Set<Verdict> FAULTS = EnumSet.of(BETWEEN, WEAK_HIGH, WEAK_LOW, CONTENTION, RUNT, MISSING_PULSES,
            RINGING, SLOW_EDGES, NOISE);

    private final String word;

    Verdict(String word) {
        this.word = word;
    }

    /** Whether no sound logic signal is like that; one that merely stays, or that nobody knows, may be sound. */
    public boolean fault() {
        return FAULTS.contains(this);
    }

    /** As on the command line. */
    public String word() {
        return word;
    }
}
