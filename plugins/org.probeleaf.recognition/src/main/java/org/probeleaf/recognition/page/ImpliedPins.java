// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.page;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.probeleaf.schematic.netlist.LabelKind;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.partbook.PartType;
import org.probeleaf.schematic.partbook.PinRole;
import org.probeleaf.schematic.partbook.PinType;

/**
 * Adds the supply pins that a sheet does not draw but the part book knows, each on the supply net that it would be on:
 * the net of its own name, else the sheet's only ground or its only five volts.
 */
final class ImpliedPins {

    private static final Set<String> GROUNDS = Set.of("GND", "0V", "VSS", "0", "DGND");
    private static final Set<String> FIVE_VOLTS = Set.of("VCC", "+5V", "5V", "+5", "VDD");

    private final PartBook book;
    /** Supply nets by their names in capitals. */
    private final Map<String, Net> supplies = new HashMap<>();

    ImpliedPins(PartBook book, List<Net> nets) {
        this.book = book;
        for (Net net : nets) {
            net.labels().stream().filter(l -> l.kind() == LabelKind.POWER)
                    .forEach(l -> supplies.putIfAbsent(l.text().toUpperCase(Locale.ROOT), net));
        }
    }

    /** The part with what it lacks. */
    Part complete(Part part) {
        Optional<PartType> type = book.find(part.value());
        if (type.isEmpty() || !fits(part, type.get())) {
            return part;
        }
        List<Pin> pins = new ArrayList<>(part.pins());
        for (PinType pin : type.get().pins()) {
            Net net = isSupply(pin) && !isDrawn(part, pin, type.get()) ? net(pin) : null;
            if (net != null) {
                pins.add(new Pin(pin.number(), pin.name(), null, part.units().get(0).page(), null, net.id(), true));
            }
        }
        return pins.size() == part.pins().size() ? part : new Part(part.ref(), part.value(), part.units(), pins);
    }

    private static boolean isSupply(PinType pin) {
        return pin.role() == PinRole.SUPPLY || pin.role() == PinRole.GROUND;
    }

    /** Whether every number that the sheet prints is one of the type's, so that the value says what it seems to say. */
    private static boolean fits(Part part, PartType type) {
        return part.pins().size() > 1 && !part.units().isEmpty() && part.pins().stream()
                .allMatch(p -> p.number() != null && type.pinNumbered(p.number()).isPresent());
    }

    private static boolean isDrawn(Part part, PinType pin, PartType type) {
        return part.pins().stream().anyMatch(p -> pin.number().equals(p.number()) || p.name() != null
                && type.pinNamed(p.name()).filter(pin::equals).isPresent());
    }

    private Net net(PinType pin) {
        for (String name : pin.names()) {
            Net net = supplies.get(name.toUpperCase(Locale.ROOT));
            if (net != null) {
                return net;
            }
        }
        Set<String> usual = pin.role() == PinRole.GROUND ? GROUNDS : FIVE_VOLTS;
        List<Net> found = usual.stream().map(supplies::get).filter(n -> n != null).distinct().toList();
        return found.size() == 1 ? found.get(0) : null;
    }
}
