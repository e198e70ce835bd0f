// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A text that cannot be read gets one line that names the row and what was expected there. */
class MalformedTextTest {

    static List<Arguments> texts() {
        return List.of(
                Arguments.of("t,A\n0,1\n1,2\n2,3\n3,4x7\n4,5\n", "row 5, column 2: \"4x7\" stands where a number was expected"),
                Arguments.of("t,A\n0,1\n1,2\n2,3\n3\n4,5\n", "row 5: 1 cell, where 2 were expected"),
                Arguments.of("t,A\n0,1\n1,2\n2,3\n1,4\n4,5\n",
                        "row 5, column 1: the time goes back from 2.0 to 1.0 s, where rising times were expected"),
                Arguments.of("t,A\n0,1\n1,2\n2,3\nhere it stopped\n4,5\n",
                        "row 5: \"here it stopped\" stands where numbers were expected"),
                Arguments.of("t,A\n0,1\n1,2\n2,3\n,4\n4,5\n", "row 5, column 1: there is no time, where a number was expected"),
                Arguments.of("t;A\n0,0;1\n0,1;2\n0,2;3\n0,3;4.5.6\n0,4;5\n",
                        "row 5, column 2: \"4.5.6\" stands where a number was expected"),
                Arguments.of("Dear harbour office,\nthe gauge stands still.\n",
                        "row 1: no row of numbers was found; rows like \"0.001,2.5\" were expected"),
                Arguments.of("\n\n\n", "row 1: no row of numbers was found; rows like \"0.001,2.5\" were expected"),
                Arguments.of("", "the file is empty; rows of numbers, a VCD or a WAV file were expected"),
                Arguments.of("abc\0def", "byte 3: it is no text, and neither VCD nor WAV; export the capture as text with columns"));
    }

    private static Imported read(String text) throws IOException {
        return CaptureReader.read(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), ImportOptions.none());
    }

    @ParameterizedTest
    @MethodSource("texts")
    void text_isRefusedInOneLine(String text, String message) {
        assertEquals(message, assertThrows(CaptureException.class, () -> read(text)).getMessage().replace(": column", ", column"));
    }

    /** Bytes changed at random: it is read or refused in one line, and nothing else happens. */
    @Test
    void damagedAtRandom_isReadOrRefused() {
        String plain = "Time,CLK,RD\ns,V,V\n" + "0.001,2.5,3\n0.002,2.6,3\n0.003,2.7,3\n".repeat(1);
        String dump = "$timescale 1us $end\n$var wire 4 a bus $end\n$enddefinitions $end\n#0\nb1 a\n#2\nbx a\n#3\nbz1 a\n";
        Random random = new Random(5);
        int read = 0;
        for (int round = 0; round < 4000; round++) {
            byte[] bytes = (round % 2 == 0 ? plain : dump).getBytes(StandardCharsets.UTF_8);
            for (int k = 0; k <= random.nextInt(4); k++) {
                bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
            }
            try {
                CaptureReader.read(new ByteArrayInputStream(bytes), ImportOptions.none());
                read++;
            } catch (CaptureException e) {
                assertFalse(e.getMessage().isBlank() || e.getMessage().contains("\n"), e.getMessage());
            } catch (IOException e) {
                throw new AssertionError(e);
            }
        }
        assertTrue(read > 500 && read < 4000, "read " + read);
    }

    @Test
    void numbers_areThoseOfTheLibrary() {
        Random random = new Random(3);
        ByteNumbers numbers = new ByteNumbers('.');
        for (int i = 0; i < 20_000; i++) {
            double v = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(40) - 20);
            String text = i % 3 == 0 ? String.valueOf(v) : i % 3 == 1 ? String.format(java.util.Locale.ROOT, "%.9e", v)
                    : String.format(java.util.Locale.ROOT, "%+.6f", v);
            byte[] b = (text + ",").getBytes(StandardCharsets.US_ASCII);
            assertEquals(Double.parseDouble(text), numbers.read(b, 0, b.length), 0, text);
            assertEquals(b.length - 1, numbers.end());
        }
    }
}
