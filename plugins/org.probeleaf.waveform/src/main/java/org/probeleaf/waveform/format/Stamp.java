// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.format;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A date and a clock, or a clock alone, as loggers write them.
 *
 * @param seconds since 1970 where there is a date, else since midnight or since the start
 * @param dated   whether there is a date; a clock alone may pass midnight
 */
record Stamp(double seconds, boolean dated) {

    /** Seconds of a day. */
    static final double DAY = 86_400;

    private static final String MONTHS = "janfebmaraprmayjunjulaugsepoctnovdec";
    private static final Pattern FORM = Pattern.compile(
            "(?:(?:(\\d{4})[-/](\\d{1,2})[-/](\\d{1,2})|(\\d{1,2})([./-])(\\d{1,2})\\5(\\d{4})"
                    + "|(\\d{1,2})[- ](\\p{Alpha}{3})\\p{Alpha}*[- ](\\d{4}))(?:[Tt_]|,?\\s+))?"
                    + "(\\d+):(\\d{2})(?::(\\d{2}(?:\\.\\d*)?)|(\\.\\d+))?\\s*([AaPp]\\.?[Mm]\\.?)?\\s*(?:[Zz]|[+-]\\d{2}:?\\d{2})?");

    /** Reads it; null where it is none. The decimal sign is a point. */
    static Stamp of(String text) {
        if (text.indexOf(':') < 0) {
            return null;
        }
        Matcher m = FORM.matcher(text);
        if (!m.matches()) {
            return null;
        }
        try {
            double day = day(m);
            return Double.isNaN(day) ? new Stamp(clock(m), false) : new Stamp(day * DAY + clock(m), true);
        } catch (DateTimeException e) {
            return null;
        }
    }

    /** Days since 1970; NaN where there is no date. Between strokes the month stands first, unless it cannot be one. */
    private static double day(Matcher m) {
        if (m.group(1) != null) {
            return date(m.group(1), m.group(2), m.group(3));
        }
        if (m.group(4) != null) {
            boolean monthFirst = m.group(5).equals("/") && Integer.parseInt(m.group(4)) <= 12;
            return monthFirst ? date(m.group(7), m.group(4), m.group(6)) : date(m.group(7), m.group(6), m.group(4));
        }
        if (m.group(8) != null) {
            int month = MONTHS.indexOf(m.group(9).toLowerCase(Locale.ROOT));
            return date(m.group(10), String.valueOf(month < 0 ? 0 : month / 3 + 1), m.group(8));
        }
        return Double.NaN;
    }

    private static double date(String year, String month, String day) {
        return LocalDate.of(Integer.parseInt(year), Integer.parseInt(month), Integer.parseInt(day)).toEpochDay();
    }

    /** Two numbers are hours and minutes, or minutes and seconds where a fraction follows. */
    private static double clock(Matcher m) {
        double first = Double.parseDouble(m.group(11));
        double second = Double.parseDouble(m.group(12));
        if (m.group(13) == null && (m.group(14) != null || m.group(1) == null && m.group(4) == null && m.group(8) == null
                && first > 24)) {
            return first * 60 + second + (m.group(14) == null ? 0 : Double.parseDouble(m.group(14)));
        }
        double hours = first;
        if (m.group(15) != null) {
            hours = first % 12 + (Character.toLowerCase(m.group(15).charAt(0)) == 'p' ? 12 : 0);
        }
        return hours * 3600 + second * 60 + (m.group(13) == null ? 0 : Double.parseDouble(m.group(13)));
    }
}
