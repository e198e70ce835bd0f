// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.video;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import org.probeleaf.waveform.Shapes;
import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.measure.WaveMeasurer;

/**
 * Made video measured. Rates, porches and levels: published table of composite parameters, RS-170 and SMPTE 170M
 * histories; tolerances from memory.
 */
class VideoAnalyserTest {

    private static VideoSignal analyse(Channel channel) {
        return VideoAnalyser.analyse(channel, WaveMeasurer.standard().measure(channel)).orElseThrow();
    }

    @Test
    void lines625_areMeasured() {
        VideoSignal v = analyse(Shapes.noisy(MadeVideo.lines625().channel(0.045, 1, 0.3), 0.004, 1));
        assertEquals(VideoSystem.COLOUR_625, v.system());
        assertEquals(15625, v.lineRate().value(), 1);
        assertEquals(50, v.fieldRate().value(), 0.01);
        assertEquals(312.5, v.lines().value(), 0.01);
        assertEquals(true, v.interlaced());
        assertEquals(0.3, v.sync().value(), 0.005);
        assertEquals(4.7e-6, v.syncWidth().value(), 0.05e-6);
        assertEquals(1.5e-6, v.frontPorch().value(), 0.15e-6);
        assertEquals(5.8e-6, v.backPorch().value(), 0.15e-6);
        assertEquals(0.3, v.blank().value(), 0.01);
        assertEquals(0.7, v.white().value(), 0.02);
        assertEquals(true, v.locks());
        assertTrue(v.reasons().toString().contains("within 35 mV"), v.reasons().toString());
    }

    @Test
    void lines525_areMeasured() {
        VideoSignal v = analyse(MadeVideo.lines525().channel(0.037, 1, 0));
        assertEquals(VideoSystem.COLOUR_525, v.system());
        assertEquals(15734.265734, v.lineRate().value(), 1);
        assertEquals(59.940060, v.fieldRate().value(), 0.01);
        assertEquals(true, v.interlaced());
        assertEquals(0.285714, v.sync().value(), 0.005);
        assertEquals(4.7e-6, v.backPorch().value(), 0.15e-6);
        assertEquals(0.714286, v.white().value(), 0.01);
        assertEquals(true, v.locks());
    }

    /** Whole lines in a field: 262 at 15734.27 Hz make 60.0544 Hz, 312 at 15625 Hz make 50.0801 Hz (computed). */
    @ParameterizedTest
    @CsvSource({"15734.265734, 262, 6, 60.0544", "15625, 312, 5, 50.0801"})
    void wholeLines_areNotInterlaced(double rate, int lines, int pulses, double field) {
        VideoSignal v = analyse(new MadeVideo(rate, lines, pulses, 9.4e-6, 0.3, 0.7).channel(0.045, 1, 0));
        assertEquals(field, v.fieldRate().value(), 0.01);
        assertEquals(false, v.interlaced());
        assertEquals(true, v.locks());
    }

    @Test
    void monochrome_isToldByItsLineRate() {
        assertEquals(VideoSystem.MONO_525, analyse(new MadeVideo(15750, 262.5, 6, 9.4e-6, 0.2857, 0.7143)
                .channel(0.01, 1, 0)).system());
    }

    @Test
    void shortCapture_hasNoFieldRateAndSaysSo() {
        VideoSignal v = analyse(MadeVideo.lines625().channel(0.004, 1, 0));
        assertNull(v.interlaced());
        assertEquals("the capture holds one field sync only", v.fieldRate().reason());
        assertEquals(VideoSystem.COLOUR_625, v.system());
    }

    /** A source of 75 ohms reads twice as high open and two thirds with two ends (computed). */
    @ParameterizedTest
    @CsvSource({"2, twice, true", "0.6667, two thirds, true", "0.4, too little, false"})
    void wrongLevels_areExplained(double gain, String words, boolean locks) {
        VideoSignal v = analyse(MadeVideo.lines625().channel(0.01, gain, 0));
        assertTrue(v.reasons().toString().contains(words), v.reasons().toString());
        assertEquals(locks, v.locks());
        assertEquals(0.3 * gain, v.sync().value(), 0.005 * gain);
    }

    @Test
    void darkPicture_hasNoPorchesAndSaysSo() {
        VideoSignal v = analyse(MadeVideo.lines625().withBrightness(0.02).withBurst(0, 1).channel(0.01, 1, 0));
        assertEquals("there is no picture bright enough to tell where it ends", v.frontPorch().reason());
        assertEquals(0.3, v.sync().value(), 0.005);
    }

    @Test
    void squeezedSync_isTold() {
        VideoSignal v = analyse(new MadeVideo(15625, 312.5, 5, 10.5e-6, 0.18, 0.8).channel(0.01, 1, 0));
        assertTrue(v.reasons().toString().contains("sync is squeezed"), v.reasons().toString());
    }

    @Test
    void offRate_isFollowedOrNot() {
        assertEquals(true, analyse(new MadeVideo(15900, 262.5, 6, 9.4e-6, 0.3, 0.7).channel(0.01, 1, 0)).locks());
        VideoSignal far = analyse(new MadeVideo(18400, 370, 5, 8e-6, 0.3, 0.7).channel(0.01, 1, 0));
        assertEquals(false, far.locks());
        assertNull(far.system());
    }

    @Test
    void otherSignals_areNoVideo() {
        Channel clock = Shapes.sampled(t -> 5 * Shapes.trapezoid(t, 1e-7, 4e-7, 1e-7, 1e-6), 0, 2e-8, 50_000);
        Channel sine = Shapes.sampled(t -> Math.sin(2 * Math.PI * 15625 * t), 0, 1e-7, 50_000);
        Channel square = Shapes.sampled(t -> t * 15625 % 1 < 0.5 ? 1 : 0, 0, 1e-7, 50_000);
        for (Channel c : new Channel[] {clock, sine, square}) {
            assertFalse(VideoAnalyser.analyse(c, WaveMeasurer.standard().measure(c)).isPresent());
        }
    }
}
