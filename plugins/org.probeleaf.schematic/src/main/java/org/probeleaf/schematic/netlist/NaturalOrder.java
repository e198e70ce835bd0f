// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.netlist;

import java.util.Comparator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Texts in the order of people: {@code R2} before {@code R10}; letter case counts last; null comes after all. */
public enum NaturalOrder implements Comparator<String> {
    INSTANCE;

    private static final Pattern PIECE = Pattern.compile("\\d{1,18}|\\D|\\d");

    @Override
    public int compare(String a, String b) {
        if (a == null || b == null) {
            return a == null ? b == null ? 0 : 1 : -1;
        }
        Matcher ma = PIECE.matcher(a);
        Matcher mb = PIECE.matcher(b);
        while (true) {
            boolean more = ma.find();
            if (!mb.find()) {
                return more ? 1 : a.compareTo(b);
            }
            if (!more) {
                return -1;
            }
            int c = piece(ma.group(), mb.group());
            if (c != 0) {
                return c;
            }
        }
    }

    private static int piece(String a, String b) {
        boolean numbers = Character.isDigit(a.charAt(0)) && Character.isDigit(b.charAt(0));
        return numbers ? Long.compare(Long.parseLong(a), Long.parseLong(b)) : a.compareToIgnoreCase(b);
    }
}
