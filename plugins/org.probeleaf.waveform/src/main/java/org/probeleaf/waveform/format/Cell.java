// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.format;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One cell of a text, understood.
 *
 * @param kind  what it is
 * @param value the number, in the SI unit where the cell names one; NaN unless it is a number
 */
record Cell(Kind kind, double value) {

    /** What a cell may be. */
    enum Kind {
        NUMBER, MISSING, TEXT
    }

    private static final Set<String> MISSING = Set.of("", "nan", "-", "--", "---", "*", "n/a", "na", "null", "none", "ol",
            "ovl", "ovf", "overload", "inf", "+inf", "-inf", "?", "clipping", "9.9e37", "+9.9e37");
    private static final Pattern NUMBER = Pattern.compile("([+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eEdD][+-]?\\d{1,3})?)(.*)");
    private static final Pattern CLOCK = Pattern.compile(
            "(?:(\\d{4})-(\\d{2})-(\\d{2})[T ])?(\\d{1,2}):(\\d{2}):(\\d{2}(?:\\.\\d+)?)Z?");
    private static final Cell NOTHING = new Cell(Kind.MISSING, Double.NaN);
    private static final Cell WORDS = new Cell(Kind.TEXT, Double.NaN);

    static Cell of(String text, char decimal) {
        String t = unquoted(text.strip()).strip();
        if (MISSING.contains(t.toLowerCase(Locale.ROOT))) {
            return NOTHING;
        }
        if (decimal == ',' && t.indexOf('.') >= 0 && t.indexOf(',') >= 0) {
            return WORDS;
        }
        String plain = (decimal == ',' ? t.replace(',', '.') : t).replace('\u2212', '-');
        Matcher number = NUMBER.matcher(plain);
        if (number.matches()) {
            double factor = UnitWord.factor(number.group(2));
            if (!Double.isNaN(factor)) {
                return new Cell(Kind.NUMBER, Double.parseDouble(number.group(1).replaceAll("[dD]", "e")) * factor);
            }
        }
        Matcher clock = CLOCK.matcher(plain);
        return clock.matches() ? new Cell(Kind.NUMBER, seconds(clock)) : WORDS;
    }

    /** Since midnight, or since 1970 where there is a date. */
    private static double seconds(Matcher clock) {
        double day = 0;
        if (clock.group(1) != null) {
            try {
                day = java.time.LocalDate.parse(clock.group(1) + "-" + clock.group(2) + "-" + clock.group(3)).toEpochDay();
            } catch (java.time.DateTimeException e) {
                return Double.NaN;
            }
        }
        return (day * 24 + Integer.parseInt(clock.group(4))) * 3600 + Integer.parseInt(clock.group(5)) * 60
                + Double.parseDouble(clock.group(6));
    }

    private static String unquoted(String t) {
        return t.length() >= 2 && t.charAt(0) == '"' && t.charAt(t.length() - 1) == '"'
                ? t.substring(1, t.length() - 1).replace("\"\"", "\"") : t;
    }
}
