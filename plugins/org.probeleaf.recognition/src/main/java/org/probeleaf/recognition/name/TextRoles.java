// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.name;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.probeleaf.drawing.primitive.Text;
import org.probeleaf.recognition.ink.PageInk;
import org.probeleaf.recognition.symbol.Body;
import org.probeleaf.recognition.wiring.Conductors;
import org.probeleaf.recognition.wiring.Contact;

/**
 * Gives every text of a page its role, in this order: names in flags; numbers on pins; designators; names of pins
 * inside bodies; names at supply symbols; values; labels on lines. What a step takes is gone for the next.
 */
public final class TextRoles {

    private TextRoles() {
    }

    /** Reads the texts of a page. */
    public static PageNames read(PageInk page, Conductors conductors, List<Body> bodies, List<Contact> contacts) {
        TextPool pool = new TextPool(page.texts());
        TagFinder tagFinder = new TagFinder(page, conductors, bodies, pool);
        Set<Integer> flags = tagFinder.findFlags(contacts);
        List<Contact> pins = contacts.stream().filter(c -> !flags.contains(c.body())).toList();
        PinTexts pinTexts = new PinTexts(page, conductors, bodies, pool);
        Map<Integer, Integer> pinCount = new HashMap<>();
        pins.forEach(c -> pinCount.merge(c.body(), 1, Integer::sum));
        // A supply symbol has one pin and no number; the figure beside it is its name.
        pinTexts.findNumbers(pins.stream().filter(c -> pinCount.get(c.body()) > 1).toList());
        DesignatorMatcher matcher = new DesignatorMatcher(page, bodies, pinCount, pool);
        Map<Integer, Text> designators = matcher.matchParts(pinCount.keySet());
        Set<Integer> spoken = new HashSet<>(designators.keySet());
        spoken.addAll(flags);
        // A symbol with one pin beside a supply's name is a supply, whatever designator stands near it.
        spoken.addAll(tagFinder.findSupplies(contacts, spoken, true));
        matcher.matchSinglePins(pinCount.keySet(), spoken);
        spoken.addAll(designators.keySet());
        List<Contact> named = pins.stream().filter(c -> designators.containsKey(c.body())).toList();
        pinTexts.findNames(named);
        tagFinder.findSupplies(contacts, spoken, false);
        BusMembers members = new BusMembers(page, conductors, pool, tagFinder.tags());
        tagFinder.findLabels(members.conductors());
        members.nameRest();
        tagFinder.findSureLabels();
        Map<Integer, String> values = new ValueFinder(page, bodies, pool).find(designators);
        tagFinder.findLabels(null);
        Map<Contact, String> numbers = new HashMap<>();
        Map<Contact, String> names = new HashMap<>();
        for (Contact c : named) {
            numbers.put(c, pinTexts.number(c));
            names.put(c, pinTexts.name(c));
        }
        Terminals terminals = new Terminals(page, conductors);
        Map<Integer, List<Contact>> pinsOfBody = new HashMap<>();
        named.forEach(c -> pinsOfBody.computeIfAbsent(c.body(), k -> new ArrayList<>()).add(c));
        designators.forEach((id, text) -> {
            List<Contact> own = pinsOfBody.getOrDefault(id, List.of());
            // Letters printed at the pins of a transistor say it already.
            if (own.stream().noneMatch(c -> numbers.get(c) != null && numbers.get(c).matches("\\p{L}.*"))) {
                terminals.name(text.text(), bodies.get(id), own, names);
            }
        });
        return new PageNames(designators, values, numbers, names, tagFinder.tags());
    }
}
