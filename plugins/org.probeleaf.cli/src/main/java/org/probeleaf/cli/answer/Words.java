// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.answer;

import java.io.PrintStream;
import java.util.List;
import java.util.stream.Collectors;

/** Small forms of text. */
public final class Words {

    private static final int WIDTH = 100;

    private Words() {
    }

    /** {@code 1 sheet}, {@code 2 sheets}. */
    public static String count(int n, String thing) {
        return n + " " + thing + (n == 1 ? "" : "s");
    }

    static String padded(String text, int width) {
        return text + " ".repeat(Math.max(0, width - text.length()));
    }

    /** Words after a head, broken into lines; further lines are set in as far as the head is long. */
    static void wrapped(PrintStream out, String head, List<String> words) {
        StringBuilder line = new StringBuilder(head);
        boolean first = true;
        for (String word : words) {
            if (!first && line.length() + 1 + word.length() > WIDTH) {
                out.println(line);
                line = new StringBuilder(" ".repeat(head.length()));
                first = true;
            }
            line.append(first ? "" : " ").append(word);
            first = false;
        }
        out.println(line.toString().stripTrailing());
    }

    /** {@code sheet 1}, {@code sheets 1, 2 and 5}. */
    static String sheets(List<Integer> pages) {
        if (pages.isEmpty()) {
            return "no sheet";
        }
        String all = pages.stream().map(String::valueOf).collect(Collectors.joining(", "));
        int comma = all.lastIndexOf(", ");
        return pages.size() == 1 ? "sheet " + all
                : "sheets " + all.substring(0, comma) + " and " + all.substring(comma + 2);
    }
}
