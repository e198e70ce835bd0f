// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.place;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How a person names a place: {@code IC4.21} a pin, {@code IC4} a part, {@code net:/RD} a net by name or id,
 * {@code 1@120.5,300} a spot on a page. {@link #parse} reads these and {@link #text} writes them.
 */
public sealed interface Place {

    /** The written form, which {@link #parse} reads back. */
    String text();

    /**
     * A pin of a part.
     *
     * @param ref reference designator
     * @param pin its number or name as printed
     */
    record OfPin(String ref, String pin) implements Place {
        @Override
        public String text() {
            return ref + "." + pin;
        }
    }

    /**
     * A part.
     *
     * @param ref reference designator
     */
    record OfPart(String ref) implements Place {
        @Override
        public String text() {
            return ref;
        }
    }

    /**
     * A net.
     *
     * @param net its name as printed, or its id
     */
    record OfNet(String net) implements Place {
        @Override
        public String text() {
            return "net:" + net;
        }
    }

    /**
     * A spot on a page.
     *
     * @param page 1-based page
     * @param x    points from the left edge of the page as displayed
     * @param y    points from the top edge, downwards
     */
    record OnPage(int page, double x, double y) implements Place {
        @Override
        public String text() {
            return page + "@" + number(x) + "," + number(y);
        }

        private static String number(double v) {
            String s = String.format(Locale.ROOT, "%.2f", v);
            return s.contains(".") ? s.replaceAll("0+$", "").replaceAll("\\.$", "") : s;
        }
    }

    /**
     * Reads a place.
     *
     * @param text as typed; spaces round it are ignored
     * @return the place
     * @throws IllegalArgumentException with one sentence for a person where the text names no place
     */
    static Place parse(String text) {
        String t = text.strip();
        Matcher spot = Pattern.compile("(\\d+)@(-?\\d+(?:\\.\\d+)?),(-?\\d+(?:\\.\\d+)?)").matcher(t);
        if (spot.matches()) {
            return new OnPage(Integer.parseInt(spot.group(1)), Double.parseDouble(spot.group(2)),
                    Double.parseDouble(spot.group(3)));
        }
        if (t.regionMatches(true, 0, "net:", 0, 4) && t.length() > 4) {
            return new OfNet(t.substring(4).strip());
        }
        Matcher part = Pattern.compile("([\\p{L}\\p{N}_][\\p{L}\\p{N}_-]*)(?:\\.(\\S+))?").matcher(t);
        if (part.matches()) {
            return part.group(2) == null ? new OfPart(part.group(1)) : new OfPin(part.group(1), part.group(2));
        }
        throw new IllegalArgumentException("\"" + text
                + "\" names no place: write a pin as IC4.21, a part as IC4, a net as net:/RD, a spot as 1@120.5,300");
    }
}
