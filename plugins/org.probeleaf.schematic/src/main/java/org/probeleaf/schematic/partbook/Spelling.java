// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.partbook;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * A form in which a type of part is written: {@code *} at the start stands for a maker's letters, {@code *} at the
 * end for letters of grade and package and what follows them, {@code ~} for the letters of a logic family,
 * {@code %} for digits.
 */
final class Spelling {

    private static final String MAKER = "(?:\\p{L}{1,4}-?)?";
    private static final String FAMILY =
            "(?:L|H|S|LS|AS|ALS|F|C|HC|HCT|HCU|AC|ACT|ACQ|ACTQ|AHC|AHCT|VHC|VHCT|LV|LVC|LVT|ALVC|BCT|ABT|FCT)?";
    private static final String GRADE = "(?:-.*|\\p{L}[\\p{L}\\p{N}]*(?:-.*)?)?";

    private final Pattern pattern;

    private Spelling(Pattern pattern) {
        this.pattern = pattern;
    }

    static Spelling of(String form) {
        StringBuilder p = new StringBuilder();
        for (int i = 0; i < form.length(); i++) {
            char c = form.charAt(i);
            switch (c) {
                case '*' -> p.append(i == 0 ? MAKER : GRADE);
                case '~' -> p.append(FAMILY);
                case '%' -> p.append("\\d*");
                default -> p.append(Pattern.quote(String.valueOf(c)));
            }
        }
        return new Spelling(Pattern.compile(p.toString()));
    }

    /** Whether a value, made {@link #even}, is written in this form. */
    boolean fits(String even) {
        return pattern.matcher(even).matches();
    }

    /** A value as the forms expect it: upper case, without spaces or with dashes for them. */
    static String even(String value, boolean dashes) {
        return value.strip().toUpperCase(Locale.ROOT).replaceAll("[\\s/_]+", dashes ? "-" : "");
    }
}
