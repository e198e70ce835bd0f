// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.speed;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.probeleaf.waveform.capture.Capture;
import org.probeleaf.waveform.format.CaptureReader;
import org.probeleaf.waveform.format.ImportOptions;

/** Times importing as many changes of a VCD file, and as many samples of a WAV file. */
final class OtherFormats {

    private static final double NANO = 1e-9;
    private static final int HEAD = 44;

    private OtherFormats() {
    }

    /** Writes a file of so many samples. */
    @FunctionalInterface
    private interface Maker {
        void make(OutputStream out, int samples) throws IOException;
    }

    static void time(int samples, int rounds, PrintWriter print) throws IOException {
        time("VCD, one clock", ".vcd", OtherFormats::vcd, samples, rounds, print);
        time("WAV, 16 bits", ".wav", OtherFormats::wav, samples, rounds, print);
    }

    private static void time(String name, String ending, Maker maker, int samples, int rounds, PrintWriter print)
            throws IOException {
        Path file = Files.createTempFile("capture", ending);
        try {
            try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file), 1 << 20)) {
                maker.make(out, samples);
            }
            List<Double> took = new ArrayList<>();
            for (int round = -1; round < rounds; round++) {
                long start = System.nanoTime();
                Capture capture = CaptureReader.read(file, ImportOptions.none()).capture();
                double seconds = (System.nanoTime() - start) * NANO;
                int n = capture.channels().isEmpty() ? capture.digital().get(0).size() : capture.channels().get(0).size();
                if (n != samples) {
                    throw new IOException(name + ": " + n + " were imported of " + samples);
                }
                if (round >= 0) {
                    took.add(seconds);
                }
            }
            print.printf(Locale.ROOT, "%-26s %6.2f s (%d MB)%n", name, Median.of(took), Files.size(file) >> 20);
        } finally {
            Files.deleteIfExists(file);
        }
    }

    private static void vcd(OutputStream out, int samples) throws IOException {
        out.write(("$timescale 10 ns $end\n$scope module top $end\n$var wire 1 ! clk $end\n$upscope $end\n"
                + "$enddefinitions $end\n").getBytes(StandardCharsets.US_ASCII));
        for (int i = 0; i < samples; i++) {
            out.write(("#" + i + "\n" + (i & 1) + "!\n").getBytes(StandardCharsets.US_ASCII));
        }
    }

    private static void wav(OutputStream out, int samples) throws IOException {
        ByteBuffer head = ByteBuffer.allocate(HEAD).order(ByteOrder.LITTLE_ENDIAN);
        head.put("RIFF".getBytes(StandardCharsets.US_ASCII)).putInt(HEAD - 8 + 2 * samples);
        head.put("WAVEfmt ".getBytes(StandardCharsets.US_ASCII)).putInt(16).putShort((short) 1).putShort((short) 1);
        head.putInt(1_000_000).putInt(2_000_000).putShort((short) 2).putShort((short) 16);
        head.put("data".getBytes(StandardCharsets.US_ASCII)).putInt(2 * samples);
        out.write(head.array());
        for (int i = 0; i < samples; i++) {
            int value = i * 37 % 60_000 - 30_000;
            out.write(value);
            out.write(value >> 8);
        }
    }
}
