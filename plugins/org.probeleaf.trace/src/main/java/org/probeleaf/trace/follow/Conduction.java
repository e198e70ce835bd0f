// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.follow;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.partbook.PartClass;
import org.probeleaf.schematic.partbook.PartType;
import org.probeleaf.trace.TracedPin;

/** Says what each part conducts: by its class, or for a chip by the sections that the part book knows. */
final class Conduction {

    /** Classes whose parts are what their letters say, whatever their value looks like. */
    private static final Set<PartClass> BY_LETTERS = EnumSet.of(PartClass.RESISTOR, PartClass.CAPACITOR,
            PartClass.INDUCTOR, PartClass.LINK, PartClass.CONNECTOR, PartClass.TESTPOINT);

    private final PartBook book;
    private final Function<TracedPin, NetKind> carries;
    /** Of each part by its designator; told once, since it is asked for each way. */
    private final Map<String, PartClass> kinds = new ConcurrentHashMap<>();

    /**
     * @param carries what the net of a pin carries
     */
    Conduction(PartBook book, Function<TracedPin, NetKind> carries) {
        this.book = book;
        this.carries = carries;
    }

    /** What a part is for tracing. */
    PartClass kind(Part part) {
        return kinds.computeIfAbsent(part.ref(), r -> PassiveWays.settled(part, book.classOf(r)));
    }

    /** What the part book knows of a part, if it is one of its kind. */
    Optional<PartType> type(Part part) {
        return BY_LETTERS.contains(book.classOf(part.ref())) ? Optional.empty() : book.find(part.value());
    }

    /** The ways through each part and between mating connectors; {@code ofPart} has the pins on nets. */
    List<Step> ways(List<Part> parts, Map<String, List<TracedPin>> ofPart) {
        List<Step> all = new ArrayList<>();
        for (Part part : parts) {
            all.addAll(ways(part, ofPart.getOrDefault(part.ref(), List.of())));
        }
        Map<String, Part> pullUps = new HashMap<>();
        all.stream().filter(s -> kind(s.part()) == PartClass.RESISTOR && carries.apply(s.out()) == NetKind.SUPPLY)
                .forEach(s -> pullUps.putIfAbsent(s.fromNet(), s.part()));
        for (Part part : parts) {
            if (kind(part) == PartClass.DIODE) {
                List<TracedPin> signals = ofPart.getOrDefault(part.ref(), List.of()).stream()
                        .filter(p -> !carries.apply(p).isSupply()).toList();
                all.addAll(PassiveWays.pulledDown(part, signals, pullUps::get));
            }
        }
        all.addAll(Mates.ways(parts, book, ofPart));
        return all;
    }

    private List<Step> ways(Part part, List<TracedPin> pins) {
        Optional<PartType> type = type(part);
        return type.isPresent() ? SectionWays.of(book, part, type.get(), pins, carries)
                : PassiveWays.of(part, kind(part), pins, carries);
    }
}
