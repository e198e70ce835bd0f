// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.speed;

import java.io.BufferedOutputStream;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;

import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.capture.MinMaxPyramid;
import org.probeleaf.waveform.format.CaptureReader;
import org.probeleaf.waveform.format.ImportOptions;
import org.probeleaf.waveform.measure.WaveMeasurer;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Imports, measures and plots a large capture, against a plain buffered parser of the same file. */
@Command(name = "import", mixinStandardHelpOptions = true, description = {
    "Times a made capture of text being imported, measured and laid out for a first plot, against a parser that reads the"
            + " same file line by line into doubles, alternating in one run; then as many changes of VCD and samples of WAV."})
public final class ImportCommand implements Callable<Integer> {

    private static final double GOAL = 2;
    private static final int PIXELS = 2000;
    private static final double NANO = 1e-9;

    @Option(names = "--samples", paramLabel = "N", defaultValue = "10000000", description = "Rows. Default: ${DEFAULT-VALUE}.")
    private int samples;

    @Option(names = "--rounds", paramLabel = "N", defaultValue = "3",
            description = "How often each is done; the median counts. Default: ${DEFAULT-VALUE}.")
    private int rounds;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        PrintWriter print = spec.commandLine().getOut();
        Path file = Files.createTempFile("capture", ".csv");
        try {
            make(file);
            List<Double> plain = new ArrayList<>();
            List<List<Double>> ours = List.of(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
            double sum = 0;
            // The first round only warms up.
            for (int round = -1; round < rounds; round++) {
                long start = System.nanoTime();
                sum = plain(file);
                double took = (System.nanoTime() - start) * NANO;
                double[] steps = ours(file, sum);
                if (round >= 0) {
                    plain.add(took);
                    for (int i = 0; i < steps.length; i++) {
                        ours.get(i).add(steps[i]);
                    }
                }
            }
            double base = Median.of(plain);
            double all = ours.stream().mapToDouble(Median::of).sum();
            print.printf(Locale.ROOT, "%d samples, %d MB%n", samples, Files.size(file) >> 20);
            print.printf(Locale.ROOT, "%-26s %6.2f s%n", "plain buffered parser", base);
            String[] names = {"import", "measure", "first plot"};
            for (int i = 0; i < names.length; i++) {
                print.printf(Locale.ROOT, "%-26s %6.2f s%n", names[i], Median.of(ours.get(i)));
            }
            print.printf(Locale.ROOT, "all three are %.2f of the plain parser; the goal is %.1f at most%n", all / base, GOAL);
            OtherFormats.time(samples, rounds, print);
            print.flush();
            return all <= GOAL * base ? 0 : 1;
        } finally {
            Files.deleteIfExists(file);
        }
    }

    /** A clock with ringing and noise, times with ten digits and values with five. */
    private void make(Path file) throws IOException {
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file), 1 << 20)) {
            out.write("Time (s),CLK (V)\n".getBytes(StandardCharsets.US_ASCII));
            StringBuilder text = new StringBuilder();
            long noise = 1;
            for (int i = 0; i < samples; i++) {
                noise = noise * 6364136223846793005L + 1442695040888963407L;
                int phase = i % 1000;
                int level = phase < 500 ? 33000 + (phase < 60 ? (int) (4000 * Math.cos(phase * 0.5)) * (60 - phase) / 60 : 0) : 2000;
                int value = level + (int) (noise >>> 56) - 128;
                text.append("0.0").append(String.valueOf(1_000_000_000L + i), 1, 10).append(',').append(value / 10000).append('.')
                        .append(String.valueOf(10_000 + value % 10_000), 1, 5).append('\n');
                if (text.length() > 1 << 16) {
                    out.write(text.toString().getBytes(StandardCharsets.US_ASCII));
                    text.setLength(0);
                }
            }
            out.write(text.toString().getBytes(StandardCharsets.US_ASCII));
        }
    }

    /** What anybody would write first: lines from a buffered reader, cells by the library. */
    private double plain(Path file) throws IOException {
        double[] times = new double[samples];
        double[] values = new double[samples];
        try (BufferedReader in = Files.newBufferedReader(file, StandardCharsets.US_ASCII)) {
            in.readLine();
            int n = 0;
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                int comma = line.indexOf(',');
                times[n] = Double.parseDouble(line.substring(0, comma));
                values[n++] = Double.parseDouble(line.substring(comma + 1));
            }
        }
        double sum = 0;
        for (double v : values) {
            sum += v;
        }
        return sum;
    }

    private double[] ours(Path file, double sum) throws IOException {
        long start = System.nanoTime();
        Channel channel = CaptureReader.read(file, ImportOptions.none()).capture().channels().get(0);
        long read = System.nanoTime();
        double mean = WaveMeasurer.standard().measure(channel).mean().value();
        long measured = System.nanoTime();
        MinMaxPyramid pyramid = new MinMaxPyramid(channel.samples());
        double height = 0;
        for (int x = 0; x < PIXELS; x++) {
            double[] range = pyramid.range((int) ((long) x * samples / PIXELS), (int) ((x + 1L) * samples / PIXELS));
            height = Math.max(height, range[1] - range[0]);
        }
        long plotted = System.nanoTime();
        if (channel.size() != samples || Math.abs(mean - sum / samples) > 0.01 || !(height > 1)) {
            throw new IOException("what was imported is not what the plain parser reads: " + channel.size() + " samples, mean "
                    + mean + " and " + sum / samples);
        }
        return new double[] {(read - start) * NANO, (measured - read) * NANO, (plotted - measured) * NANO};
    }
}
