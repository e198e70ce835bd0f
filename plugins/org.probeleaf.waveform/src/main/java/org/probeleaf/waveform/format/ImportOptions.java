// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.format;

import java.util.List;

/**
 * What a person says of a file, in place of what a reader would assume. Null (NaN, 0) leaves it to the reader.
 *
 * @param delimiter  between the columns of a text: one character, a space for any run of spaces
 * @param decimal    the decimal sign, {@code .} or {@code ,}
 * @param firstRow   the first row of data, counted from 1; 0 leaves it to the reader
 * @param timeColumn which column is the time, counted from 1; 0 for none, -1 leaves it to the reader
 * @param interval   distance of samples, in seconds; NaN leaves it to the reader. It counts before a time column
 * @param scale      what one unit of the file stands for, in volts, as for a full scale of 1 of a sound file; NaN for as it is
 * @param names      of the channels, in order; empty leaves them to the reader
 */
public record ImportOptions(Character delimiter, Character decimal, int firstRow, int timeColumn, double interval,
        double scale, List<String> names) {

    public ImportOptions {
        names = List.copyOf(names);
    }

    /** Everything is left to the reader. */
    public static ImportOptions none() {
        return new ImportOptions(null, null, 0, -1, Double.NaN, Double.NaN, List.of());
    }

    public ImportOptions withDelimiter(char to) {
        return new ImportOptions(to, decimal, firstRow, timeColumn, interval, scale, names);
    }

    public ImportOptions withDecimal(char to) {
        return new ImportOptions(delimiter, to, firstRow, timeColumn, interval, scale, names);
    }

    public ImportOptions withFirstRow(int to) {
        return new ImportOptions(delimiter, decimal, to, timeColumn, interval, scale, names);
    }

    public ImportOptions withTimeColumn(int to) {
        return new ImportOptions(delimiter, decimal, firstRow, to, interval, scale, names);
    }

    public ImportOptions withInterval(double to) {
        return new ImportOptions(delimiter, decimal, firstRow, timeColumn, to, scale, names);
    }

    public ImportOptions withScale(double to) {
        return new ImportOptions(delimiter, decimal, firstRow, timeColumn, interval, to, names);
    }

    public ImportOptions withNames(List<String> to) {
        return new ImportOptions(delimiter, decimal, firstRow, timeColumn, interval, scale, to);
    }
}
