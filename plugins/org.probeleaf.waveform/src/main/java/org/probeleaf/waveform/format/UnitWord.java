// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.format;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A unit as a file writes it.
 *
 * @param unit   without prefix: {@code V}, {@code s}, {@code A}
 * @param factor what one of the file's units is in it: 0.001 for {@code mV}
 */
record UnitWord(String unit, double factor) {

    private static final Map<String, String> WORDS = Map.ofEntries(Map.entry("v", "V"), Map.entry("volt", "V"),
            Map.entry("volts", "V"), Map.entry("vdc", "V"), Map.entry("vac", "V"), Map.entry("v dc", "V"), Map.entry("v ac", "V"),
            Map.entry("a", "A"), Map.entry("amp", "A"), Map.entry("amps", "A"),
            Map.entry("ampere", "A"), Map.entry("s", "s"), Map.entry("sec", "s"), Map.entry("secs", "s"),
            Map.entry("second", "s"), Map.entry("seconds", "s"), Map.entry("hz", "Hz"), Map.entry("ohm", "\u03a9"),
            Map.entry("\u03a9", "\u03a9"), Map.entry("\u2126", "\u03a9"), Map.entry("w", "W"), Map.entry("db", "dB"),
            Map.entry("%", "%"), Map.entry("\u00b0c", "\u00b0C"), Map.entry("s/s", "S/s"), Map.entry("sa/s", "S/s"),
            Map.entry("samples/s", "S/s"), Map.entry("samples/sec", "S/s"), Map.entry("samples/second", "S/s"),
            Map.entry("sa/sec", "S/s"), Map.entry("adc", "A"), Map.entry("aac", "A"), Map.entry("\u00b0f", "\u00b0F"), Map.entry("sps", "S/s"), Map.entry("sekunde", "s"), Map.entry("sekunden", "s"),
            Map.entry("secondes", "s"), Map.entry("segundos", "s"));
    private static final Map<String, Double> PREFIXES = Map.ofEntries(Map.entry("f", 1e-15), Map.entry("p", 1e-12),
            Map.entry("n", 1e-9), Map.entry("u", 1e-6), Map.entry("\u00b5", 1e-6), Map.entry("\u03bc", 1e-6),
            Map.entry("m", 1e-3), Map.entry("k", 1e3), Map.entry("K", 1e3), Map.entry("M", 1e6), Map.entry("G", 1e9),
            Map.entry("milli", 1e-3), Map.entry("micro", 1e-6), Map.entry("nano", 1e-9), Map.entry("kilo", 1e3));
    private static final Pattern IN_NAME = Pattern.compile(
            "^(.*?)\\s*(?:[(\\[{]\\s*([^)\\]}]+?)\\s*[)\\]}]|(?:/|,| in )\\s*(\\S+)|_((?:[munk]?V|[munp]?s|m?A)))\\s*$");

    /** The unit that a word is, or none. */
    static Optional<UnitWord> of(String word) {
        String w = word.strip().replaceAll("^[(\\[{](.*)[)\\]}]$", "$1").strip();
        Optional<UnitWord> plain = plain(w, 1);
        if (plain.isPresent() || w.length() < 2) {
            return plain;
        }
        for (int n : new int[] {1, 4, 5}) {
            if (w.length() > n && PREFIXES.containsKey(w.substring(0, n))) {
                Optional<UnitWord> found = plain(w.substring(n), PREFIXES.get(w.substring(0, n)));
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<UnitWord> plain(String word, double factor) {
        return Optional.ofNullable(WORDS.get(word.toLowerCase(Locale.ROOT))).map(u -> new UnitWord(u, factor));
    }

    /** The factor of what may stand behind a number: a prefix, a unit, both, or nothing; NaN for anything else. */
    static double factor(String tail) {
        String t = tail.strip();
        if (t.isEmpty()) {
            return 1;
        }
        return of(t).map(UnitWord::factor).orElse(PREFIXES.getOrDefault(t, Double.NaN));
    }

    /** A column's head taken apart into its name and its unit, as in {@code CH1 (mV)}, {@code t/us}, {@code Time in s}. */
    record Head(String name, Optional<UnitWord> unit) {

        static Head of(String text) {
            String t = text.strip();
            Matcher m = IN_NAME.matcher(t);
            if (m.matches()) {
                Optional<UnitWord> unit = UnitWord.of(m.group(2) != null ? m.group(2)
                        : m.group(3) != null ? m.group(3) : m.group(4));
                if (unit.isPresent() && !m.group(1).isBlank()) {
                    return new Head(m.group(1).strip(), unit);
                }
            }
            return new Head(t, Optional.empty());
        }
    }
}
