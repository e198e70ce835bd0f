// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
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

    private static void check(List<Trial> trials, int within, int covered) {
        String bad = trials.stream().filter(t -> !t.within(OUT) || !t.covered()).map(Trial::toString)
                .collect(Collectors.joining("\n"));
        assertTrue(trials.stream().filter(t -> t.within(OUT)).count() >= within, bad);
        assertTrue(trials.stream().filter(Trial::covered).count() >= covered, bad);
    }

    @Test
    void hundredPhotographs_cornersFound_amplitudeAndPeriodWithinThreePerCent() {
        check(trials(1000, 100, false, false), 95, 95);
    }

    @Test
    void photographs_cornersMarkedTwoPixelsOut_amplitudeAndPeriodWithinThreePerCent() {
        check(trials(2000, 20, false, true), 19, 19);
    }

    /** With knobs, texture, writing, reflections, curved tubes and the pixels of panels. */
    @Test
    void benchPhotographs_cornersFound_mostWithinThreePerCent() {
        check(trials(3000, 20, true, false), 17, 17);
    }
}
