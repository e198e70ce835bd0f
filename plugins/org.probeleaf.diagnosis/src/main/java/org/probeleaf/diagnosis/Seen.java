// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis;

/** What was seen at a place. */
public enum Seen {
    /** What belongs there, whatever that is. */
    GOOD("good"),
    /** Something else than what belongs there. */
    BAD("bad"),
    /** A logic low. */
    LOW("0"),
    /** A logic high. */
    HIGH("1");

    private final String word;

    Seen(String word) {
        this.word = word;
    }

    /** As typed: {@code good}, {@code bad}, {@code 0}, {@code 1}. */
    public String word() {
        return word;
    }

    /**
     * Reads the word, letter case ignored; {@code L}, {@code H}, {@code low} and {@code high} will do too.
     *
     * @throws IllegalArgumentException with one sentence for a person where it is none
     */
    public static Seen parse(String text) {
        return switch (text.strip().toLowerCase(java.util.Locale.ROOT)) {
            case "good" -> GOOD;
            case "bad" -> BAD;
            case "0", "l", "low" -> LOW;
            case "1", "h", "high" -> HIGH;
            default -> throw new IllegalArgumentException("\"" + text
                    + "\" is nothing that can be seen: write good, bad, 0 or 1");
        };
    }
}
