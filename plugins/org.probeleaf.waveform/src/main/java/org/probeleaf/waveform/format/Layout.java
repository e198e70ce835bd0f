// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.format;

/**
 * How a text is laid out.
 *
 * @param delimiter between columns; a space for any run of spaces, 0 where there is one column
 * @param decimal   the decimal sign
 * @param columns   how many columns a row of data has
 * @param data      for each of them whether it holds numbers
 * @param firstRow  the first row of data, counted from 0
 */
record Layout(char delimiter, char decimal, int columns, boolean[] data, int firstRow) {

    /** The delimiter for a person. */
    String delimiterWord() {
        return switch (delimiter) {
            case 0 -> "one column";
            case ' ' -> "columns separated by spaces";
            case '\t' -> "columns separated by tabs";
            case ';' -> "columns separated by semicolons";
            case ',' -> "columns separated by commas";
            default -> "columns separated by " + delimiter;
        };
    }

    /** How many columns hold numbers. */
    int dataColumns() {
        int n = 0;
        for (boolean d : data) {
            n += d ? 1 : 0;
        }
        return n;
    }
}
