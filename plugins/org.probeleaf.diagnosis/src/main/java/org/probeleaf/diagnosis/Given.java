// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.probeleaf.schematic.place.Place;

/**
 * A net that somebody holds at a level: an input of a test. What drives it otherwise does not count.
 *
 * @param at   the net; never null
 * @param high whether it is high
 */
public record Given(Place at, boolean high) {

    public Given {
        Objects.requireNonNull(at);
    }

    /**
     * Reads {@code NET=0|1,NET=0|1,…}. A bare name is that of a net; pins and spots are written as places.
     *
     * @throws IllegalArgumentException with one sentence for a person where it is not that
     */
    public static List<Given> parseAll(String text) {
        List<Given> all = new ArrayList<>();
        StringBuilder one = new StringBuilder();
        for (String piece : text.split(",", -1)) {
            one.append(one.isEmpty() ? "" : ",").append(piece);
            // A comma without a level before it belongs to a name or a spot.
            if (piece.contains("=")) {
                all.add(parse(one.toString().strip()));
                one.setLength(0);
            }
        }
        if (all.isEmpty() || !one.isEmpty()) {
            throw wrong(one.toString());
        }
        return all;
    }

    private static Given parse(String text) {
        int is = text.lastIndexOf('=');
        Seen level = is < 1 ? Seen.BAD : levelOf(text.substring(is + 1));
        if (level != Seen.LOW && level != Seen.HIGH) {
            throw wrong(text);
        }
        String name = text.substring(0, is).strip();
        boolean place = name.regionMatches(true, 0, "net:", 0, 4) || name.matches("\\d+@.*");
        return new Given(place ? Place.parse(name) : new Place.OfNet(name), level == Seen.HIGH);
    }

    private static IllegalArgumentException wrong(String text) {
        return new IllegalArgumentException("\"" + text.strip()
                + "\" holds no net at a level: write NET=0 or NET=1, with commas between");
    }

    private static Seen levelOf(String word) {
        try {
            return Seen.parse(word);
        } catch (IllegalArgumentException e) {
            return Seen.BAD;
        }
    }
}
