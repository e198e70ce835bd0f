// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo.trace;

import java.util.Locale;
import java.util.Map;

/**
 * The colour of a trace, as a person names it.
 *
 * @param rgb {@code 0xRRGGBB}
 */
public record TraceColour(int rgb) {

    private static final Map<String, Integer> WORDS = Map.ofEntries(Map.entry("yellow", 0xffe000),
            Map.entry("green", 0x20e040), Map.entry("cyan", 0x20e0f0), Map.entry("blue", 0x3050ff),
            Map.entry("magenta", 0xf030e0), Map.entry("red", 0xf02020), Map.entry("orange", 0xff8000),
            Map.entry("amber", 0xffa000), Map.entry("white", 0xffffff), Map.entry("black", 0x000000));

    /**
     * Reads a word or {@code #RRGGBB}.
     *
     * @throws IllegalArgumentException with one sentence for a person
     */
    public static TraceColour parse(String text) {
        String plain = text.strip().toLowerCase(Locale.ROOT);
        if (plain.matches("#[0-9a-f]{6}")) {
            return new TraceColour(Integer.parseInt(plain.substring(1), 16));
        }
        Integer known = WORDS.get(plain);
        if (known == null) {
            throw new IllegalArgumentException("\"" + text + "\" is no colour of a trace; #RRGGBB is expected, or one of "
                    + String.join(", ", WORDS.keySet().stream().sorted().toList()));
        }
        return new TraceColour(known);
    }

    /** As {@code #RRGGBB}. */
    public String text() {
        return String.format(Locale.ROOT, "#%06x", rgb);
    }
}
