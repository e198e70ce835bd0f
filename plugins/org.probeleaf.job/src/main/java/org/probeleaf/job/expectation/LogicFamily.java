// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.expectation;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.probeleaf.schematic.partbook.LevelBook;

/**
 * The voltage levels of a logic family at one supply: guaranteed limits, as {@link LevelBook} has them with their
 * sources (HC, HCT and the 4000B series with light load).
 *
 * @param name   as typed and shown ({@code "74LS"}, {@code "74HC@4.5V"})
 * @param supply nominal supply, in volts
 * @param vilMax highest voltage that an input takes for low, in volts
 * @param vihMin lowest voltage that an input takes for high, in volts
 * @param volMax highest voltage that an output gives for low, in volts
 * @param vohMin lowest voltage that an output gives for high, in volts
 */
public record LogicFamily(String name, double supply, double vilMax, double vihMin, double volMax, double vohMin) {

    private static final List<LogicFamily> KNOWN = LevelBook.standard().levels().stream().filter(l -> !l.chip())
            .map(l -> new LogicFamily(l.name(), l.supply(), l.vilMax(), l.vihMin(), l.drive().volMax(),
                    l.drive().vohMin())).toList();

    /** The families that are known, in the order they are offered. */
    public static List<LogicFamily> known() {
        return KNOWN;
    }

    /**
     * The family of the given name. Letter case and spaces do not matter, the leading 74 may be left out, and
     * {@code TTL} is the first 74 series.
     */
    public static Optional<LogicFamily> named(String name) {
        String plain = name.replaceAll("\\s", "").toUpperCase(Locale.ROOT);
        if (plain.isEmpty()) {
            return Optional.empty();
        }
        String wanted = plain.equals("TTL") ? "74" : plain;
        return KNOWN.stream()
                .filter(f -> f.name.equalsIgnoreCase(wanted) || f.name.equalsIgnoreCase("74" + wanted))
                .findFirst();
    }
}
