// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.format;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.probeleaf.waveform.capture.SampleBuilder;

/** Takes the rows of a text one by one and fills the columns. */
final class TextBody {

    private static final int SHOWN = 24;

    private final Layout layout;
    private final List<Column> columns;
    private final Clock[] clocks;
    private final SampleBuilder[] values;
    private final double[] factors;
    private final ByteNumbers numbers;
    private final double[] row;
    private final byte delimiter;
    private final boolean spaces;
    private final int lastData;
    private final String head;
    private final double[] days;
    private final double[] rowFactors;
    private final Map<String, Double> unitFactors = new HashMap<>();

    private long at;
    private long rows;
    private long blank;
    private long comments;
    private long missing;
    private long footer;
    private String footerText;
    private String strangeText;
    private int heads;
    private long stopped;
    private boolean midnight;
    private long shortRow;
    private int shortCells;

    /** @param head the last row above the data, which may come again between them; null where there is none */
    TextBody(Layout layout, List<Column> columns, String head) {
        this.layout = layout;
        this.head = head == null ? null : head.strip();
        this.columns = columns;
        clocks = new Clock[columns.size()];
        values = new SampleBuilder[columns.size()];
        factors = new double[columns.size()];
        int last = 0;
        for (int c = 0; c < columns.size(); c++) {
            factors[c] = columns.get(c).factor();
            clocks[c] = columns.get(c).role() == Column.Role.TIME ? new Clock() : null;
            values[c] = columns.get(c).role() == Column.Role.VALUE ? new SampleBuilder() : null;
            last = clocks[c] != null || values[c] != null ? Math.max(Math.max(c, last), columns.get(c).units()) : last;
        }
        lastData = last;
        numbers = new ByteNumbers(layout.decimal());
        row = new double[columns.size()];
        days = new double[columns.size()];
        rowFactors = new double[columns.size()];
        Arrays.fill(rowFactors, 1);
        delimiter = (byte) layout.delimiter();
        spaces = layout.delimiter() == ' ';
    }

    /** Takes a line, without its end. */
    void line(byte[] b, int from, int to) throws CaptureException {
        at++;
        if (at <= layout.firstRow() || stopped > 0) {
            return;
        }
        int start = from;
        while (start < to && (b[start] == ' ' || b[start] == '\t' && delimiter != '\t')) {
            start++;
        }
        if (start == to) {
            blank++;
        } else if (b[start] == '#' || b[start] == '%') {
            comments++;
        } else {
            if (shortRow > 0) {
                throw cut(shortRow, shortCells);
            }
            cells(b, start, to);
        }
    }

    private void cells(byte[] b, int from, int to) throws CaptureException {
        int i = from;
        boolean any = false;
        for (int c = 0; c <= lastData; c++) {
            if (i > to || spaces && i >= to) {
                shortRow = at;
                shortCells = c;
                return;
            }
            if (values[c] == null && clocks[c] == null) {
                int end = cellEnd(b, i, to);
                if (c > 0 && columns.get(c - 1).units() == c) {
                    rowFactors[c - 1] = unitFactor(new String(b, i, end - i, StandardCharsets.UTF_8));
                }
                i = after(b, end, to);
                continue;
            }
            int k = i;
            while (k < to && b[k] == ' ') {
                k++;
            }
            double v = numbers.read(b, k, to);
            int end = numbers.end();
            while (end < to && b[end] == ' ' && !spaces) {
                end++;
            }
            if (end == k || end < to && !ends(b[end])) {
                end = cellEnd(b, i, to);
                String text = new String(b, i, end - i, StandardCharsets.UTF_8);
                Cell cell = Cell.of(text, layout.decimal());
                if (cell.kind() == Cell.Kind.TEXT) {
                    strange(b, from, to, c, text, any);
                    return;
                }
                v = cell.value();
                if (clocks[c] != null && Cell.ofDay(text, layout.decimal())) {
                    v = pastMidnight(c, v);
                }
            }
            any |= v == v;
            row[c] = v * factors[c];
            i = after(b, end, to);
        }
        if (any) {
            keep();
        } else {
            blank++;
        }
    }

    private boolean ends(byte c) {
        return c == delimiter || spaces && c == '\t';
    }

    private int cellEnd(byte[] b, int from, int to) {
        boolean quoted = false;
        for (int i = from; i < to; i++) {
            quoted ^= b[i] == '"';
            if (!quoted && ends(b[i])) {
                return i;
            }
        }
        return to;
    }

    /** Where the next cell begins: behind the delimiter, or behind the end of the line where there is no further cell. */
    private int after(byte[] b, int end, int to) {
        if (!spaces) {
            return end + 1;
        }
        int i = end;
        while (i < to && ends(b[i])) {
            i++;
        }
        return i;
    }

    /** A clock that falls back by most of a day has passed midnight. */
    private double pastMidnight(int c, double seconds) {
        if (seconds + days[c] < clocks[c].last() - Stamp.DAY / 2 && footer == 0) {
            days[c] += Stamp.DAY;
            midnight = true;
        }
        return seconds + days[c];
    }

    /** What one of the units that a row names is; the last known one where it names none. */
    private double unitFactor(String text) {
        return unitFactors.computeIfAbsent(text, t -> {
            double factor = UnitWord.factor(t.replace("\"", ""));
            return Double.isNaN(factor) ? 1 : factor;
        });
    }

    private void keep() throws CaptureException {
        for (int c = 0; c <= lastData; c++) {
            if (clocks[c] != null && Double.isNaN(row[c]) && !ended(c)) {
                foot("column " + (c + 1) + ": there is no time, where a number was expected", "");
                return;
            }
        }
        boolean again = footer > 0 && head != null && head.equals(strangeText);
        if (footer > 0 && !again) {
            throw CaptureException.row(footer, footerText);
        }
        heads += again ? 1 : 0;
        footer = 0;
        for (int c = 0; c <= lastData; c++) {
            if (clocks[c] != null && !Double.isNaN(row[c]) && !clocks[c].add(row[c])) {
                if (again) {
                    stopped = at;
                    return;
                }
                throw CaptureException.row(at, "column " + (c + 1) + ": the time goes back from " + clocks[c].last() + " to "
                        + row[c] + " s, where rising times were expected");
            }
        }
        for (int c = 0; c <= lastData; c++) {
            if (values[c] != null) {
                int clock = columns.get(c).clock();
                if (clock < 0 || !Double.isNaN(row[clock])) {
                    values[c].add(row[c] * rowFactors[c]);
                    missing += Double.isNaN(row[c]) ? 1 : 0;
                }
            }
        }
        rows++;
    }

    private void foot(String wrong, String text) {
        if (footer == 0) {
            footer = at;
            footerText = wrong;
        }
        strangeText = text;
    }

    /** Whether all channels that go by a clock have nothing in this row either: they are shorter than the others. */
    private boolean ended(int clock) {
        for (int c = 0; c <= lastData; c++) {
            if (values[c] != null && columns.get(c).clock() == clock && !Double.isNaN(row[c])) {
                return false;
            }
        }
        return true;
    }

    /** A cell of words: the line may be the first below the data; else it is wrong. */
    private void strange(byte[] b, int from, int to, int column, String cell, boolean any) throws CaptureException {
        String text = shown(cell.strip());
        if (any || column > 0 && layout.data()[0]) {
            throw CaptureException.row(at, "column " + (column + 1) + ": \"" + text + "\" stands where a number was expected");
        }
        String all = new String(b, from, to - from, StandardCharsets.UTF_8).strip();
        foot("\"" + shown(all) + "\" stands where numbers were expected", all);
    }

    private static String shown(String text) {
        return text.length() > SHOWN ? text.substring(0, SHOWN) + "\u2026" : text;
    }

    private CaptureException cut(long line, int cells) {
        return CaptureException.row(line, (cells == 1 ? "1 cell" : cells + " cells") + ", where " + (lastData + 1)
                + " were expected");
    }

    /** Called behind the last line. */
    void end() throws CaptureException {
        if (rows == 0 && shortRow > 0) {
            throw cut(shortRow, shortCells);
        }
        if (rows == 0) {
            throw CaptureException.row(Math.max(1, footer), "no row of numbers was found; rows like \"0.001,2.5\" were expected");
        }
    }

    Clock clock(int column) {
        return clocks[column];
    }

    SampleBuilder values(int column) {
        return values[column];
    }

    /** What is worth a note of the rows. */
    void tell(List<String> notes) {
        if (missing > 0) {
            notes.add(missing == 1 ? "1 value is missing." : missing + " values are missing.");
        }
        if (shortRow > 0) {
            notes.add("The last row, " + shortRow + ", is cut short and was left out.");
        }
        if (footer > 0) {
            notes.add("What stands from row " + footer + " on is no data and was left out.");
        }
        if (midnight) {
            notes.add("The clock passes midnight.");
        }
        if (heads > 0) {
            notes.add("The head stands again between the rows" + (heads == 1 ? "." : ", " + heads + " times."));
        }
        if (stopped > 0) {
            notes.add("From row " + stopped + " on the times start again; only what stands above was read.");
        }
        if (blank + comments > 0) {
            notes.add("Empty rows and remarks between the data were left out: " + (blank + comments) + ".");
        }
    }
}
