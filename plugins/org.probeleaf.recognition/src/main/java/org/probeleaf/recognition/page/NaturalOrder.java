// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.page;

import java.util.Comparator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Orders names as people do: {@code R2} before {@code R10}; null last. */
final class NaturalOrder implements Comparator<String> {

    private static final Pattern PIECE = Pattern.compile("\\d+|\\D+");

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
            int c = comparePieces(ma.group(), mb.group());
            if (c != 0) {
                return c;
            }
        }
    }

    private static int comparePieces(String a, String b) {
        if (Character.isDigit(a.charAt(0)) && Character.isDigit(b.charAt(0))) {
            String x = a.replaceFirst("^0+(?=\\d)", "");
            String y = b.replaceFirst("^0+(?=\\d)", "");
            return x.length() != y.length() ? Integer.compare(x.length(), y.length()) : x.compareTo(y);
        }
        return a.compareTo(b);
    }
}
