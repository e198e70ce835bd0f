// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.format;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Finds out how a text is laid out from its first lines: of all delimiters and decimal signs those count under which the
 * most rows have the same columns of numbers.
 */
final class LayoutFinder {

    private static final char[] DELIMITERS = {';', '\t', ',', '|', ' ', 0};
    private static final double MOSTLY = 0.9;
    private static final int RUN = 3;
    private static final double DOUBT = 0.4;

    private final List<String> lines;
    private final ImportOptions options;

    LayoutFinder(List<String> lines, ImportOptions options) {
        this.lines = lines;
        this.options = options;
    }

    /** A way to read it, and how many rows speak for it. */
    private record Try(Layout layout, double score) {
    }

    /** @throws CaptureException where no row holds numbers */
    Layout find() throws CaptureException {
        if (options.firstRow() > lines.size()) {
            throw CaptureException.row(lines.size(), "data were to begin in row " + options.firstRow() + ", which is not among the"
                    + " first " + lines.size() + " rows");
        }
        Try best = null;
        boolean quoted = lines.stream().anyMatch(l -> l.indexOf('"') >= 0);
        for (char delimiter : options.delimiter() != null ? new char[] {options.delimiter()} : DELIMITERS) {
            for (char decimal : options.decimal() != null ? new char[] {options.decimal()} : new char[] {'.', ','}) {
                if (delimiter != ',' || decimal != ',' || quoted) {
                    Try t = attempt(delimiter, decimal);
                    best = t != null && (best == null || t.score > best.score * 1.001) ? t : best;
                }
            }
        }
        if (best == null) {
            throw CaptureException.row(1, "no row of numbers was found; rows like \"0.001,2.5\" were expected");
        }
        return singleDecimal(best.layout);
    }

    private Try attempt(char delimiter, char decimal) {
        List<List<Cell>> rows = new ArrayList<>();
        Map<Integer, Integer> widths = new HashMap<>();
        for (String line : lines) {
            List<Cell> row = new ArrayList<>();
            boolean number = false;
            if (!line.isBlank()) {
                for (String field : DelimitedRecords.fields(line, delimiter)) {
                    Cell cell = Cell.of(field, decimal);
                    number |= cell.kind() == Cell.Kind.NUMBER;
                    row.add(cell);
                }
            }
            rows.add(row);
            if (number) {
                widths.merge(row.size(), 1, Integer::sum);
            }
        }
        if (widths.isEmpty()) {
            return null;
        }
        int columns = widths.entrySet().stream().max(Map.Entry.<Integer, Integer>comparingByValue()
                .thenComparing(Map.Entry.comparingByKey())).get().getKey();
        boolean[] data = data(rows, columns);
        int first = options.firstRow() > 0 ? options.firstRow() - 1 : first(rows, columns, data);
        if (first < 0) {
            return null;
        }
        Layout layout = new Layout(delimiter, decimal, columns, data, first);
        double score = rows.stream().filter(r -> good(r, columns, data)).mapToDouble(LayoutFinder::worth).sum();
        // A comma in a column by itself more often parts two columns than it is a decimal sign.
        double doubt = columns == 1 && decimal == ',' && options.decimal() == null ? DOUBT : 1;
        return new Try(layout, score * doubt * (1 + 0.1 * Math.min(8, layout.dataColumns())));
    }

    /** Words beside the numbers make a row a little less like one of data. */
    private static double worth(List<Cell> row) {
        return row.stream().anyMatch(c -> c.kind() == Cell.Kind.TEXT) ? 1 - DOUBT : 1;
    }

    /** The columns that hold numbers, or nothing, in most of the rows. */
    private static boolean[] data(List<List<Cell>> rows, int columns) {
        int[] numbers = new int[columns];
        int[] words = new int[columns];
        for (List<Cell> row : rows) {
            for (int c = 0; row.size() == columns && c < columns; c++) {
                numbers[c] += row.get(c).kind() == Cell.Kind.NUMBER ? 1 : 0;
                words[c] += row.get(c).kind() == Cell.Kind.TEXT ? 1 : 0;
            }
        }
        int most = 0;
        for (int n : numbers) {
            most = Math.max(most, n);
        }
        boolean[] data = new boolean[columns];
        for (int c = 0; c < columns; c++) {
            // A column with one number and words for the rest is a legend beside the data.
            data[c] = numbers[c] > 0 && numbers[c] >= (MOSTLY / (1 - MOSTLY)) * Math.max(0, words[c] - 4)
                    && numbers[c] >= words[c] && (words[c] == 0 || numbers[c] >= most / 2) && numbers[c] * 20 >= most
                    && (numbers[c] > 1 || most <= RUN);
        }
        return data;
    }

    static boolean good(List<Cell> row, int columns, boolean[] data) {
        if (row.size() != columns) {
            return false;
        }
        boolean any = false;
        for (int c = 0; c < columns; c++) {
            if (data[c]) {
                any |= row.get(c).kind() == Cell.Kind.NUMBER;
                if (row.get(c).kind() == Cell.Kind.TEXT) {
                    return false;
                }
            }
        }
        return any;
    }

    /** Where the first run of rows of data begins that is a run at all. */
    private static int first(List<List<Cell>> rows, int columns, boolean[] data) {
        int longest = 0;
        int run = 0;
        for (List<Cell> row : rows) {
            run = good(row, columns, data) ? run + 1 : row.isEmpty() ? run : 0;
            longest = Math.max(longest, run);
        }
        int need = Math.min(RUN, longest);
        int start = -1;
        run = 0;
        for (int i = 0; i < rows.size() && longest > 0; i++) {
            if (good(rows.get(i), columns, data)) {
                start = run == 0 ? i : start;
                run++;
                if (run == need) {
                    return start;
                }
            } else if (!rows.get(i).isEmpty()) {
                run = 0;
            }
        }
        return -1;
    }

    /**
     * Two columns with a comma between may be one with a decimal comma: it is where the digits behind the comma always
     * are as many and begin with zeros, which nobody writes in front of a number.
     */
    private Layout singleDecimal(Layout found) {
        if (found.delimiter() != ',' || found.columns() != 2 || options.delimiter() != null || options.decimal() != null) {
            return found;
        }
        int digits = -1;
        boolean zeros = false;
        for (String line : lines.subList(found.firstRow(), lines.size())) {
            if (line.isBlank()) {
                continue;
            }
            List<String> f = DelimitedRecords.fields(line.strip(), ',');
            if (f.size() != 2 || !f.get(0).matches("[+-]?\\d+") || !f.get(1).matches("\\d{2,}")
                    || digits >= 0 && f.get(1).length() != digits) {
                return found;
            }
            digits = f.get(1).length();
            zeros |= f.get(1).startsWith("0");
        }
        return zeros ? new Layout((char) 0, ',', 1, new boolean[] {true}, found.firstRow()) : found;
    }
}
