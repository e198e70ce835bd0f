// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.quantity;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How a typed value stands to the true one: meters end somewhere, and eyes read needles and screens roughly. */
public enum Bound {
    /** As read. */
    AT("", ""),
    /** Roughly read: {@code ~2.5V}. */
    ABOUT("about ", "(?:~|\u2248|(?:about|approx\\.?|ca\\.?)(?=[\\s\\d.,+-]))"),
    /** Beyond the range of the instrument: {@code >20M}. */
    ABOVE("> ", "(?:>=?|\u2265|(?:over|above|more than)(?=\\s))"),
    /** Below what the instrument resolves: {@code <1}. */
    BELOW("< ", "(?:<=?|\u2264|(?:under|below|less than)(?=\\s))");

    private final String sign;
    private final Pattern lead;

    Bound(String sign, String lead) {
        this.sign = sign;
        this.lead = lead.isEmpty() ? null : Pattern.compile("^\\s*" + lead + "\\s*(?=[\\d.,+\u2212\u2013-])",
                Pattern.CASE_INSENSITIVE);
    }

    /** What a typed line begins with; {@link #AT} where it begins with the value. */
    public static Bound of(String typed) {
        for (Bound bound : values()) {
            if (bound.lead != null && bound.lead.matcher(typed).lookingAt()) {
                return bound;
            }
        }
        return AT;
    }

    /** The line without it. */
    String strip(String typed) {
        if (lead == null) {
            return typed;
        }
        Matcher m = lead.matcher(typed);
        return m.lookingAt() ? typed.substring(m.end()) : typed;
    }

    /** To stand before the value: {@code "> "}; empty where there is nothing to say. */
    public String sign() {
        return sign;
    }
}
