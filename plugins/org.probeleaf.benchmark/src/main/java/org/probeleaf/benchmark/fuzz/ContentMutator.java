// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.fuzz;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Damages the instructions of a page: numbers, operators, lines, matrices, fonts, dashes, repetitions. */
final class ContentMutator {

    private static final String[] ABSURD = {"0", "-1", "1e9", "99999999999999999999", "0.0000000000001", "-", "1..2",
        "2147483648", "-32768.5", "340000000000000000000000000000000000000", "NaN", "--7", "1e400", "."};
    private static final String[] HOSTILE = {
        "q q q q q q q q", "Q Q Q Q Q Q", "1000000 0 0 1000000 0 0 cm", "0 0 0 0 0 0 cm", "1e-9 0 0 1e-9 0 0 cm",
        "BT /F1 1e9 Tf 0 0 Td (A) Tj", "ET ET BT BT", "1e30 w", "[0 0 0 0] 0 d", "[-1 0.00001] 1e9 d",
        "0 0 1e38 -1e38 re S", "W n", "0 0 0 0 re W n", "/Nothing Do", "/Nothing gs", "/Pattern cs /Nothing scn",
        "BI /W 100000 /H 100000 /BPC 8 /CS /RGB ID abc EI", "BI /W 2 ID", "BX strange EX", "3 Tr", "-1e9 Tz", "1e9 TL",
        "BMC BDC EMC EMC", "/OC /Nothing BDC", "<FFFFFFFF> Tj", "[ [ [ [", "] ] >> >>", "(((((", "<< /A << /B",
        "1 1 1 1 1 1 1 1 1 1 1 1 sc", "nul true false", "0 0 m h h h h S", "1 2 3 c 4 5 v y l m", "\u0000\u0001\u0002"};

    private final Random random;
    private String how = "";

    ContentMutator(Random random) {
        this.random = random;
    }

    /** What was done. */
    String how() {
        return how;
    }

    byte[] mutate(byte[] content) {
        List<String> words = new ArrayList<>(Arrays.asList(new String(content, StandardCharsets.ISO_8859_1)
                .split("(?<=[ \\n\\r\\t])")));
        switch (random.nextInt(8)) {
            case 0, 1 -> numbers(words);
            case 2 -> operators(words);
            case 3 -> hostile(words);
            case 4 -> shuffle(words);
            case 5 -> repeat(words);
            case 6 -> dashes(words);
            default -> drop(words);
        }
        return String.join("", words).getBytes(StandardCharsets.ISO_8859_1);
    }

    private void numbers(List<String> words) {
        how = "numbers";
        int count = 1 + random.nextInt(40);
        for (int i = 0; i < count; i++) {
            int at = random.nextInt(words.size());
            if (words.get(at).matches("[-+.\\d]+\\s*")) {
                words.set(at, ABSURD[random.nextInt(ABSURD.length)] + " ");
            }
        }
    }

    private void operators(List<String> words) {
        how = "operators";
        for (int i = 0; i < 1 + words.size() / 100; i++) {
            int a = random.nextInt(words.size());
            int b = random.nextInt(words.size());
            Collections.swap(words, a, b);
        }
    }

    private void hostile(List<String> words) {
        how = "hostile instructions";
        for (int i = 0; i < 1 + random.nextInt(6); i++) {
            words.add(random.nextInt(words.size() + 1), "\n" + HOSTILE[random.nextInt(HOSTILE.length)] + "\n");
        }
    }

    private void shuffle(List<String> words) {
        how = "shuffled piece";
        int from = random.nextInt(words.size());
        Collections.shuffle(words.subList(from, Math.min(words.size(), from + 400)), random);
    }

    private void repeat(List<String> words) {
        how = "repetition";
        int from = random.nextInt(words.size());
        List<String> piece = List.copyOf(words.subList(from, Math.min(words.size(), from + 1 + random.nextInt(60))));
        String text = "\n" + String.join("", piece) + "\n";
        int most = 4_000_000 / (text.length() + 1);
        words.add(from, text.repeat(Math.min(most, 1 << random.nextInt(18))));
    }

    private void dashes(List<String> words) {
        how = "dashes";
        StringBuilder dash = new StringBuilder("\n[");
        int count = 1 << random.nextInt(17);
        for (int i = 0; i < count; i++) {
            dash.append(random.nextInt(3) == 0 ? "1e-7 " : "0.01 ");
        }
        words.add(random.nextInt(words.size() + 1), dash.append("] 0 d\n").toString());
    }

    private void drop(List<String> words) {
        how = "dropped words";
        for (int i = 0; i < 1 + random.nextInt(50) && words.size() > 1; i++) {
            words.remove(random.nextInt(words.size()));
        }
    }
}
