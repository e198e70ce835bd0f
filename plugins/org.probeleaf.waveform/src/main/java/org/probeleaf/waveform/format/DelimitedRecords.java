// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.format;

import java.util.ArrayList;
import java.util.List;

/** Records and fields of a text as RFC 4180 has them: quotes hold delimiters and line ends, and are doubled inside quotes. */
final class DelimitedRecords {

    private DelimitedRecords() {
    }

    /**
     * All records of a text. A line end may be CRLF, LF or CR; the last one is optional.
     *
     * @throws CaptureException where quotes do not end
     */
    static List<List<String>> parse(String text, char delimiter) throws CaptureException {
        List<List<String>> records = new ArrayList<>();
        List<String> record = new ArrayList<>();
        StringBuilder field = new StringBuilder();
        boolean quoted = false;
        boolean open = false;
        long row = 1;
        long opened = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean end = c == '\n' || c == '\r' && !(i + 1 < text.length() && text.charAt(i + 1) == '\n');
            row += end ? 1 : 0;
            if (quoted) {
                if (c != '"') {
                    field.append(c);
                } else if (i + 1 < text.length() && text.charAt(i + 1) == '"') {
                    field.append(text.charAt(++i));
                } else {
                    quoted = false;
                }
            } else if (c == '"' && field.length() == 0) {
                quoted = true;
                opened = row;
                open = true;
            } else if (c == delimiter) {
                record.add(field.toString());
                field.setLength(0);
                open = true;
            } else if (end) {
                record.add(field.toString());
                records.add(record);
                record = new ArrayList<>();
                field.setLength(0);
                open = false;
            } else if (c != '\r') {
                field.append(c);
                open = true;
            }
        }
        if (quoted) {
            throw CaptureException.row(opened, "a quotation mark is opened and never closed; a closing one was expected");
        }
        if (open) {
            record.add(field.toString());
            records.add(record);
        }
        return records;
    }

    /** The fields of one line; a space as delimiter stands for any run of spaces and tabs, 0 for none. */
    static List<String> fields(String line, char delimiter) {
        if (delimiter == 0) {
            return List.of(line);
        }
        if (delimiter == ' ') {
            return List.of(line.strip().split("[ \t]+"));
        }
        List<String> fields = new ArrayList<>();
        int from = 0;
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            quoted ^= c == '"';
            if (c == delimiter && !quoted) {
                fields.add(line.substring(from, i));
                from = i + 1;
            }
        }
        fields.add(line.substring(from));
        return fields;
    }
}
