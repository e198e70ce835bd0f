// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.pan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.probeleaf.benchmark.pan.PanCommand.Seen;
import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.capture.Samples;
import org.probeleaf.waveform.capture.TimeBase;
import org.probeleaf.waveform.compare.Comparer;
import org.probeleaf.waveform.compare.Overlay;
import org.probeleaf.waveform.compare.Tolerance;
import org.probeleaf.waveform.measure.Measures;
import org.probeleaf.waveform.measure.WaveMeasurer;
import org.probeleaf.waveform.plot.Ink;
import org.probeleaf.waveform.plot.PlotBand;
import org.probeleaf.waveform.plot.PlotLevel;
import org.probeleaf.waveform.plot.PlotMask;
import org.probeleaf.waveform.plot.PlotPane;
import org.probeleaf.waveform.plot.PlotTrace;
import org.probeleaf.workbench.wave.PlotCanvas;

/**
 * The plot of the window in a shell of its own. A frame is asked for, painted at once, and done when the display has answered
 * a question that was put after it: a display answers in order.
 */
final class PanRun {

    private static final double NANO_TO_MILLI = 1e-6;
    private static final double INTERVAL = 1e-9;
    private static final double[] ZOOMS = {2, 10, 1_000, 100_000};
    private static final int WARM = 60;

    private final int samples;
    private final int frames;
    private final int width;
    private final int height;
    private int painted;

    PanRun(int samples, int frames, int width, int height) {
        this.samples = samples;
        this.frames = frames;
        this.width = width;
        this.height = height;
    }

    List<Seen> run() {
        Channel capture = clock(1, 3.4f);
        PlotTrace trace = PlotTrace.of("CLK", capture, Ink.TRACE_A);
        List<PlotPane> alone = List.of(PlotPane.of(List.of(trace), List.of(new PlotLevel(0.2, "low 200 mV"),
                new PlotLevel(3.4, "high 3.4 V"))));
        List<PlotPane> laid = laid(capture, trace);
        Display display = new Display();
        Shell shell = new Shell(display, SWT.NO_TRIM);
        shell.setLayout(new FillLayout());
        PlotCanvas plot = new PlotCanvas(shell, () -> { });
        plot.control().addListener(SWT.Paint, e -> painted++);
        shell.setSize(width, height);
        shell.open();
        List<Seen> all = new ArrayList<>();
        pan(display, plot, "a trace", alone, all);
        pan(display, plot, "the same laid on a reference", laid, all);
        shell.dispose();
        display.dispose();
        return all;
    }

    private void pan(Display display, PlotCanvas plot, String what, List<PlotPane> panes, List<Seen> all) {
        plot.show(what, panes, new double[0]);
        double whole = samples * INTERVAL;
        for (double zoom : ZOOMS) {
            double length = whole / zoom;
            for (int i = 0; i < WARM; i++) {
                frame(display, plot, (whole - length) * i / WARM, length);
            }
            double[] took = new double[frames];
            long start = System.nanoTime();
            for (int i = 0; i < frames; i++) {
                long begun = System.nanoTime();
                frame(display, plot, (whole - length) * i / (frames - 1), length);
                took[i] = (System.nanoTime() - begun) * NANO_TO_MILLI;
            }
            double seconds = (System.nanoTime() - start) * 1e-9;
            Arrays.sort(took);
            all.add(new Seen(what, Math.round(samples / zoom), frames / seconds, took[(int) (0.95 * (frames - 1))],
                    took[frames - 1]));
        }
    }

    private void frame(Display display, PlotCanvas plot, double from, double length) {
        int before = painted;
        plot.lookAt(from, from + length);
        plot.control().update();
        while (painted == before) {
            if (!display.readAndDispatch()) {
                display.sleep();
            }
        }
        while (display.readAndDispatch()) {
            // whatever came meanwhile
        }
        display.getCursorLocation();
    }

    /** With its tolerance, the levels of a family, and the difference in a strip of its own. */
    private List<PlotPane> laid(Channel capture, PlotTrace trace) {
        Channel good = clock(2, 3.6f);
        Measures m = WaveMeasurer.standard().measure(capture);
        Overlay o = Comparer.compare(capture, m, good, WaveMeasurer.standard().measure(good), Tolerance.usual()).overlay();
        PlotTrace reference = PlotTrace.of("good", good, Ink.REFERENCE).shiftedBy(o.laid());
        PlotPane pane = PlotPane.of(List.of(reference, trace), List.of(new PlotLevel(0.8, "VIL", Ink.THRESHOLD),
                new PlotLevel(2, "VIH", Ink.THRESHOLD))).with(List.of(new PlotBand(0.8, 2, Ink.NEITHER)))
                .with(new PlotMask(reference, o.level(), o.time(), o.outside().stream()
                        .map(s -> new PlotMask.Span(s.from(), s.to())).toList()));
        PlotTrace less = PlotTrace.of("difference", o.difference(), Ink.TRACE_A);
        return List.of(pane, PlotPane.of(List.of(less), List.of()).weighing(0.4));
    }

    /** A clock with ringing and noise. */
    private Channel clock(long seed, float high) {
        float[] values = new float[samples];
        long noise = seed;
        for (int i = 0; i < samples; i++) {
            noise = noise * 6364136223846793005L + 1442695040888963407L;
            int phase = i % 1000;
            double ring = phase < 60 ? 0.4 * Math.cos(phase * 0.5) * (60 - phase) / 60 : 0;
            values[i] = (float) ((phase < 500 ? high + ring : 0.2) + ((noise >>> 56) - 128) * 1e-4);
        }
        return Channel.of("CLK", "V", new TimeBase.Uniform(0, INTERVAL, samples), Samples.of(values));
    }
}
