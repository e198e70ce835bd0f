// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.plot;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.List;

import javax.xml.parsers.DocumentBuilderFactory;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.capture.Samples;
import org.probeleaf.waveform.capture.TimeBase;
import org.probeleaf.waveform.plot.PlotMask.Span;
import org.probeleaf.waveform.plot.PlotShape.Area;
import org.probeleaf.waveform.plot.PlotShape.Line;
import org.probeleaf.waveform.plot.PlotShape.Words;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

class PlotTest {

    private static PlotTrace trace(double interval, double... volts) {
        return PlotTrace.of("/RD", Channel.volts("CH1", interval, volts), Ink.TRACE_A);
    }

    private static List<Line> lines(Plot plot, Ink ink) {
        return plot.shapes().stream().filter(s -> s instanceof Line && s.ink() == ink).map(Line.class::cast).toList();
    }

    private static List<Area> areas(Plot plot, Ink ink) {
        return plot.shapes().stream().filter(s -> s instanceof Area && s.ink() == ink).map(Area.class::cast).toList();
    }

    private static Plot bare(PlotTrace trace, PlotWindow window) {
        return Plot.bare(trace, window, 104, 54);
    }

    @Test
    void frame_ofAPoint_goesThereAndBack() {
        PlotFrame f = new PlotFrame(new PlotWindow(1, 3, -1, 1), 10, 20, 110, 70);
        assertEquals(60, f.x(2), 1e-12);
        assertEquals(45, f.y(0), 1e-12);
        assertEquals(2, f.time(60), 1e-12);
        assertEquals(0, f.value(45), 1e-12);
    }

    @Test
    void shapes_ofFewSamples_joinEach() {
        Plot plot = bare(trace(1, 0, 4, 2), new PlotWindow(0, 2, 0, 5));
        assertArrayEquals(new double[] {2, 52, 52, 12, 102, 32}, lines(plot, Ink.TRACE_A).get(0).xy(), 1e-9);
    }

    @Test
    void shapes_ofAHeldChannel_goInSteps() {
        Channel held = new Channel("D", "", new TimeBase.Uniform(0, 1, 3), Samples.of(0, 1, 0), Double.NaN, true);
        Plot plot = bare(PlotTrace.of("D", held, Ink.TRACE_A), new PlotWindow(0, 2, 0, 1));
        assertArrayEquals(new double[] {2, 52, 52, 52, 52, 2, 102, 2, 102, 52}, lines(plot, Ink.TRACE_A).get(0).xy(),
                1e-9);
    }

    @Test
    void shapes_withAGap_areTwoLines() {
        assertEquals(2, lines(bare(trace(1, 0, 1, Double.NaN, 1, 0), new PlotWindow(0, 4, 0, 1)), Ink.TRACE_A).size());
    }

    /** One sample of a million is high: it must not be lost at any zoom. */
    @Test
    void shapes_ofMillionsOfSamples_keepASingleSpike() {
        double[] volts = new double[3_000_000];
        volts[1_234_567] = 5;
        Plot plot = bare(trace(1e-9, volts), new PlotWindow(0, 3e-3, 0, 5));
        double[] xy = areas(plot, Ink.TRACE_A).get(0).xy();
        double top = Double.MAX_VALUE;
        double at = 0;
        for (int i = 0; i < xy.length; i += 2) {
            at = xy[i + 1] < top ? xy[i] : at;
            top = Math.min(top, xy[i + 1]);
        }
        assertEquals(2 - Ink.TRACE_A.width() / 2, top, 1e-6);
        assertEquals(plot.frame().x(1.234567e-3), at, 1.01);
        assertTrue(xy.length < 40, "a line and a spike are few points: " + xy.length);
    }

    /** Twice as high a step in a crowd is joined: no column stands alone in the air. */
    @Test
    void shapes_ofACrowdedStep_hangTogether() {
        double[] volts = new double[100_000];
        java.util.Arrays.fill(volts, 50_000, 100_000, 4);
        double[] xy = areas(bare(trace(1e-9, volts), new PlotWindow(0, 1e-4, 0, 5)), Ink.TRACE_A).get(0).xy();
        double least = Double.MAX_VALUE;
        for (double x = 3; x < 101; x += 0.25) {
            least = Math.min(least, height(xy, x));
        }
        assertEquals(Ink.TRACE_A.width(), least, 1e-9);
        assertEquals(40 + Ink.TRACE_A.width(), height(xy, 52), 1e-9);
    }

    /** How high a polygon of upright and level edges is at a place that is no corner. */
    private static double height(double[] xy, double x) {
        double low = Double.MAX_VALUE;
        double high = -Double.MAX_VALUE;
        for (int i = 0; i < xy.length; i += 2) {
            int k = (i + 2) % xy.length;
            if (Math.min(xy[i], xy[k]) <= x && x <= Math.max(xy[i], xy[k]) && xy[i + 1] == xy[k + 1]) {
                low = Math.min(low, xy[i + 1]);
                high = Math.max(high, xy[i + 1]);
            }
        }
        return high - low;
    }

    @Test
    void shapes_crowdedWithAGap_areTwoAreas() {
        double[] volts = new double[100_000];
        java.util.Arrays.fill(volts, 40_000, 60_000, Double.NaN);
        assertEquals(2, areas(bare(trace(1e-9, volts), new PlotWindow(0, 1e-4, 0, 5)), Ink.TRACE_A).size());
    }

    @Test
    void shapes_outsideTheWindow_stayInTheFrame() {
        Plot plot = bare(trace(1, -9, 9, -9, 9, -9, 9), new PlotWindow(1.5, 3.5, -1, 1));
        for (Line line : lines(plot, Ink.TRACE_A)) {
            for (int i = 0; i < line.xy().length; i += 2) {
                assertTrue(line.xy()[i] >= 2 - 1e-9 && line.xy()[i] <= 102 + 1e-9, "x " + line.xy()[i]);
                assertTrue(line.xy()[i + 1] >= 2 - 1e-9 && line.xy()[i + 1] <= 52 + 1e-9, "y " + line.xy()[i + 1]);
            }
        }
    }

    /** It rises through the frame and falls back: two strokes, and nothing along the upper edge. */
    @Test
    void shapes_aboveTheWindow_areCutOffAndDoNotRunAlongItsEdge() {
        List<Line> lines = lines(bare(trace(1, 0, 4, 4, 0), new PlotWindow(0, 3, 0, 2)), Ink.TRACE_A);
        assertEquals(2, lines.size());
        assertArrayEquals(new double[] {2, 52, 2 + 100 / 6.0, 2}, lines.get(0).xy(), 1e-9);
        assertArrayEquals(new double[] {102 - 100 / 6.0, 2, 102, 52}, lines.get(1).xy(), 1e-9);
    }

    @Test
    void shapes_crowdedAboveTheWindow_areLeftOut() {
        double[] volts = new double[100_000];
        java.util.Arrays.fill(volts, 25_000, 75_000, 4);
        List<Area> areas = areas(bare(trace(1e-9, volts), new PlotWindow(0, 1e-4, -1, 2)), Ink.TRACE_A);
        assertEquals(2, areas.size());
        double most = 0;
        for (int i = 0; i < areas.get(0).xy().length; i += 2) {
            most = Math.max(most, areas.get(0).xy()[i]);
        }
        assertEquals(27, most, 1.01);
    }

    @Test
    void zoomed_keepsTheTimeUnderThePointer() {
        PlotWindow w = new PlotWindow(0, 10, 0, 1).zoomed(2, 4);
        assertEquals(2, w.from(), 1e-12);
        assertEquals(7, w.to(), 1e-12);
        assertEquals(4.5, w.moved(0.5).from(), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> new PlotWindow(1, 1, 0, 1));
    }

    @ParameterizedTest
    @CsvSource({
        "0,      10e-6, 5, s, 0 s|2 µs|4 µs|6 µs|8 µs|10 µs",
        "-5,     5,     4, V, -5 V|0 V|5 V",
        "0,      0.25,  6, V, 0 V|50 mV|100 mV|150 mV|200 mV|250 mV",
        "0.1e-9, 1e-9,  3, s, 500 ps|1000 ps",
        "0,      3,     3, '', 0|1|2|3"})
    void ticks_areRoundAndInOnePrefix(double from, double to, int most, String unit, String words) {
        Ticks ticks = new Ticks(from, to, most, unit);
        assertEquals(words.replace("1000 ps", "1 ns").replace("500 ps", "0.5 ns"),
                ticks.values().stream().map(ticks::words).reduce((a, b) -> a + "|" + b).orElse(""));
    }

    @Test
    void svg_ofAPlot_isADocumentWithItsWordsAndLines() throws Exception {
        PlotTrace good = PlotTrace.of("good <board>", Channel.volts("R", 1e-6, 0, 4, 0, 4, 0), Ink.REFERENCE);
        PlotPane pane = PlotPane.of(List.of(trace(1e-6, 0, 5, 0, 5, 0), good), List.of(new PlotLevel(2, "high over 2 V")))
                .with(new PlotMask(good, 0.2, 1e-7, List.of(new Span(1e-6, 2e-6)))).with(List.of(new PlotBand(0.8, 2, Ink.NEITHER)));
        Plot plot = new Plot(640, 320, 0, 4e-6, List.of(pane), List.of(new PlotCursor("A", 1e-6), new PlotCursor("B", 2e-6)),
                false);
        String svg = SvgPlot.of(plot);
        Document document = DocumentBuilderFactory.newInstance().newDocumentBuilder()
                .parse(new InputSource(new StringReader(svg)));
        assertEquals(plot.shapes().stream().filter(s -> s instanceof Line).count(),
                document.getElementsByTagName("polyline").getLength());
        assertEquals(plot.shapes().stream().filter(s -> s instanceof Area).count(),
                document.getElementsByTagName("polygon").getLength());
        assertEquals(plot.shapes().stream().filter(s -> s instanceof Words).count(),
                document.getElementsByTagName("text").getLength());
        assertTrue(svg.contains("good &lt;board&gt;") && svg.contains("high over 2 V") && svg.contains("stroke-dasharray"));
        assertEquals(2, lines(plot, Ink.CURSOR).size());
    }
}
