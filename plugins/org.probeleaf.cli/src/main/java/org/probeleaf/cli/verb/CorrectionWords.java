// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.verb;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.probeleaf.cli.io.Problem;
import org.probeleaf.recognition.correction.Correction;
import org.probeleaf.recognition.correction.Spot;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.place.Place;

/** What is typed for a correction, understood. */
final class CorrectionWords {

    private static final int ANY = 99;

    /** What the options say; each may be null. */
    record Options(String number, String name, String ref, String value, String unit) {
    }

    /** Finds the spot of a place in the job. */
    @FunctionalInterface
    interface Places {
        Spot spot(String at) throws IOException;
    }

    /** Makes a correction from words. */
    @FunctionalInterface
    private interface Maker {
        Correction make(List<String> words, Options options, Places places) throws IOException;
    }

    /** One kind: how it is used, how many words it takes. */
    private record Kind(String usage, int least, int most, Maker maker) {
    }

    private static final Map<String, Kind> KINDS = new LinkedHashMap<>();

    static {
        add("join", "join AT AT\u2026", 2, ANY, (w, o, p) -> new Correction.Join(spots(w, p)));
        add("split", "split AT", 1, 1, (w, o, p) -> new Correction.Split(p.spot(w.get(0))));
        add("detach", "detach AT\u2026", 1, ANY, (w, o, p) -> new Correction.Detach(spots(w, p)));
        add("junction", "junction AT", 1, 1, (w, o, p) -> new Correction.Junction(p.spot(w.get(0)), true));
        add("no-junction", "no-junction AT", 1, 1, (w, o, p) -> new Correction.Junction(p.spot(w.get(0)), false));
        add("name", "name AT NAME", 2, 2, (w, o, p) -> new Correction.Name(p.spot(w.get(0)), w.get(1)));
        add("add-pin", "add-pin AT IC4.21 [--name N]", 2, 2, CorrectionWords::addPin);
        add("move-pin", "move-pin AT AT", 2, 2,
                (w, o, p) -> new Correction.MovePin(p.spot(w.get(0)), p.spot(w.get(1))));
        add("edit-pin", "edit-pin AT [--number N] [--name N]", 1, 1,
                (w, o, p) -> new Correction.EditPin(p.spot(w.get(0)), o.number(), o.name()));
        add("remove-pin", "remove-pin AT", 1, 1, (w, o, p) -> new Correction.RemovePin(p.spot(w.get(0))));
        add("add-part", "add-part REF AT AT [--value V] [--unit U]", 3, 3, CorrectionWords::addPart);
        add("edit-part", "edit-part AT [--ref R] [--value V]", 1, 1,
                (w, o, p) -> new Correction.EditPart(p.spot(w.get(0)), o.ref(), o.value()));
        add("remove-part", "remove-part AT", 1, 1, (w, o, p) -> new Correction.RemovePart(p.spot(w.get(0))));
        add("unit", "unit AT REF [--unit U]", 2, 2,
                (w, o, p) -> new Correction.AssignUnit(p.spot(w.get(0)), w.get(1), o.unit()));
        add("ignore", "ignore AT AT", 2, 2, CorrectionWords::ignore);
        add("confirm", "confirm AT", 1, 1, (w, o, p) -> new Correction.Confirm(p.spot(w.get(0))));
    }

    private CorrectionWords() {
    }

    private static void add(String name, String usage, int least, int most, Maker maker) {
        KINDS.put(name, new Kind(usage, least, most, maker));
    }

    /**
     * Understands a correction.
     *
     * @param what its kind
     * @throws Problem                  where there is no such kind, or the words do not fit it
     * @throws IllegalArgumentException with one sentence for a person where they make no correction
     */
    static Correction parse(String what, List<String> words, Options options, Places places) throws IOException {
        Kind kind = KINDS.get(what);
        if (kind == null) {
            throw Problem.usage("there is no correction \"" + what + "\"; known are " + String.join(", ",
                    KINDS.keySet()) + ", withdraw");
        }
        if (words.size() < kind.least() || words.size() > kind.most()) {
            throw Problem.usage("a correction is written: " + kind.usage());
        }
        return kind.maker().make(words, options, places);
    }

    private static List<Spot> spots(List<String> words, Places places) throws IOException {
        List<Spot> spots = new ArrayList<>();
        for (String word : words) {
            spots.add(places.spot(word));
        }
        return spots;
    }

    private static Correction addPin(List<String> words, Options o, Places places) throws IOException {
        Place pin = Place.parse(words.get(1));
        if (pin instanceof Place.OfPin p) {
            return new Correction.AddPin(places.spot(words.get(0)), p.ref(), p.pin(), o.name());
        }
        if (pin instanceof Place.OfPart p) {
            return new Correction.AddPin(places.spot(words.get(0)), p.ref(), o.number(), o.name());
        }
        throw Problem.usage(words.get(1) + " is no pin; write it as IC4.21");
    }

    private static Correction addPart(List<String> words, Options o, Places places) throws IOException {
        if (!(Place.parse(words.get(0)) instanceof Place.OfPart part)) {
            throw Problem.usage(words.get(0) + " is no designator; write the part as IC4");
        }
        Spot a = places.spot(words.get(1));
        return new Correction.AddPart(a.page(), box(a, places.spot(words.get(2))), part.ref(), o.value(), o.unit());
    }

    private static Correction ignore(List<String> words, Options o, Places places) throws IOException {
        Spot a = places.spot(words.get(0));
        return new Correction.Ignore(a.page(), box(a, places.spot(words.get(1))));
    }

    private static Box box(Spot a, Spot b) {
        if (a.page() != b.page()) {
            throw Problem.usage("the two corners lie on different pages; name two on one page");
        }
        return Box.of(a.at().x(), a.at().y(), b.at().x(), b.at().y());
    }
}
