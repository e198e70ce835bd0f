// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

import com.fasterxml.jackson.jr.ob.JSON;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class InkTest {

    private static final Path PALETTE = Path.of(System.getProperty("probeleaf.shared", "none"), "reference", "palette.json");
    /** Greys are in no palette; these two lines have one of the examples of the guidelines. */
    private static final Set<Ink> WORDS = Set.of(Ink.SCALE);

    /** Contrast on white by WCAG 2 (W3C, 2008). */
    private static double contrast(int rgb) {
        double l = 0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8) + 0.0722 * linear(rgb);
        return 1.05 / (l + 0.05);
    }

    private static double linear(int part) {
        double c = (part & 0xff) / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }

    @ParameterizedTest
    @EnumSource
    void everyLine_standsOutOnWhite(Ink ink) {
        if (ink.width() > 0) {
            assertTrue(contrast(ink.rgb()) >= 3, ink + " " + contrast(ink.rgb()));
        }
    }

    @Test
    void traces_differByDashesToo() {
        Set<List<Double>> patterns = new HashSet<>();
        Set<Integer> colours = new HashSet<>();
        for (int i = 0; i < 4; i++) {
            patterns.add(java.util.Arrays.stream(Ink.trace(i).dashes()).boxed().toList());
            colours.add(Ink.trace(i).rgb());
        }
        assertEquals(4, patterns.size());
        assertEquals(4, colours.size());
    }

    @Test
    void everyLine_hasAColourOfThePalettes() throws IOException {
        assumeTrue(Files.exists(PALETTE), "the palettes are not there; probeleaf.shared names their folder");
        String known = Files.readString(PALETTE).toUpperCase(Locale.ROOT);
        JSON.std.mapFrom(known.toLowerCase(Locale.ROOT));
        for (Ink ink : Ink.values()) {
            if (ink.width() > 0 && !WORDS.contains(ink)) {
                assertTrue(known.contains(String.format("#%06X", ink.rgb())), ink + " is in no palette");
            }
        }
    }
}
