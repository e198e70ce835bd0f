// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.session;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.probeleaf.job.mark.CaptureMark;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.partbook.LevelBook;
import org.probeleaf.schematic.partbook.LogicLevels;
import org.probeleaf.trace.drive.PinLevels;
import org.probeleaf.waveform.judge.ThresholdWords;
import org.probeleaf.waveform.judge.Thresholds;

/**
 * What a capture is judged by.
 *
 * @param thresholds what the next stage needs, or null where nothing is known of it
 * @param why        where that is from, in a sentence; empty where a person said so
 * @param problem    what is wrong with what the person said, in a sentence, or null
 * @param guess      what the inputs on its net need; empty where that is not known
 */
public record HeldAgainst(Thresholds thresholds, String why, String problem, Optional<PinLevels> guess) {

    /** Where nobody said and nothing is known. */
    public static final HeldAgainst NOTHING = new HeldAgainst(null, "", null, Optional.empty());

    private static final double REACH = 3;

    /** What a mark is judged by: what the person said, else what the inputs on its net need. */
    public static HeldAgainst of(Facts facts, CaptureMark mark) {
        Optional<PinLevels> guess = guess(facts, mark);
        if (mark.judgedBy().isBlank()) {
            return guess.map(l -> new HeldAgainst(Thresholds.of(l.levels()), why(l), null, guess)).orElse(NOTHING);
        }
        try {
            return new HeldAgainst(new ThresholdWords(LevelBook.standard(), facts.book()).parse(mark.judgedBy()).orElse(null), "",
                    null, guess);
        } catch (IllegalArgumentException e) {
            String sentence = e.getMessage();
            return new HeldAgainst(null, "", Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1) + ".", guess);
        }
    }

    /** The same for one trace: what is guessed counts for volts that are no video. */
    public HeldAgainst forTrace(LoadedTrace trace) {
        boolean no = trace.logic() || !trace.unit().equals("V")
                || !why.isEmpty() && trace.video() != null && trace.video().composite();
        return no ? new HeldAgainst(null, "", problem, guess) : this;
    }

    /** The input on a mark's net that asks most of a high, and of these of a low; empty where no input's levels are known. */
    private static Optional<PinLevels> guess(Facts facts, CaptureMark mark) {
        Net net = facts.recognised() ? facts.at(mark.page(), mark.at(), REACH).net() : null;
        List<PinLevels> inputs = net == null ? List.of()
                : PinLevels.inputsOn(facts.network(), net.id(), LevelBook.standard());
        return inputs.stream().min(Comparator.comparingDouble((PinLevels l) -> -l.levels().vihMin())
                .thenComparingDouble(l -> l.levels().vilMax()));
    }

    private static String why(PinLevels l) {
        LogicLevels levels = l.levels();
        return levels.name() + " is guessed: input " + l.pin().place().text() + " (" + l.pin().part().value()
                + ") listens on this net.";
    }
}
