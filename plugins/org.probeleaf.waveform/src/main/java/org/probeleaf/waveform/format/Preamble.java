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
 * @param vertical the unit of the values, if it is said
 * @param horizontal the unit of the time, if it is said
 */
record Preamble(double interval, String said, Optional<UnitWord> vertical, Optional<UnitWord> horizontal) {

    private static final Pattern LINE = line(",");
    private static final Pattern LINE_WITH_DECIMAL_COMMA = line("");
    private static final Pattern INTERVAL = Pattern.compile(
            "(?:sampl(?:e|ing)|time|x|horizontal|h)[ _-]*(?:interval|period|step|incr(?:ement)?|inc|resolution|spacing|delta)"
                    + "|interval|increment|dt|delta[ _-]?t|ts|abtastintervall");
    private static final Pattern RATE = Pattern.compile("sampl(?:e|ing)[ _-]*(?:rate|freq(?:uency)?)|rate|fs|abtastrate"
            + "|samples?[ /_-]*(?:per[ _-]*)?s(?:ec(?:ond)?)?");
    private static final Pattern VERTICAL = Pattern.compile("(?:vertical|y)[ _-]*units?");
    private static final Pattern HORIZONTAL = Pattern.compile("(?:horizontal|x|time)[ _-]*units?");

    /** A key, a value, and the next cell where that may be a unit. */
    private static Pattern line(String comma) {
        String cell = "[^\";\t" + comma + "]";
        return Pattern.compile("^[#%/;\\s\"]*([\\p{L}#][^:=;\t" + comma + "]*?)\"?\\s*[:=;\t" + comma + "]+\\s*\"?(" + cell
                + "+)\"?(?:[;\t" + comma + "]\\s*\"?([^\";\t\\d" + comma + "]" + cell + "*)\"?)?.*$");
    }

    /** Reads the lines; of two that say the same the first counts. */
    static Preamble of(List<String> lines, char decimal) {
        double interval = Double.NaN;
        String said = null;
        Optional<UnitWord> vertical = Optional.empty();
        Optional<UnitWord> horizontal = Optional.empty();
        for (String line : lines) {
            Matcher m = (decimal == ',' ? LINE_WITH_DECIMAL_COMMA : LINE).matcher(line);
            if (!m.matches()) {
                continue;
            }
            UnitWord.Head head = UnitWord.Head.of(m.group(1));
            String key = head.name().toLowerCase(Locale.ROOT).strip();
            boolean rate = RATE.matcher(key).matches();
            if (said == null && (rate || INTERVAL.matcher(key).matches())) {
                double value = value(m.group(2), m.group(3), head, decimal);
                if (value > 0) {
                    interval = rate ? 1 / value : value;
                    said = m.group(1).strip();
                }
            } else if (VERTICAL.matcher(key).matches() && vertical.isEmpty()) {
                vertical = UnitWord.of(m.group(2));
            } else if (HORIZONTAL.matcher(key).matches() && horizontal.isEmpty()) {
                horizontal = UnitWord.of(m.group(2));
            }
        }
        return new Preamble(interval, said, vertical, horizontal);
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
