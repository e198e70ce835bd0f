// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.score;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Brings designators and pin numbers of truth and reading to one spelling. */
final class Spelling {

    private static final Pattern BLANKS = Pattern.compile("\\s+");
    private static final Pattern UNIT = Pattern.compile("([A-Z]+\\d+)[\\-:/._ ]?([A-Z]|\\d{1,2})");

    private Spelling() {
    }

    static String ref(Object ref) {
        return BLANKS.matcher(String.valueOf(ref)).replaceAll("").toUpperCase(Locale.ROOT);
    }

    /** A pin's number or name, or null for none. */
    static String pin(Object pin) {
        return pin == null || pin.equals("") ? null : String.valueOf(pin).strip().toUpperCase(Locale.ROOT);
    }

    /** U3A, U3-A, U3:A, U3/1 and U3.1 stand for U3 where that is known and they are not. */
    static String part(String ref, Set<String> known) {
        if (known.contains(ref)) {
            return ref;
        }
        Matcher unit = UNIT.matcher(ref);
        return unit.matches() && known.contains(unit.group(1)) ? unit.group(1) : ref;
    }
}
