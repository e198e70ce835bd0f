// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.partbook;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A type of part with its pins.
 *
 * @param name  the book's name for it ({@code "7400"})
 * @param title what it is ({@code "Quad 2-input NAND"})
 * @param pins  all of them, by number
 * @param units its sections, as far as the book knows them
 */
public record PartType(String name, String title, List<PinType> pins, List<UnitType> units) {

    public PartType {
        pins = List.copyOf(pins);
        units = List.copyOf(units);
    }

    /** The pin with the given number. */
    public Optional<PinType> pinNumbered(String number) {
        for (PinType pin : pins) {
            if (pin.number().equals(number)) {
                return Optional.of(pin);
            }
        }
        return Optional.empty();
    }

    /**
     * The one pin that goes by the given name. Signs of active low ({@code /RD}, {@code ~RD}, {@code RD#},
     * {@code nRD}) and letter case do not count; a name that fits several pins fits none.
     */
    public Optional<PinType> pinNamed(String name) {
        String wanted = plain(name);
        List<PinType> found = pins.stream()
                .filter(p -> p.names().stream().anyMatch(n -> plain(n).equals(wanted))).toList();
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    /** The name without its sign of active low and other signs. */
    private static String plain(String name) {
        String n = name.strip();
        if (n.matches("n[A-Z].*")) {
            n = n.substring(1);
        }
        return n.toUpperCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}+]", "");
    }
}
