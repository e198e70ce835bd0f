// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.follow;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.partbook.PartType;
import org.probeleaf.schematic.partbook.PinDirection;
import org.probeleaf.schematic.partbook.PinRole;
import org.probeleaf.schematic.partbook.PinType;
import org.probeleaf.schematic.partbook.UnitType;
import org.probeleaf.trace.TracedPin;

/** Says of pins whether and when they drive, from their role in the part book and from how their enables are tied. */
final class Outputs {

    private final PartBook book;
    private final Function<TracedPin, NetKind> carries;
    private final Function<TracedPin, List<TracedPin>> pinsOfPart;

    /**
     * @param carries    what the net of a pin carries
     * @param pinsOfPart the pins on nets of the part of a pin
     */
    Outputs(PartBook book, Function<TracedPin, NetKind> carries, Function<TracedPin, List<TracedPin>> pinsOfPart) {
        this.book = book;
        this.carries = carries;
        this.pinsOfPart = pinsOfPart;
    }

    OutputState state(TracedPin pin) {
        if (pin.direction() != PinDirection.OUT && pin.direction() != PinDirection.BIDIR) {
            return OutputState.NONE;
        }
        PinType type = book.pin(pin.part(), pin.pin()).orElse(null);
        PinRole role = type == null ? PinRole.OUT : type.role();
        if (role == PinRole.OPEN_COLLECTOR) {
            return OutputState.PULLS_DOWN;
        }
        if (role == PinRole.OUT) {
            return OutputState.ALWAYS;
        }
        if (role == PinRole.THREE_STATE) {
            Tie tie = tie(pin, type).orElse(null);
            return tie == null ? OutputState.BY_TURNS : tie.off() != null ? OutputState.NEVER
                    : tie.always() ? OutputState.ALWAYS : OutputState.BY_TURNS;
        }
        return OutputState.BY_TURNS;
    }

    /** How the enables of an output are tied; empty where the book does not know its section. */
    private Optional<Tie> tie(TracedPin pin, PinType type) {
        Optional<UnitType> unit = book.find(pin.part().value()).map(PartType::units).orElse(List.of()).stream()
                .filter(u -> u.outputs().contains(type.number())).findFirst();
        return unit.map(u -> Tie.of(u, numbers -> pinsOfPart.apply(pin).stream().filter(p -> book.pin(p.part(), p.pin())
                .filter(t -> numbers.contains(t.number())).isPresent()).toList(), carries));
    }
}
