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
        for (String one : text.split(",(?=[^,=]*=)")) {
            int is = one.lastIndexOf('=');
            Seen level = is < 1 ? Seen.BAD : levelOf(one.substring(is + 1));
            if (level != Seen.LOW && level != Seen.HIGH) {
                throw new IllegalArgumentException("\"" + one.strip()
                        + "\" holds no net at a level: write NET=0 or NET=1, with commas between");
            }
            String name = one.substring(0, is).strip();
            boolean place = name.regionMatches(true, 0, "net:", 0, 4) || name.matches("\\d+@.*");
            all.add(new Given(place ? Place.parse(name) : new Place.OfNet(name), level == Seen.HIGH));
        }
        return all;
    }

    private static Seen levelOf(String word) {
        try {
            return Seen.parse(word);
        } catch (IllegalArgumentException e) {
            return Seen.BAD;
        }
    }
}
