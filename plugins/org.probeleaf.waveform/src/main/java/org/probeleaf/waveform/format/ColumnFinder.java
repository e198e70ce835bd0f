// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Finds out what each column is: by the names and units above the data, by the options, by how its numbers run. */
final class ColumnFinder {

    private static final Pattern TIME = Pattern.compile(
            "t\\d*|time.*|times|zeit|temps|tiempo|tempo|heure|hora|uhrzeit|zeitstempel|date.*time|seconds?|secs?|x|x[ _-]?(?:axis|values?)|elapsed.*|datetime|clock ?time");
    private static final Pattern INDEX = Pattern.compile(
            "#|n|no\\.?|nr\\.?|index|idx|i|samples?(?: ?(?:no\\.?|number|nr|index|#|n))?|points?|row|record|count");

    private final List<String> lines;
    private final Layout layout;
    private final ImportOptions options;
    private final Preamble preamble;
    private final List<String> notes;
    private int namesAt = -1;
    private int unitsAt = -1;

    ColumnFinder(List<String> lines, Layout layout, ImportOptions options, Preamble preamble, List<String> notes) {
        this.lines = lines;
        this.layout = layout;
        this.options = options;
        this.preamble = preamble;
        this.notes = notes;
    }

    List<Column> find() throws CaptureException {
        if (options.timeColumn() > layout.columns()) {
            throw CaptureException.row(layout.firstRow() + 1, "there are " + layout.columns() + " columns, where column "
                    + options.timeColumn() + " was to be the time");
        }
        Row units = null;
        Row names = null;
        for (int i = layout.firstRow() - 1; i >= 0 && names == null; i--) {
            Optional<Row> row = head(i);
            if (row.isEmpty()) {
                // Any words have spaces between: names stand right above the data, or there are none.
                if (layout.delimiter() == ' ' && !bare(i).isBlank()) {
                    break;
                }
                continue;
            }
            boolean unitRow = unitRow(row.get());
            if (units == null && unitRow) {
                units = row.get();
            } else if (!unitRow) {
                names = row.get();
            }
        }
        namesAt = names == null ? -1 : names.at;
        unitsAt = units == null ? -1 : units.at;
        return columns(names, units);
    }

    /** The row of names, counted from 0; -1 where there is none. */
    int namesAt() {
        return namesAt;
    }

    /** The row of units, counted from 0; -1 where there is none. */
    int unitsAt() {
        return unitsAt;
    }

    /**
     * A row above the data.
     *
     * @param at    its place, counted from 0
     * @param cells its cells
     */
    private record Row(int at, List<String> cells) {

        String cell(int column) {
            return column < cells.size() ? cells.get(column) : "";
        }
    }

    /** A row without the sign of a remark. */
    private String bare(int at) {
        return lines.get(at).replaceFirst("^\\s*(?:#+|%+|//+|!+|\\*+|;(?=\\s))\\s*(?=\\S)", "");
    }

    /** A row above the data that has a cell for each column of numbers, without the sign of a comment. */
    private Optional<Row> head(int at) {
        String line = bare(at);
        if (line.isBlank()) {
            return Optional.empty();
        }
        List<String> cells = new ArrayList<>();
        for (String c : DelimitedRecords.fields(line, layout.delimiter())) {
            cells.add(c.strip().replaceAll("^\"(.*)\"$", "$1").strip());
        }
        if (layout.delimiter() == ' ' && cells.size() != layout.columns()) {
            cells = joinedUnits(cells);
        }
        int last = -1;
        boolean words = false;
        for (int c = 0; c < layout.columns(); c++) {
            if (layout.data()[c]) {
                last = c;
                words |= c < cells.size() && Cell.of(cells.get(c), layout.decimal()).kind() == Cell.Kind.TEXT;
            }
        }
        boolean keyed = layout.columns() > 1 && cells.get(0).matches(".*[:=]$");
        boolean fits = cells.size() > last && cells.size() <= layout.columns() + (layout.delimiter() == ' ' ? 0 : 1);
        return fits && words && !keyed ? Optional.of(new Row(at, cells)) : Optional.empty();
    }

    /** {@code Time (ms)} between spaces is two words but one cell. */
    private static List<String> joinedUnits(List<String> cells) {
        List<String> joined = new ArrayList<>();
        for (String cell : cells) {
            if (cell.matches("[(\\[].*[)\\]]") && !joined.isEmpty()) {
                joined.set(joined.size() - 1, joined.get(joined.size() - 1) + " " + cell);
            } else {
                joined.add(cell);
            }
        }
        return joined;
    }

    private boolean unitRow(Row row) {
        int units = 0;
        int other = 0;
        for (int c = 0; c < layout.columns(); c++) {
            String cell = row.cell(c);
            if (layout.data()[c] && !cell.isBlank()) {
                boolean unit = UnitWord.of(cell).isPresent() || cell.matches("[-#]|none|\\(\\)|\\[\\]");
                units += unit ? 1 : 0;
                other += unit ? 0 : 1;
            }
        }
        return units > 0 && (other == 0 || other == 1 && units > 1 && UnitWord.of(row.cell(0)).isEmpty());
    }

    private List<Column> columns(Row names, Row units) {
        int n = layout.columns();
        UnitWord.Head[] heads = new UnitWord.Head[n];
        for (int c = 0; c < n; c++) {
            UnitWord.Head head = UnitWord.Head.of(names == null ? "" : names.cell(c));
            Optional<UnitWord> below = units == null ? Optional.empty() : UnitWord.of(units.cell(c));
            heads[c] = below.isPresent() ? new UnitWord.Head(head.name(), below) : head;
        }
        if (names != null) {
            notes.add("Names are in row " + (names.at + 1) + (units == null ? "" : ", units in row " + (units.at + 1)) + ".");
        } else {
            notes.add(units == null ? "There is no row of names; channels are named by their column."
                    : "Units are in row " + (units.at + 1) + "; channels are named by their column.");
        }
        boolean[] times = times(heads, names != null);
        boolean[] indices = new boolean[n];
        for (int c = 0; c < n; c++) {
            boolean counted = times[c] && units != null && options.timeColumn() < 0 && !Double.isNaN(preamble.interval())
                    && !units.cell(c).isBlank() && heads[c].unit().isEmpty();
            times[c] &= !counted;
            indices[c] = counted || layout.data()[c] && !times[c] && options.timeColumn() != c + 1 && layout.dataColumns() > 1
                    && INDEX.matcher(heads[c].name().toLowerCase(Locale.ROOT)).matches();
        }
        byRun(times, indices, heads);
        return assigned(heads, times, indices);
    }

    private boolean[] times(UnitWord.Head[] heads, boolean named) {
        boolean[] times = new boolean[heads.length];
        if (options.timeColumn() >= 0) {
            if (options.timeColumn() > 0 && options.timeColumn() <= heads.length) {
                times[options.timeColumn() - 1] = true;
            }
            return times;
        }
        for (int c = 0; c < heads.length && layout.dataColumns() > 1; c++) {
            boolean seconds = heads[c].unit().map(u -> u.unit().equals("s")).orElse(false);
            boolean other = heads[c].unit().isPresent() && !seconds;
            times[c] = layout.data()[c] && !other
                    && (seconds || named && TIME.matcher(heads[c].name().toLowerCase(Locale.ROOT)).matches());
        }
        return times;
    }

    /** Where no name tells, a first column that rises steadily is the time, or counts the samples. */
    private void byRun(boolean[] times, boolean[] indices, UnitWord.Head[] heads) {
        int first = -1;
        for (int c = 0; c < times.length; c++) {
            if (times[c] || indices[c]) {
                return;
            }
            first = first < 0 && layout.data()[c] ? c : first;
        }
        boolean other = heads[first].unit().isPresent();
        if (options.timeColumn() >= 0 || layout.dataColumns() < 2 || other || !rises(first)) {
            return;
        }
        boolean spaced = !Double.isNaN(options.interval()) || !Double.isNaN(preamble.interval());
        indices[first] = spaced;
        times[first] = !spaced;
        notes.add(spaced ? "Column " + (first + 1) + " counts the samples."
                : "Column " + (first + 1) + " rises all the way and is taken for the time.");
    }

    private boolean rises(int column) {
        double before = Double.NEGATIVE_INFINITY;
        int seen = 0;
        for (String line : lines.subList(layout.firstRow(), lines.size())) {
            List<String> fields = DelimitedRecords.fields(line, layout.delimiter());
            if (!line.isBlank() && column < fields.size()) {
                double v = Cell.of(fields.get(column), layout.decimal()).value();
                if (v <= before) {
                    return false;
                }
                before = Double.isNaN(v) ? before : v;
                seen++;
            }
        }
        return seen > 1;
    }

    private List<Column> assigned(UnitWord.Head[] heads, boolean[] times, boolean[] indices) {
        List<Column> columns = new ArrayList<>();
        int clock = firstOf(times);
        int channel = 0;
        boolean assumed = false;
        for (int c = 0; c < heads.length; c++) {
            if (!layout.data()[c]) {
                columns.add(Column.SKIP);
            } else if (times[c]) {
                clock = c;
                Optional<UnitWord> unit = heads[c].unit().or(preamble::horizontal);
                columns.add(new Column(Column.Role.TIME, heads[c].name(), "s", unit.map(UnitWord::factor).orElse(1.0), -1,
                        -1));
            } else if (indices[c]) {
                columns.add(new Column(Column.Role.INDEX, heads[c].name(), "", 1, -1, -1));
            } else {
                Optional<UnitWord> beside = unitsBeside(c);
                Optional<UnitWord> unit = beside.or(heads[c]::unit).or(preamble::vertical);
                assumed |= unit.isEmpty();
                if (beside.isPresent()) {
                    notes.add("Column " + (c + 2) + " holds the units of column " + (c + 1) + ".");
                }
                String plain = heads[c].name().isBlank() ? "CH" + (channel + 1) : heads[c].name();
                String name = channel < options.names().size() ? options.names().get(channel) : plain;
                columns.add(new Column(Column.Role.VALUE, name, unit.map(UnitWord::unit).orElse("V"),
                        beside.isPresent() ? 1.0 : unit.map(UnitWord::factor).orElse(1.0), clock,
                        beside.isPresent() ? c + 1 : -1));
                channel++;
            }
        }
        if (assumed) {
            notes.add("Nothing tells the unit of the values; volts are assumed.");
        }
        return columns;
    }

    /** The unit of a column whose rows each name it in the next column, as those of a meter that changes its range. */
    private Optional<UnitWord> unitsBeside(int column) {
        Optional<UnitWord> unit = Optional.empty();
        if (column + 1 >= layout.columns() || layout.data()[column + 1]) {
            return unit;
        }
        for (String line : lines.subList(layout.firstRow(), lines.size())) {
            List<String> fields = DelimitedRecords.fields(line, layout.delimiter());
            if (fields.size() == layout.columns() && Cell.of(fields.get(column), layout.decimal()).kind() == Cell.Kind.NUMBER) {
                Optional<UnitWord> here = UnitWord.of(fields.get(column + 1).replace("\"", ""));
                if (here.isEmpty() || unit.isPresent() && !here.get().unit().equals(unit.get().unit())) {
                    return Optional.empty();
                }
                unit = here;
            }
        }
        return unit;
    }

    private static int firstOf(boolean[] set) {
        for (int i = 0; i < set.length; i++) {
            if (set[i]) {
                return i;
            }
        }
        return -1;
    }
}
