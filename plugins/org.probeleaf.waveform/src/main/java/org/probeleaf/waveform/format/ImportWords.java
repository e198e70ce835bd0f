// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Import options as one line of text, as a job keeps them: {@code delimiter=; decimal=, row=5 time=1 interval=1e-06
 * scale=2 name=CH1 name=CH2}. What is left to the reader does not stand in it. A tab and a space are written {@code tab} and
 * {@code space}; spaces in names are written {@code %20}.
 */
public final class ImportWords {

    private ImportWords() {
    }

    /** The line; empty where everything is left to the reader. */
    public static String of(ImportOptions options) {
        List<String> words = new ArrayList<>();
        if (options.delimiter() != null) {
            words.add("delimiter=" + (options.delimiter() == '\t' ? "tab" : options.delimiter() == ' ' ? "space"
                    : String.valueOf(options.delimiter())));
        }
        if (options.decimal() != null) {
            words.add("decimal=" + options.decimal());
        }
        if (options.firstRow() > 0) {
            words.add("row=" + options.firstRow());
        }
        if (options.timeColumn() >= 0) {
            words.add("time=" + options.timeColumn());
        }
        if (!Double.isNaN(options.interval())) {
            words.add("interval=" + options.interval());
        }
        if (!Double.isNaN(options.scale())) {
            words.add("scale=" + options.scale());
        }
        options.names().forEach(n -> words.add("name=" + n.replace("%", "%25").replace(" ", "%20")));
        return String.join(" ", words);
    }

    /**
     * Reads the line.
     *
     * @throws IllegalArgumentException with one sentence for a person where it is none
     */
    public static ImportOptions parse(String line) {
        ImportOptions options = ImportOptions.none();
        List<String> names = new ArrayList<>();
        for (String word : line.strip().split("\\s+")) {
            if (word.isEmpty()) {
                continue;
            }
            int is = word.indexOf('=');
            String value = is < 0 ? "" : word.substring(is + 1);
            try {
                switch (is < 0 ? word : word.substring(0, is)) {
                    case "delimiter" -> options = options.withDelimiter(sign(value));
                    case "decimal" -> options = options.withDecimal(sign(value));
                    case "row" -> options = options.withFirstRow(Integer.parseInt(value));
                    case "time" -> options = options.withTimeColumn(Integer.parseInt(value));
                    case "interval" -> options = options.withInterval(Double.parseDouble(value));
                    case "scale" -> options = options.withScale(Double.parseDouble(value));
                    case "name" -> names.add(value.replace("%20", " ").replace("%25", "%"));
                    default -> throw new IllegalArgumentException("unknown");
                }
            } catch (IllegalArgumentException e) {
                throw new IllegalArgumentException("\"" + word + "\" does not say how to read a capture; write delimiter=;"
                        + " decimal=, row=5 time=1 interval=1e-6 scale=2 name=CH1", e);
            }
        }
        return options.withNames(names);
    }

    private static char sign(String word) {
        String one = switch (word.toLowerCase(Locale.ROOT)) {
            case "tab" -> "\t";
            case "space" -> " ";
            default -> word;
        };
        if (one.length() != 1) {
            throw new IllegalArgumentException("one sign");
        }
        return one.charAt(0);
    }
}
