// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

/** Made photographs of made screens, kept as JPEG of quality 80: how far what is read off them is out. */
class PhotoCasesTest {

    private static final double OUT = 0.03;

    private static List<Trial> trials(int from, int count, boolean bench, boolean marked) {
        return IntStream.range(from, from + count).parallel().mapToObj(seed -> {
            try {
                return Trial.of(seed, bench, marked);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }).toList();
    }

    /** Writes the figures of a set to a file of its name, and fails where too few are good. */
    private static void check(String set, List<Trial> trials, int within, int covered) throws IOException {
        long good = trials.stream().filter(t -> t.within(OUT)).count();
        long honest = trials.stream().filter(Trial::covered).count();
        double[] amplitude = trials.stream().mapToDouble(Trial::amplitudeOut).sorted().toArray();
        double[] period = trials.stream().mapToDouble(Trial::periodOut).sorted().toArray();
        String figures = String.format(Locale.ROOT, "%s: %d of %d within 3 %%, %d within the stated uncertainty; half are within"
                + " %.2f %% in amplitude and %.2f %% in period%n", set, good, trials.size(), honest,
                100 * amplitude[amplitude.length / 2], 100 * period[period.length / 2]);
        String bad = trials.stream().filter(t -> !t.within(OUT) || !t.covered()).map(t -> t + "\n")
                .collect(Collectors.joining());
        Files.writeString(Path.of("target", "photographs-" + set + ".txt"), figures + bad);
        assertTrue(good >= within && honest >= covered, figures + bad);
    }

    @Test
    void hundredPhotographs_cornersFound_amplitudeAndPeriodWithinThreePerCent() throws IOException {
        check("found", trials(1000, 100, false, false), 95, 95);
    }

    @Test
    void photographs_cornersMarkedTwoPixelsOut_amplitudeAndPeriodWithinThreePerCent() throws IOException {
        check("marked", trials(2000, 20, false, true), 19, 19);
    }

    /** With knobs, texture, writing, reflections, curved tubes and the pixels of panels. */
    @Test
    void benchPhotographs_cornersFound_mostWithinThreePerCent() throws IOException {
        check("bench", trials(3000, 20, true, false), 17, 17);
    }
}
