// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.plot;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.capture.DigitalChannel;
import org.probeleaf.waveform.plot.PlotMask.Span;
import org.probeleaf.waveform.plot.PlotShape.Area;
import org.probeleaf.waveform.plot.PlotShape.Words;

/** What stands round the traces: margins, levels, tolerance, lanes. */
class PaneShapesTest {

    private static PlotTrace trace(double... volts) {
        return PlotTrace.of("/RD", Channel.volts("CH1", 1e-6, volts), Ink.TRACE_A);
    }

    private static List<Area> areas(Plot plot, Ink ink) {
        return plot.shapes().stream().filter(s -> s instanceof Area && s.ink() == ink).map(Area.class::cast).toList();
    }

    private static List<Words> words(Plot plot, Ink ink) {
        return plot.shapes().stream().filter(s -> s instanceof Words && s.ink() == ink).map(Words.class::cast).toList();
    }

    @ParameterizedTest
    @CsvSource({"100 102 104, 97.5 110.5 123.5", "10 50, 10 50", "195 199, 186.5 199.5", "1 2 3, 1 14 27"})
    void wordsOfLevels_areMovedApartWithinTheFrame(String at, String placed) {
        double[] got = GutterWords.apart(numbers(at), 0, 199.5);
        double[] due = numbers(placed);
        for (int i = 1; i < got.length; i++) {
            assertTrue(got[i] - got[i - 1] >= 13 - 1e-9, got[i - 1] + " " + got[i]);
        }
        assertEquals(due.length, got.length);
        assertTrue(got[0] >= 0 && got[got.length - 1] <= 199.5);
        if (!at.startsWith("100")) {
            assertArrayEquals(due, got, 1e-9);
        }
    }

    private static double[] numbers(String text) {
        return java.util.Arrays.stream(text.split(" ")).mapToDouble(Double::parseDouble).toArray();
    }

    @Test
    void wordsOfLevels_standRightOfTheFrameAndWithinThePlot() {
        Plot plot = Plot.of(List.of(trace(0, 5, 0)), List.of(new PlotLevel(2, "VIH 2 V", Ink.THRESHOLD),
                new PlotLevel(2.05, "high 2.05 V")), 500, 200);
        Words vih = words(plot, Ink.THRESHOLD).get(0);
        Words high = words(plot, Ink.LEVEL).get(0);
        assertTrue(vih.x() > plot.frame().right() && vih.x() + vih.text().length() * PaneLayout.LETTER <= 500);
        assertTrue(vih.y() - high.y() >= 13 - 1e-9, high.y() + " over " + vih.y());
    }

    @Test
    void levels_outOfSight_haveNoWords() {
        PlotPane pane = PlotPane.of(List.of(trace(0, 5, 0)), List.of(new PlotLevel(9, "far", Ink.THRESHOLD))).between(0, 5);
        Plot plot = new Plot(500, 200, 0, 2e-6, List.of(pane), List.of(), false);
        assertEquals(List.of(), words(plot, Ink.THRESHOLD));
    }

    @Test
    void panes_shareTheHeightByWeight_andHaveTheTimesOnce() {
        PlotPane pane = PlotPane.of(List.of(trace(0, 5, 0)), List.of());
        Plot plot = new Plot(500, 400, 0, 2e-6, List.of(pane, pane.weighing(0.5)), List.of(), false);
        List<PlotFrame> f = plot.frames();
        assertEquals(2, f.get(0).height() / f.get(1).height(), 0.01);
        assertTrue(f.get(0).bottom() < f.get(1).top() && f.get(1).bottom() < 400);
        assertEquals(1, words(plot, Ink.SCALE).stream().filter(w -> w.text().equals("1 \u00b5s")).count());
    }

    /** The reference is 1 V up to 1 us and 3 V from 2 us on; 0.5 V and 0.25 us are allowed. */
    @Test
    void tolerance_isTheReferenceWidenedBothWays() {
        PlotTrace reference = trace(1, 1, 3, 3, 3);
        Plot plot = new Plot(500, 300, 0, 4e-6, List.of(PlotPane.of(List.of(reference), List.of()).between(0, 4)
                .with(new PlotMask(reference, 0.5, 0.25e-6, List.of()))), List.of(), false);
        double[] xy = areas(plot, Ink.TOLERANCE).get(0).xy();
        PlotFrame f = plot.frame();
        assertEquals(0.5, at(f, xy, 0.5e-6, false), 0.01);
        assertEquals(1.5, at(f, xy, 0.5e-6, true), 0.01);
        assertEquals(2.5, at(f, xy, 3e-6, false), 0.01);
        assertEquals(3.5, at(f, xy, 3e-6, true), 0.01);
        assertTrue(at(f, xy, 1.9e-6, true) > 3.3 && at(f, xy, 1.9e-6, false) < 2.5);
    }

    /** The value of a corner of the area nearest to a time, the upper or the lower one. */
    private static double at(PlotFrame f, double[] xy, double time, boolean upper) {
        double best = Double.MAX_VALUE;
        double value = Double.NaN;
        int half = xy.length / 2;
        for (int i = upper ? 0 : half; i < (upper ? half : xy.length); i += 2) {
            double off = Math.abs(f.time(xy[i]) - time);
            if (off < best) {
                best = off;
                value = f.value(xy[i + 1]);
            }
        }
        return value;
    }

    /** Two stretches that would touch are one mark, a third is its own; each is a wedge and a bar. */
    @Test
    void outside_isMarkedByWedgeAndBarAboveTheFrame() {
        PlotTrace reference = trace(0, 0, 0, 0, 0);
        PlotMask mask = new PlotMask(reference, 0.5, 0, List.of(new Span(0.5e-6, 0.6e-6), new Span(0.605e-6, 0.7e-6),
                new Span(3e-6, 3e-6), new Span(9e-6, 10e-6)));
        Plot plot = new Plot(500, 300, 0, 4e-6, List.of(PlotPane.of(List.of(reference), List.of()).with(mask)), List.of(),
                false);
        List<Area> marks = areas(plot, Ink.OUTSIDE);
        assertEquals(4, marks.size());
        for (Area mark : marks) {
            for (int i = 1; i < mark.xy().length; i += 2) {
                assertTrue(mark.xy()[i] < plot.frame().top(), "above the frame");
            }
        }
    }

    @Test
    void lane_ofAnUnknownState_isShadedBetweenBothRails() {
        DigitalChannel line = new DigitalChannel("/CS", 1, 1e-6, new long[] {0, 1, 3}, new byte[] {'1', 'x', '0'}, 4);
        Plot plot = new Plot(500, 100, 0, 4e-6, List.of(PlotPane.lane(StateTrace.of(line, Ink.TRACE_A))), List.of(), false);
        PlotFrame f = plot.frame();
        double[] xy = areas(plot, Ink.UNKNOWN).get(0).xy();
        assertEquals(f.x(1e-6), xy[0], 1e-9);
        assertEquals(f.x(3e-6), xy[2], 1e-9);
        assertEquals(f.y(1), xy[1], 1e-9);
        assertEquals(f.y(0), xy[5], 1e-9);
        assertTrue(words(plot, Ink.TRACE_A).get(0).x() < f.left());
    }

    @Test
    void cursor_atTheRightEdge_hasItsFlagInside() {
        Plot plain = Plot.of(List.of(trace(0, 5, 0)), List.of(), 500, 200);
        Plot plot = new Plot(500, 200, plain.from(), plain.to(), plain.panes(), List.of(new PlotCursor("B", 2e-6)), false);
        Area flag = areas(plot, Ink.CURSOR).get(0);
        assertTrue(flag.xy()[2] <= plot.frame().right() + 1e-9);
        assertEquals("B", words(plot, Ink.PAPER).get(0).text());
    }
}
