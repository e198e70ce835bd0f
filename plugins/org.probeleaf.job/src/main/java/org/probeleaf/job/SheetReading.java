// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.job.mark.KeptCorrection;
import org.probeleaf.recognition.correction.Corrected;
import org.probeleaf.recognition.correction.Correction;
import org.probeleaf.recognition.correction.Corrections;
import org.probeleaf.recognition.correction.Outcome;
import org.probeleaf.schematic.netlist.Netlist;

/**
 * How the sheets are read: what was recognised, what a person says of it, and what comes of both.
 *
 * @param recognised  what was recognised, or null before recognition
 * @param corrections what a person says of it, in the order said
 * @param corrected   the recognised netlist with the corrections put to it, or null before recognition
 */
public record SheetReading(Netlist recognised, List<KeptCorrection> corrections, Corrected corrected) {

    public SheetReading {
        corrections = List.copyOf(corrections);
    }

    /** Puts corrections to what was recognised. */
    public static SheetReading of(Netlist recognised, List<KeptCorrection> corrections) {
        return new SheetReading(recognised, corrections, recognised == null ? null
                : Corrections.apply(recognised, corrections.stream().map(KeptCorrection::correction).toList()));
    }

    /** This reading with other corrections; the very same one where they are the same. */
    SheetReading with(Netlist otherRecognised, List<KeptCorrection> others) {
        return otherRecognised == recognised && others.equals(corrections) ? this : of(otherRecognised, others);
    }

    /** The netlist with the corrections, or null before recognition. */
    public Netlist netlist() {
        return corrected == null ? null : corrected.netlist();
    }

    /** What would come of one more correction, which is the last of the outcomes; to be asked after recognition only. */
    public Corrected tried(Correction more) {
        List<Correction> all = new ArrayList<>(
                corrections.stream().map(KeptCorrection::correction).toList());
        all.add(more);
        return Corrections.apply(recognised, all);
    }

    /** What became of a correction, by its place in the list, or null before recognition. */
    public Outcome outcome(int index) {
        return corrected == null ? null : corrected.outcomes().get(index);
    }
}
