// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.format;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the lines above the data say of it.
 *
 * @param interval distance of samples, in seconds; NaN where nothing is said
 * @param said     the words that said so, or null
 * @param start    time of the first sample, in seconds; 0 where nothing is said
 * @param vertical the unit of the values, if it is said
 * @param horizontal the unit of the time, if it is said
 */
record Preamble(double interval, String said, double start, Optional<UnitWord> vertical, Optional<UnitWord> horizontal) {

    private static final Pattern LINE = line(",");
    private static final Pattern LINE_WITH_DECIMAL_COMMA = line("");
    private static final Pattern INTERVAL = Pattern.compile(
            "(?:(?:sampl(?:e|ing)|time|horizontal|horz|[xth])[ _-]*){1,2}"
                    + "(?:interval|period|step|incr(?:ement)?|inc|resolution|spacing|delta)"
                    + "|interval|increment|dt|[\u03b4\u2206] ?t|delta[ _-]?t|ts|(?:time|seconds?|s) ?(?:per|/) ?(?:sample|point)"
                    + "|abtastintervall");
    private static final Pattern RATE = Pattern.compile(
            "sampl(?:e|ing)[ _-]*(?:rate|freq(?:uency)?|clock|speed)|rate|fs|abtastrate"
                    + "|samples?[ /_-]*(?:per[ _-]*)?s(?:ec(?:ond)?)?");
    private static final Pattern START = Pattern.compile(
            "start(?:[ _-]*time)?|(?:x|horizontal|time)[ _-]*(?:zero|origin|start)|first[ _-]*sample|t0");
    private static final Pattern IN_WORDS = Pattern.compile(
            "(?:^|.*[^\\d.,])(\\d+(?:[.,]\\d+)? ?[kMG]?(?:Sa?|[Ss]amples)/s(?:ec(?:ond)?)?)\\b.*");
    private static final Pattern VERTICAL = Pattern.compile("(?:vertical|y)[ _-]*units?");
    private static final Pattern HORIZONTAL = Pattern.compile("(?:horizontal|x|time)[ _-]*units?");

    /** A key, a value, and the next cell where that may be a unit. */
    private static Pattern line(String comma) {
        String cell = "[^\";\t" + comma + "]";
        return Pattern.compile("^[#%/;\\s\"]*([\\p{L}\u2206#][^:=;\t" + comma + "]*?)\"?\\s*[:=;\t" + comma + "]+\\s*\"?(" + cell
                + "+)\"?(?:[;\t" + comma + "]\\s*\"?([^\";\t\\d" + comma + "]" + cell + "*)\"?)?.*$");
    }

    /**
     * Reads the lines; of two that say the same the first counts.
     *
     * @param delimiter between columns; 0 where there is one
     */
    static Preamble of(List<String> lines, char delimiter, char decimal) {
        Said said = new Said(decimal);
        for (String line : lines) {
            Matcher m = (decimal == ',' ? LINE_WITH_DECIMAL_COMMA : LINE).matcher(line);
            if (m.matches()) {
                said.take(m.group(1), m.group(2), m.group(3));
            }
        }
        for (int i = 0; i + 1 < lines.size() && delimiter != 0 && delimiter != ' '; i++) {
            List<String> keys = DelimitedRecords.fields(lines.get(i), delimiter);
            List<String> below = DelimitedRecords.fields(lines.get(i + 1), delimiter);
            for (int c = 1; c < keys.size() && c < below.size(); c++) {
                said.take(keys.get(c).replace("\"", ""), below.get(c).replace("\"", ""), null);
            }
        }
        for (String line : lines) {
            Matcher m = IN_WORDS.matcher(line);
            if (m.matches()) {
                said.take("rate", m.group(1), null);
            }
        }
        return new Preamble(said.interval, said.words, said.start, said.vertical, said.horizontal);
    }

    /** What was said so far. */
    private static final class Said {

        private final char decimal;
        private double interval = Double.NaN;
        private String words;
        private double start;
        private Optional<UnitWord> vertical = Optional.empty();
        private Optional<UnitWord> horizontal = Optional.empty();

        Said(char decimal) {
            this.decimal = decimal;
        }

        /** @param next the cell behind the value, or null */
        void take(String name, String text, String next) {
            UnitWord.Head head = UnitWord.Head.of(name);
            String key = head.name().toLowerCase(Locale.ROOT).strip();
            boolean rate = RATE.matcher(key).matches();
            if (words == null && (rate || INTERVAL.matcher(key).matches())) {
                double value = value(text, next, head, decimal);
                if (value > 0) {
                    interval = rate ? 1 / value : value;
                    words = name.strip();
                }
            } else if (start == 0 && START.matcher(key).matches() && text.indexOf(':') < 0) {
                double value = value(text, next, head, decimal);
                start = Double.isNaN(value) ? 0 : value;
            } else if (VERTICAL.matcher(key).matches() && vertical.isEmpty()) {
                vertical = UnitWord.of(text);
            } else if (HORIZONTAL.matcher(key).matches() && horizontal.isEmpty()) {
                horizontal = UnitWord.of(text);
            }
        }
    }

    /** The number, with the unit behind it, in the next cell or in the key. */
    private static double value(String text, String next, UnitWord.Head head, char decimal) {
        Cell cell = Cell.of(text, text.indexOf('.') >= 0 ? '.' : decimal);
        boolean bare = text.strip().matches("[-+.,\\deE]+");
        Optional<UnitWord> unit = head.unit().isPresent() ? head.unit()
                : next == null ? Optional.empty() : UnitWord.of(next);
        return cell.value() * (bare ? unit.map(UnitWord::factor).orElse(1.0) : 1);
    }
}
