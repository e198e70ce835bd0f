// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.netlist;

import java.util.Comparator;

/** Texts in the order of people: {@code R2} before {@code R10}; letter case counts last; null comes after all. */
public enum NaturalOrder implements Comparator<String> {
    INSTANCE;

    /** As many digits as a long holds whatever they are. */
    private static final int DIGITS = 18;

    @Override
    public int compare(String a, String b) {
        if (a == null || b == null) {
            return a == null ? b == null ? 0 : 1 : -1;
        }
        int i = 0;
        int j = 0;
        while (i < a.length() && j < b.length()) {
            int endA = end(a, i);
            int endB = end(b, j);
            int c = digit(a.charAt(i)) && digit(b.charAt(j))
                    ? Long.compare(Long.parseLong(a, i, endA, 10), Long.parseLong(b, j, endB, 10))
                    : a.substring(i, endA).compareToIgnoreCase(b.substring(j, endB));
            if (c != 0) {
                return c;
            }
            i = endA;
            j = endB;
        }
        return i < a.length() ? 1 : j < b.length() ? -1 : a.compareTo(b);
    }

    /** Where the piece that begins at {@code from} ends: a number or a single other sign. */
    private static int end(String text, int from) {
        int end = from + 1;
        while (digit(text.charAt(from)) && end < text.length() && end - from < DIGITS && digit(text.charAt(end))) {
            end++;
        }
        return end;
    }

    private static boolean digit(char c) {
        return c >= '0' && c <= '9';
    }
}
