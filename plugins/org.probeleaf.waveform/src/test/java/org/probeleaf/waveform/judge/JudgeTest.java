// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.judge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleUnaryOperator;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import org.probeleaf.schematic.partbook.LevelBook;
import org.probeleaf.waveform.Shapes;
import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.capture.DigitalChannel;
import org.probeleaf.waveform.measure.DigitalMeasures;
import org.probeleaf.waveform.measure.WaveMeasurer;

/** Signals as they are met on boards, with levels of 74LS (0.8 V and 2.0 V, data sheet of the 74LS00) and others. */
class JudgeTest {

    private static final double US = 1e-6;
    private static final Thresholds LS = family("74LS");

    private static Thresholds family(String name) {
        return Thresholds.of(LevelBook.standard().named(name).orElseThrow());
    }

    private static Judgement judge(Channel channel, Thresholds by) {
        return Judge.judge(channel, WaveMeasurer.standard().measure(channel), by);
    }

    /** 1 us a period, 5 ns a sample, 20 us. */
    private static Channel wave(DoubleUnaryOperator of) {
        return Shapes.sampled(of, -0.3 * US, 5e-9, 4000);
    }

    private static double clock(double t) {
        return 0.2 + 3.2 * Shapes.trapezoid(t, 0.02 * US, 0.48 * US, 0.02 * US, US);
    }

    private static void verdict(String word, Channel channel, Thresholds by) {
        Judgement j = judge(channel, by);
        assertEquals(word, j.verdict().word(), j.toString());
        assertFalse(j.reasons().isEmpty());
        assertTrue(j.reasons().stream().allMatch(r -> r.endsWith(".")), j.reasons().toString());
    }

    @Test
    void clock_isClocking() {
        verdict("clocking", wave(JudgeTest::clock), LS);
        verdict("clocking", wave(JudgeTest::clock), null);
        verdict("clocking", Shapes.noisy(wave(JudgeTest::clock), 0.04, 3), LS);
        Judgement j = judge(wave(JudgeTest::clock), LS);
        assertEquals(0.6, j.lowMargin(), 1e-6);
        assertEquals(1.4, j.highMargin(), 1e-6);
        assertEquals(true, j.toggles());
        assertNull(judge(wave(JudgeTest::clock), null).toggles());
    }

    @ParameterizedTest
    @CsvSource({"0.15, static-low", "3.6, static-high", "1.4, between", "1.0, between"})
    void oneLevel_isToldByTheFamily(double volts, String word) {
        verdict(word, wave(t -> volts), LS);
        verdict(word, Shapes.noisy(wave(t -> volts), 0.01, 1), LS);
        verdict(word, wave(t -> volts), null);
    }

    /** 2.4 V is a high for TTL but lies between for 74HC at 5 V (1.5 V and 3.5 V). */
    @Test
    void sameLevel_isOtherwiseForAnotherFamily() {
        verdict("static-high", wave(t -> 2.4), LS);
        verdict("between", wave(t -> 2.4), family("74HC"));
        verdict("weak-high", wave(t -> clock(t) * 0.75), family("74HC"));
        verdict("clocking", wave(t -> clock(t) * 0.75), LS);
    }

    @Test
    void dataLine_isToggling() {
        int[] word = {1, 0, 0, 1, 1, 1, 1, 0, 1, 0, 0, 0, 0, 0, 1, 1, 0, 1, 1, 0, 1};
        verdict("toggling", wave(t -> 0.2 + 3.2 * word[(int) Math.floorMod((long) Math.floor(t / US), word.length)]), LS);
    }

    /** Two outputs against each other leave 1.3 V where the one is high and the other low. */
    @Test
    void threeLevels_areContention() {
        verdict("contention", wave(t -> Math.floorMod((long) Math.floor(t / US), 4) == 2 ? Math.min(1.3, clock(t) + 1.1)
                : clock(t)), LS);
    }

    @Test
    void lowPulses_areRunts() {
        Judgement j = judge(wave(t -> Math.floor(t / US) == 7 ? 0.2 + (clock(t) - 0.2) * 0.4 : clock(t)), LS);
        assertTrue(j.findings().contains(Verdict.RUNT) || j.findings().contains(Verdict.CONTENTION), j.toString());
        Judgement spike = judge(wave(t -> clock(t) + (t > 8.70 * US && t < 8.72 * US ? 1.2 : 0)), LS);
        assertEquals(Verdict.RUNT, spike.verdict(), spike.toString());
        assertTrue(spike.reasons().get(0).contains("1.4 V"), spike.toString());
    }

    @Test
    void pulsesLeftOut_areMissed() {
        Judgement j = judge(wave(t -> Math.floor(t / US) == 5 || Math.floor(t / US) == 11 ? 0.2 : clock(t)), LS);
        assertEquals(Verdict.MISSING_PULSES, j.verdict(), j.toString());
        assertTrue(j.reasons().get(0).startsWith("2 pulses are missing from a beat of 1 \u00b5s; the longest gap is 2 \u00b5s"),
                j.toString());
    }

    @Test
    void ringing_thatReachesBack_isTheVerdict() {
        verdict("ringing", wave(t -> ring(t, 0.10)), LS);
        Judgement mild = judge(wave(t -> ring(t, 0.5)), LS);
        assertEquals(Verdict.CLOCKING, mild.verdict(), mild.toString());
    }

    private static double ring(double t, double zeta) {
        double p = t / US - Math.floor(t / US);
        double w = 60;
        return p < 0.5 ? 0.2 + 3.2 * Shapes.secondOrder(p * w, zeta) : 3.4 - 3.2 * Shapes.secondOrder((p - 0.5) * w, zeta);
    }

    @Test
    void slowEdges_areTold() {
        verdict("slow-edges", Shapes.sampled(t -> 0.2 + 3.2 * Shapes.trapezoid(t, 6 * US, 4 * US, 6 * US, 20 * US), 0,
                0.05 * US, 4000), LS);
        Judgement still = judge(Shapes.sampled(t -> 0.2 + 3.2 * Shapes.trapezoid(t, 3 * US, 5 * US, 3 * US, 20 * US), 0,
                0.05 * US, 4000), LS);
        assertEquals(List.of(Verdict.CLOCKING, Verdict.SLOW_EDGES), still.findings(), still.toString());
        verdict("clocking", Shapes.sampled(t -> 0.2 + 4.6 * Shapes.trapezoid(t, 3 * US, 5 * US, 3 * US, 20 * US), 0,
                0.05 * US, 4000), family("4000B"));
    }

    @Test
    void noise_thatTakesTheMargin_isTheVerdict() {
        verdict("noise", Shapes.noisy(wave(t -> 0.5 + (clock(t) - 0.2) * 0.56), 0.12, 2), LS);
    }

    /** The next stage needs 2.0 V. */
    @ParameterizedTest
    @CsvSource({"2.0, true, clocking", "3.6, false, static-low", "0.1, false, static-high"})
    void plainThreshold_saysWhetherItToggles(double volts, boolean toggles, String word) {
        Judgement j = judge(wave(JudgeTest::clock), Thresholds.plain(volts));
        assertEquals(toggles, j.toggles(), j.toString());
        assertEquals(word, j.verdict().word(), j.toString());
        assertEquals(3.4 - volts, j.highMargin(), 1e-6);
        assertEquals(volts - 0.2, j.lowMargin(), 1e-6);
    }

    /** A sound card knows no volts. */
    @Test
    void withoutVolts_levelsAreNotJudged() {
        Channel c = wave(JudgeTest::clock);
        Channel bare = Channel.of("A", "", c.times(), c.samples());
        verdict("clocking", bare, LS);
        assertNull(judge(bare, LS).toggles());
        assertTrue(judge(bare, LS).reasons().toString().contains("say the scale"), judge(bare, LS).toString());
        verdict("static", Channel.of("A", "", c.times(), wave(t -> 0.5).samples()), null);
    }

    @Test
    void nothing_isNoSignal() {
        verdict("no-signal", Channel.volts("A", US, Double.NaN), LS);
    }

    private static Judgement digital(String states) {
        long[] ticks = new long[states.length()];
        byte[] all = new byte[states.length()];
        for (int i = 0; i < ticks.length; i++) {
            ticks[i] = i * 10L;
            all[i] = (byte) states.charAt(i);
        }
        return DigitalJudge.judge(DigitalMeasures.of(new DigitalChannel("a", 1, 1e-9, ticks, all, ticks.length * 10L)));
    }

    @ParameterizedTest
    @CsvSource({"01010101, clocking", "0, static-low", "1, static-high", "x, unknown", "z, floating", "x1, static-high",
        "010101z01, toggling"})
    void states_areJudged(String states, String word) {
        assertEquals(word, digital(states).verdict().word(), digital(states).toString());
    }
}
