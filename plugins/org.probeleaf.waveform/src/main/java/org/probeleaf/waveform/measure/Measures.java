// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.measure;

import java.util.List;

/**
 * The figures of one channel, in the terms of IEEE Std 181 (IEC 60469). Levels and averages are in the channel's unit, times
 * in seconds.
 *
 * @param samples     how many samples were measured
 * @param missing     how many of them are missing
 * @param interval    usual distance of two samples, in seconds; NaN where there are fewer than two
 * @param noise       what makes samples uncertain
 * @param levels      the state levels; null where there is no sample
 * @param low         lower state level
 * @param high        upper state level
 * @param amplitude   their difference; peak to peak is {@code max - min}
 * @param min         least sample
 * @param max         greatest sample
 * @param mean        over whole periods where there are any, else over all samples
 * @param rms         root mean square over the same stretch
 * @param acRms       the same without the mean
 * @param crest       peak by root mean square
 * @param period      distance of like 50 % instants
 * @param frequency   1 by period, in hertz
 * @param duty        pulse duration by period, 0 to 1
 * @param pulse       duration of positive pulses at 50 %
 * @param separation  how long it is low between them
 * @param rise        transition duration of rising edges, 10 to 90 %
 * @param fall        transition duration of falling edges, 90 to 10 %
 * @param overshoot   how far it goes above a state level after a transition, in per cent of the amplitude
 * @param undershoot  how far it goes below one, in per cent of the amplitude
 * @param periods     how many whole periods the averages are over; 0 where they are over all samples
 * @param transitions single transitions, in order; of very many only some
 * @param edges       how many transitions there are in all
 * @param instants    all 50 % instants, in seconds
 */
public record Measures(int samples, int missing, double interval, Noise noise, StateLevels levels, Figure low, Figure high,
        Figure amplitude, Figure min, Figure max, Figure mean, Figure rms, Figure acRms, Figure crest, Figure period,
        Figure frequency, Figure duty, Figure pulse, Figure separation, Figure rise, Figure fall, Figure overshoot,
        Figure undershoot, int periods, List<Transition> transitions, int edges, double[] instants) {

    public Measures {
        transitions = List.copyOf(transitions);
    }

    /** Peak to peak, overshoot included. */
    public double peakToPeak() {
        return max.value() - min.value();
    }
}
