// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.lettering;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.probeleaf.recognition.lettering.FontAlphabet;

class FontAlphabetTest {

    @Test
    void likeliest_lettersOfAFamilyThatTaughtNothing_areRight() throws IOException {
        FontAlphabet taught = FontAlphabet.of(samples(false));
        List<FontAlphabet.Sample> unknown = samples(true);

        long right = unknown.stream().filter(s -> taught.likeliest(s.outlines()).charAt(0) == s.letter()).count();

        assertEquals(4 * 98, unknown.size());
        assertTrue(right >= 0.98 * unknown.size(), right + " of " + unknown.size());
    }

    @Test
    void standard_isWhatTheFontsTeach() throws IOException {
        List<FontAlphabet.Sample> all = samples(false);
        all.addAll(samples(true));

        FontAlphabet made = FontAlphabet.of(all);

        assertEquals(made.size(), FontAlphabet.standard().size());
        assertEquals(made.lines().stream().map(FontAlphabetTest::withoutInk).toList(),
                FontAlphabet.standard().lines().stream().map(FontAlphabetTest::withoutInk).toList());
    }

    private static String withoutInk(String line) {
        return line.substring(0, line.lastIndexOf(' '));
    }

    /** Letters of the family Lato, or of all others. */
    private static List<FontAlphabet.Sample> samples(boolean lato) throws IOException {
        List<FontAlphabet.Sample> samples = new ArrayList<>();
        for (FontFace face : FontFace.all()) {
            if (face.family().equals("Lato") == lato) {
                samples.addAll(FontLetters.of(face));
            }
        }
        return samples;
    }
}
