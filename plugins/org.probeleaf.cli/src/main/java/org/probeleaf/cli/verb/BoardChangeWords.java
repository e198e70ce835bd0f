// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.verb;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.probeleaf.cli.io.Problem;
import org.probeleaf.schematic.board.BoardChange;
import org.probeleaf.schematic.place.Place;

/** Understands what was done to a board, as {@code change} takes it. */
final class BoardChangeWords {

    private static final int ANY = Integer.MAX_VALUE;

    /** Makes changes from words. */
    @FunctionalInterface
    private interface Maker {
        List<BoardChange> make(List<String> words, String value);
    }

    /** One kind: how it is used, how many words it takes, whether a value can be said. */
    private record Kind(String usage, int least, int most, boolean valued, Maker maker) {
    }

    private static final Map<String, Kind> KINDS = new LinkedHashMap<>();

    static {
        add("lift", "lift IC4.21\u2026", 1, ANY, false, (w, v) -> w.stream().<BoardChange>map(BoardChangeWords::lift)
                .toList());
        add("remove", "remove R12\u2026", 1, ANY, false, (w, v) -> w.stream()
                .<BoardChange>map(word -> new BoardChange.Remove(ref(word))).toList());
        add("fit", "fit R12, fit R99=10k, or fit R99=10k:AT,AT", 1, ANY, true, BoardChangeWords::fit);
        add("replace", "replace IC5\u2026, or replace IC5=74HCT32", 1, ANY, true, BoardChangeWords::replace);
        add("link", "link AT AT\u2026", 2, ANY, false, (w, v) -> links(w));
        add("cut", "cut AT\u2026", 1, ANY, false, (w, v) -> w.stream()
                .<BoardChange>map(word -> new BoardChange.Cut(Place.parse(word))).toList());
        add("value", "value R12=3k3\u2026, or value R12 3k3", 1, ANY, true, BoardChangeWords::values);
    }

    private BoardChangeWords() {
    }

    private static void add(String name, String usage, int least, int most, boolean valued, Maker maker) {
        KINDS.put(name, new Kind(usage, least, most, valued, maker));
    }

    /**
     * Understands what was done.
     *
     * @param what  its kind
     * @param words places, parts, values
     * @param value said by itself, or null
     * @throws Problem                  where there is no such kind, or the words do not fit it
     * @throws IllegalArgumentException with one sentence for a person where a word names no place
     */
    static List<BoardChange> parse(String what, List<String> words, String value) {
        Kind kind = KINDS.get(what);
        if (kind == null) {
            throw Problem.usage("there is no change \"" + what + "\" of a board; known are " + String.join(", ",
                    KINDS.keySet()));
        }
        if (words.size() < kind.least() || words.size() > kind.most()) {
            throw Problem.usage("write the change as: " + kind.usage());
        }
        if (value != null && !kind.valued()) {
            throw Problem.usage(what + " takes no value; leave --value out");
        }
        return kind.maker().make(words, value);
    }

    private static BoardChange lift(String word) {
        if (Place.parse(word) instanceof Place.OfPin pin) {
            return new BoardChange.Lift(pin);
        }
        throw Problem.usage(word + " is no pin; write it as IC4.21");
    }

    private static String ref(String word) {
        if (Place.parse(word) instanceof Place.OfPart part) {
            return part.ref();
        }
        throw Problem.usage(word + " is no part; write it as IC4");
    }

    private static List<BoardChange> links(List<String> words) {
        List<BoardChange> links = new ArrayList<>();
        for (int i = 1; i < words.size(); i++) {
            links.add(new BoardChange.Link(Place.parse(words.get(i - 1)), Place.parse(words.get(i))));
        }
        return links;
    }

    private static List<BoardChange> replace(List<String> words, String value) {
        return words.stream().<BoardChange>map(word -> {
            String[] two = halves(word);
            return new BoardChange.Replace(ref(two[0]), two[1] == null ? value : two[1]);
        }).toList();
    }

    private static List<BoardChange> values(List<String> words, String value) {
        boolean apart = words.size() == 2 && value == null && words.stream().noneMatch(w -> w.contains("="));
        if (apart) {
            return List.of(new BoardChange.Value(ref(words.get(0)), words.get(1)));
        }
        return words.stream().<BoardChange>map(word -> {
            String[] two = halves(word);
            String its = two[1] == null ? value : two[1];
            if (its == null) {
                throw Problem.usage("what is the value of " + word + "? Write it as " + word + "=3k3");
            }
            return new BoardChange.Value(ref(two[0]), its);
        }).toList();
    }

    /** {@code R99}, {@code R99=10k}, {@code R99=10k:AT,AT}; or the part and then its places as words. */
    private static List<BoardChange> fit(List<String> words, String value) {
        String[] two = halves(words.get(0));
        String its = two[1] == null ? value : two[1];
        List<Place> at = new ArrayList<>();
        int colon = its == null || two[1] == null ? -1 : its.indexOf(':');
        if (colon >= 0) {
            for (String place : splitPlaces(its.substring(colon + 1))) {
                at.add(Place.parse(place));
            }
            its = its.substring(0, colon);
        }
        for (String word : words.subList(1, words.size())) {
            at.add(Place.parse(word));
        }
        return List.of(new BoardChange.Fit(ref(two[0]), its == null || its.isBlank() ? null : its, at));
    }

    /** At commas, but not at the one within a spot of a page. */
    private static String[] splitPlaces(String text) {
        return text.split(",(?!-?\\d+(?:\\.\\d+)?(?:,|$))");
    }

    /** What stands before and after the first equals sign; the second is null without one. */
    private static String[] halves(String word) {
        int is = word.indexOf('=');
        return is < 0 ? new String[] {word, null} : new String[] {word.substring(0, is), word.substring(is + 1)};
    }
}
