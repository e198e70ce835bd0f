// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.follow;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.partbook.PartClass;
import org.probeleaf.trace.TracedPin;

/**
 * Connectors whose two halves are both on the drawing. A plug and a socket with the same number (P3 and J3 after
 * IEEE 315, PL3 and SK3) and the same pins are taken for mates; a signal goes from a pin of one to the pin with the
 * same number of the other.
 */
final class Mates {

    private static final Map<String, String> MATE = Map.of("P", "J", "PL", "SK");
    private static final Pattern REF = Pattern.compile("([A-Z]+)(\\d+)");

    private Mates() {
    }

    /**
     * The ways between mates.
     *
     * @param ofPart the pins on nets of each part, by its designator
     */
    static List<Step> ways(List<Part> parts, PartBook book, Map<String, List<TracedPin>> ofPart) {
        Map<String, Part> connectors = new HashMap<>();
        parts.stream().filter(p -> book.classOf(p.ref()) == PartClass.CONNECTOR)
                .forEach(p -> connectors.put(p.ref().toUpperCase(Locale.ROOT), p));
        List<Step> ways = new ArrayList<>();
        for (Part plug : parts) {
            Matcher m = REF.matcher(plug.ref().toUpperCase(Locale.ROOT));
            Part socket = m.matches() && MATE.containsKey(m.group(1)) ? connectors.get(MATE.get(m.group(1)) + m.group(2))
                    : null;
            if (socket != null && numbers(plug).equals(numbers(socket)) && numbers(plug).size() == plug.pins().size()) {
                join(plug, socket, ofPart, ways);
            }
        }
        return ways;
    }

    private static void join(Part plug, Part socket, Map<String, List<TracedPin>> ofPart, List<Step> ways) {
        for (TracedPin a : ofPart.getOrDefault(plug.ref(), List.of())) {
            for (TracedPin b : ofPart.getOrDefault(socket.ref(), List.of())) {
                if (a.pin().number().equals(b.pin().number()) && !a.pin().net().equals(b.pin().net())) {
                    ways.add(new Step(a, b, StepKind.SERIES, null, reason(a, b)));
                    ways.add(new Step(b, a, StepKind.SERIES, null, reason(b, a)));
                }
            }
        }
    }

    private static String reason(TracedPin from, TracedPin to) {
        return "through connector " + PartWords.part(from.part()) + " into its mate " + PartWords.part(to.part()) + ", "
                + PartWords.shortPin(from) + " of both";
    }

    private static Set<String> numbers(Part part) {
        return part.pins().stream().map(Pin::number).filter(n -> n != null).collect(Collectors.toCollection(HashSet::new));
    }
}
