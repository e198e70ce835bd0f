// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/**
 * The input strobe /INP of the logger as a recorder on the bench would write it: on a good board, and on one where a second
 * output holds against IC5, so that the strobe no longer gets low. Made by formula; the noise is a sum of sines.
 */
public final class StrobeCapture {

    private static final int ROWS = 800;
    private static final double STEP = 0.01;
    private static final double PERIOD = 2;
    private static final double WIDTH = 0.6;

    private StrobeCapture() {
    }

    /** The file of a good board, of this one otherwise. */
    public static String text(boolean good) {
        StringBuilder text = new StringBuilder("Recorder;bench 2\nCoupling;DC\nTime (us);/INP (V);/RD (V)\n");
        for (int i = 0; i < ROWS; i++) {
            double t = i * STEP - (good ? 0.4 : 0.9);
            double low = good ? 0.2 : 1.3;
            double strobe = 3.4 - (3.4 - low) * pulse(t, 0.05) + noise(i, 0.012);
            double read = 3.3 - 3.1 * pulse(t + 0.03, 0.02) + noise(i + 77, 0.012);
            text.append(String.format(Locale.ROOT, "%.2f;%.3f;%.3f%n", i * STEP, strobe, read).replace('.', ','));
        }
        return text.toString().replace(System.lineSeparator(), "\n");
    }

    /** 1 while the strobe is given, with edges of a length. */
    private static double pulse(double t, double edge) {
        double p = t - Math.floor(t / PERIOD) * PERIOD;
        double down = Math.min(1, p / edge);
        double up = Math.max(0, Math.min(1, (p - WIDTH) / (1.5 * edge)));
        return down - up;
    }

    private static double noise(int i, double size) {
        return size * (StrictMath.sin(i * 2.39) + StrictMath.sin(i * 5.11 + 1) + StrictMath.sin(i * 1.37 + 2)) / 3;
    }

    /** Writes both files into a folder. */
    public static void write(Path folder) throws IOException {
        Files.writeString(folder.resolve("inp-strobe.csv"), text(false));
        Files.writeString(folder.resolve("inp-strobe-good.csv"), text(true));
    }
}
