// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.format;

import java.util.ArrayList;
import java.util.List;

/**
 * The first rows of a text as they are understood, for a person to look at.
 *
 * @param delimiter between columns; a space for any run of spaces, 0 where there is one column
 * @param decimal   the decimal sign
 * @param firstRow  the first row of data, counted from 1
 * @param rows      the first rows of the file, a good way into the data
 * @param columns   what each column is
 */
public record TextPreview(char delimiter, char decimal, int firstRow, List<Row> rows, List<Kind> columns) {

    private static final int BELOW = 40;

    /** What a row is. */
    public enum RowKind {
        ABOVE, NAMES, UNITS, DATA, REMARK
    }

    /** What a column is. */
    public enum ColumnRole {
        TIME, COUNT, CHANNEL, UNIT, NONE
    }

    /**
     * A row.
     *
     * @param number counted from 1
     */
    public record Row(int number, RowKind kind, List<String> cells) {

        public Row {
            cells = List.copyOf(cells);
        }
    }

    /**
     * A column.
     *
     * @param name of the channel or the time; may be empty
     * @param unit without prefix; may be empty
     */
    public record Kind(ColumnRole role, String name, String unit) {
    }

    public TextPreview {
        rows = List.copyOf(rows);
        columns = List.copyOf(columns);
    }

    /** Of the first lines of a text. */
    static TextPreview of(List<String> lines, ImportOptions options) throws CaptureException {
        Layout layout = new LayoutFinder(lines, options).find();
        Preamble preamble = TextReader.preamble(lines, layout);
        ColumnFinder finder = new ColumnFinder(lines, layout, options, preamble, new ArrayList<>());
        List<Column> columns = finder.find();
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < lines.size() && i < layout.firstRow() + BELOW; i++) {
            RowKind kind = i == finder.namesAt() ? RowKind.NAMES : i == finder.unitsAt() ? RowKind.UNITS
                    : i < layout.firstRow() ? RowKind.ABOVE : lines.get(i).isBlank() || lines.get(i).matches("\\s*[#%].*")
                            ? RowKind.REMARK : RowKind.DATA;
            List<String> cells = DelimitedRecords.fields(lines.get(i), layout.delimiter());
            rows.add(new Row(i + 1, kind, cells.stream().map(TextPreview::shown).toList()));
        }
        List<Kind> kinds = new ArrayList<>();
        for (int c = 0; c < columns.size(); c++) {
            Column column = columns.get(c);
            boolean unit = c > 0 && columns.get(c - 1).units() == c;
            ColumnRole role = switch (column.role()) {
                case TIME -> ColumnRole.TIME;
                case INDEX -> ColumnRole.COUNT;
                case VALUE -> ColumnRole.CHANNEL;
                case SKIP -> unit ? ColumnRole.UNIT : ColumnRole.NONE;
            };
            kinds.add(new Kind(role, column.name(), Double.isNaN(options.scale()) || role != ColumnRole.CHANNEL ? column.unit()
                    : "V"));
        }
        return new TextPreview(layout.delimiter(), layout.decimal(), layout.firstRow() + 1, rows, kinds);
    }

    private static String shown(String cell) {
        String text = cell.strip();
        return text.length() > 80 ? text.substring(0, 80) + "\u2026" : text;
    }
}
