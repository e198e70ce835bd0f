// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.capture.DigitalChannel;
import org.probeleaf.waveform.capture.Samples;
import org.probeleaf.waveform.capture.TimeBase;
import org.probeleaf.waveform.compare.Comparer;
import org.probeleaf.waveform.compare.Comparison;
import org.probeleaf.waveform.compare.Tolerance;
import org.probeleaf.waveform.judge.Thresholds;
import org.probeleaf.waveform.measure.DigitalMeasures;
import org.probeleaf.waveform.measure.WaveMeasurer;
import org.probeleaf.waveform.plot.Ink;
import org.probeleaf.waveform.plot.PlotLevel;
import org.probeleaf.waveform.plot.PlotPane;
import org.probeleaf.waveform.plot.PlotTrace;
import org.probeleaf.waveform.plot.StateTrace;
import org.probeleaf.workbench.session.LoadedTrace;

class PlotPanesTest {

    private static LoadedTrace square(String name, String unit, double low, double high, double start) {
        double[] v = new double[400];
        for (int i = 0; i < v.length; i++) {
            v[i] = (i + 300 - Math.round(start / 5e-8)) % 20 < 10 ? low : high;
        }
        Channel c = Channel.of(name, unit, new TimeBase.Uniform(0, 5e-8, v.length), Samples.of(v));
        return new LoadedTrace(PlotTrace.of(name, c, Ink.TRACE_A), WaveMeasurer.standard().measure(c), null, null);
    }

    private static LoadedTrace logic() {
        DigitalChannel line = new DigitalChannel("/CS", 1, 1e-9, new long[] {0, 500, 900}, new byte[] {'1', '0', 'x'}, 1000);
        return new LoadedTrace(StateTrace.of(line, Ink.TRACE_A), null, DigitalMeasures.of(line), null);
    }

    private final LoadedTrace a = square("A", "V", 0.2, 1.3, 0);
    private final LoadedTrace b = square("B", "V", 0.2, 3.4, 0);
    private final LoadedTrace current = square("I", "A", 0, 0.1, 0);

    private PlotPanes panes(boolean stacked, Thresholds by) {
        return new PlotPanes(List.of(a, b, current, logic()), a, stacked, by, null, null, false);
    }

    @Test
    void overEachOther_areTracesOfOneUnit() {
        List<PlotPane> panes = panes(false, null).panes();
        assertEquals(List.of(2, 1, 1), panes.stream().map(p -> p.traces().size()).toList());
        assertTrue(panes.get(2).lane());
    }

    @Test
    void stacked_eachHasAPane() {
        assertEquals(4, panes(true, null).panes().size());
    }

    @Test
    void levels_areThoseOfTheMeasuredTraceAlone() {
        List<PlotPane> panes = panes(true, null).panes();
        assertEquals(List.of("low 200 mV", "high 1.3 V"), panes.get(0).levels().stream().map(PlotLevel::words).toList());
        assertEquals(List.of(), panes.get(1).levels());
    }

    /** 74LS: low up to 0.8 V, high from 2.0 V (data sheet of the 74LS00); the trace never gets to 2 V. */
    @Test
    void thresholds_areInSightWhereTheTraceNeverGets() {
        PlotPane pane = panes(true, new Thresholds("74LS", 0.8, 2.0, Double.NaN, false)).panes().get(0);
        assertTrue(pane.high() > 2, "high " + pane.high());
        assertEquals(1, pane.bands().size());
        assertEquals(2, pane.levels().stream().filter(l -> l.ink() == Ink.THRESHOLD).count());
        PlotPane plain = panes(true, Thresholds.plain(2)).panes().get(0);
        assertEquals("needs 2 V", plain.levels().get(2).words());
        assertEquals(List.of(), plain.bands());
    }

    @Test
    void reference_isDrawnWhereItFits_withItsToleranceAndTheDifferenceBelow() {
        LoadedTrace late = square("A", "V", 0.2, 3.4, 3e-7);
        Comparison c = Comparer.compare(late.plot().channel(), late.measures(), b.plot().channel(), b.measures(),
                Tolerance.usual());
        PlotPanes with = new PlotPanes(List.of(late), late, false, null, b.plot().as("good", Ink.REFERENCE), c.overlay(), true);
        PlotPane pane = with.panes().get(0);
        assertEquals(3e-7, pane.traces().get(0).shift(), 1e-12);
        assertEquals("good", pane.traces().get(0).title());
        assertNotNull(pane.mask());
        assertEquals(List.of(), pane.mask().outside());
        PlotPane strip = with.panes().get(1);
        assertEquals("difference", strip.traces().get(0).title());
        assertEquals(-strip.low(), strip.high());
        assertTrue(strip.weight() < pane.weight());
    }

    @Test
    void reference_thatIsNotLaidYet_isNotDrawnInAWrongPlace() {
        PlotPane pane = new PlotPanes(List.of(a), a, false, null, b.plot(), null, true).panes().get(0);
        assertEquals(1, pane.traces().size());
        assertNull(pane.mask());
    }
}
