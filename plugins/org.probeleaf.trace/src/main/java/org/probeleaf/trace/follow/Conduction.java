// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.follow;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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

    /**
     * @param carries what the net of a pin carries
     */
    Conduction(PartBook book, Function<TracedPin, NetKind> carries) {
        this.book = book;
        this.carries = carries;
    }

    /** What a part is for tracing. */
    PartClass kind(Part part) {
        return PassiveWays.settled(part, book.classOf(part.ref()));
    }

    /** What the part book knows of a part, if it is one of its kind. */
    Optional<PartType> type(Part part) {
        return BY_LETTERS.contains(book.classOf(part.ref())) ? Optional.empty() : book.find(part.value());
    }

    /** The ways through a part, given its pins on nets. */
    List<Step> ways(Part part, List<TracedPin> pins) {
        Optional<PartType> type = type(part);
        return type.isPresent() ? SectionWays.of(book, part, type.get(), pins, carries)
                : PassiveWays.of(part, kind(part), pins);
    }
}
