// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.netlist;

import java.util.List;

/**
 * One part of the board, drawn in one or several units.
 *
 * @param ref   reference designator without a unit letter ({@code "IC3"}), never null
 * @param value as printed ({@code "74LS00"}, {@code "4k7"}), or null
 * @param units its drawn pieces, at least one
 * @param pins  all pins of all units
 */
public record Part(String ref, String value, List<PartUnit> units, List<Pin> pins) {

    public Part {
        if (units.isEmpty()) {
            throw new IllegalArgumentException("part " + ref + " has no drawn unit");
        }
        units = List.copyOf(units);
        pins = List.copyOf(pins);
    }
}
