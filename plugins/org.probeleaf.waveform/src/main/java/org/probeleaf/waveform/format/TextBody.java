// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.format;

import java.nio.charset.StandardCharsets;
import java.util.List;

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

    private long at;
    private long rows;
    private long blank;
    private long comments;
    private long missing;
    private long footer;
    private String footerText;
    private long shortRow;
    private int shortCells;

    TextBody(Layout layout, List<Column> columns) {
        this.layout = layout;
        this.columns = columns;
        clocks = new Clock[columns.size()];
        values = new SampleBuilder[columns.size()];
        factors = new double[columns.size()];
        int last = 0;
        for (int c = 0; c < columns.size(); c++) {
            factors[c] = columns.get(c).factor();
            clocks[c] = columns.get(c).role() == Column.Role.TIME ? new Clock() : null;
            values[c] = columns.get(c).role() == Column.Role.VALUE ? new SampleBuilder() : null;
            last = clocks[c] != null || values[c] != null ? c : last;
        }
        lastData = last;
        numbers = new ByteNumbers(layout.decimal());
        row = new double[columns.size()];
        delimiter = (byte) layout.delimiter();
        spaces = layout.delimiter() == ' ';
    }

    /** Takes a line, without its end. */
    void line(byte[] b, int from, int to) throws CaptureException {
        at++;
        if (at <= layout.firstRow()) {
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
                i = after(b, cellEnd(b, i, to), to);
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
                Cell cell = Cell.of(new String(b, i, end - i, StandardCharsets.UTF_8), layout.decimal());
                if (cell.kind() == Cell.Kind.TEXT) {
                    strange(b, from, to, c, new String(b, i, end - i, StandardCharsets.UTF_8), any);
                    return;
                }
                v = cell.value();
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

    private void keep() throws CaptureException {
        if (footer > 0) {
            throw CaptureException.row(footer, "\"" + footerText + "\" stands where numbers were expected");
        }
        for (int c = 0; c <= lastData; c++) {
            if (clocks[c] != null && !Double.isNaN(row[c]) && !clocks[c].add(row[c])) {
                throw CaptureException.row(at, "column " + (c + 1) + ": the time goes back from " + clocks[c].last() + " to "
                        + row[c] + " s, where rising times were expected");
            }
            if (clocks[c] != null && Double.isNaN(row[c]) && !ended(c)) {
                throw CaptureException.row(at, "column " + (c + 1) + ": there is no time, where a number was expected");
            }
            if (values[c] != null) {
                int clock = columns.get(c).clock();
                if (clock < 0 || !Double.isNaN(row[clock])) {
                    values[c].add(row[c]);
                    missing += Double.isNaN(row[c]) ? 1 : 0;
                }
            }
        }
        rows++;
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
        if (footer == 0) {
            footer = at;
            footerText = shown(new String(b, from, to - from, StandardCharsets.UTF_8).strip());
        }
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
        if (blank + comments > 0) {
            notes.add("Empty rows and remarks between the data were left out: " + (blank + comments) + ".");
        }
    }
}
