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
            "o.l", "o.l.", "ovl", "ovf", "over", "overload", "---.-", "----", "inf", "+inf", "-inf", "?", "clipping", "9.9e37", "+9.9e37");
    private static final Pattern NUMBER = Pattern.compile("([+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eEdD][+-]?\\d{1,3})?)(.*)");
    private static final Pattern GROUPED = Pattern.compile(
            "([+-]?[1-9]\\d{0,2}(?:(['., \u00a0\u2009\u202f\u2019])\\d{3})(?:\\2\\d{3})*)(?:([.,])\\d*)?(?:\\s*\\D.*)?");
    private static final Cell NOTHING = new Cell(Kind.MISSING, Double.NaN);
    private static final Cell WORDS = new Cell(Kind.TEXT, Double.NaN);

    static Cell of(String text, char decimal) {
        String t = unquoted(text.strip()).strip();
        if (MISSING.contains(t.toLowerCase(Locale.ROOT))) {
            return NOTHING;
        }
        String whole = ungrouped(t, decimal);
        if (decimal == ',' && whole.indexOf('.') >= 0 && whole.indexOf(',') >= 0 && Stamp.of(whole.replace(',', '.')) == null) {
            return WORDS;
        }
        String plain = (decimal == ',' ? whole.replace(',', '.') : whole).replace('\u2212', '-');
        Matcher number = NUMBER.matcher(plain);
        if (number.matches()) {
            double factor = UnitWord.factor(number.group(2));
            if (!Double.isNaN(factor)) {
                return new Cell(Kind.NUMBER, Double.parseDouble(number.group(1).replaceAll("[dD]", "e")) * factor);
            }
        }
        Stamp stamp = Stamp.of(plain);
        return stamp == null ? WORDS : new Cell(Kind.NUMBER, stamp.seconds());
    }

    /** Whether a cell is a clock without a date, which starts again at midnight. */
    static boolean ofDay(String text, char decimal) {
        String t = unquoted(text.strip()).strip();
        Stamp stamp = Stamp.of(decimal == ',' ? t.replace(',', '.') : t);
        return stamp != null && !stamp.dated();
    }

    /**
     * A number without what groups its digits by threes: an apostrophe or a space, or the sign that is not the decimal one,
     * but only where the decimal sign stands behind it or it groups twice, since {@code 1,250} may well be a fraction.
     */
    private static String ungrouped(String t, char decimal) {
        Matcher m = GROUPED.matcher(t);
        if (!m.matches()) {
            return t;
        }
        char sign = m.group(2).charAt(0);
        boolean certain = sign != '.' && sign != ',' || m.group(3) != null || t.indexOf(sign) != t.lastIndexOf(sign);
        boolean other = sign != decimal && (m.group(3) == null || m.group(3).charAt(0) == decimal);
        return certain && other ? m.group(1).replace(m.group(2), "") + t.substring(m.end(1)) : t;
    }

    private static String unquoted(String t) {
        return t.length() >= 2 && t.charAt(0) == '"' && t.charAt(t.length() - 1) == '"'
                ? t.substring(1, t.length() - 1).replace("\"\"", "\"") : t;
    }
}
