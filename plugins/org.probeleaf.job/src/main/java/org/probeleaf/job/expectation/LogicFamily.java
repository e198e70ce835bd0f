// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.expectation;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The voltage levels of a logic family at one supply.
 *
 * <p>The levels are guaranteed limits as the families' data sheets print them: inputs V<sub>IL</sub> max and
 * V<sub>IH</sub> min, outputs V<sub>OL</sub> max and V<sub>OH</sub> min (HC and HCT with light load, as JESD7A; the
 * 4000B series after JESD13-B; 3.3 V families after JESD8C.01). 74HC at 5 V follows the rule of its standard, 30 % and
 * 70 % of the supply.
 *
 * @param name   as typed and shown ({@code "74LS"}, {@code "74HC@4.5V"})
 * @param supply nominal supply, in volts
 * @param vilMax highest voltage that an input takes for low, in volts
 * @param vihMin lowest voltage that an input takes for high, in volts
 * @param volMax highest voltage that an output gives for low, in volts
 * @param vohMin lowest voltage that an output gives for high, in volts
 */
public record LogicFamily(String name, double supply, double vilMax, double vihMin, double volMax, double vohMin) {

    private static final List<LogicFamily> KNOWN = List.of(
            new LogicFamily("74", 5, 0.8, 2.0, 0.4, 2.4),
            new LogicFamily("74LS", 5, 0.8, 2.0, 0.5, 2.7),
            new LogicFamily("54LS", 5, 0.7, 2.0, 0.4, 2.5),
            new LogicFamily("74S", 5, 0.8, 2.0, 0.5, 2.7),
            new LogicFamily("74F", 5, 0.8, 2.0, 0.5, 2.5),
            new LogicFamily("74HC", 5, 1.5, 3.5, 0.1, 4.9),
            new LogicFamily("74HC@2V", 2, 0.5, 1.5, 0.1, 1.9),
            new LogicFamily("74HC@4.5V", 4.5, 1.35, 3.15, 0.1, 4.4),
            new LogicFamily("74HC@5.5V", 5.5, 1.65, 3.85, 0.1, 5.4),
            new LogicFamily("74HC@6V", 6, 1.8, 4.2, 0.1, 5.9),
            new LogicFamily("74HCT", 5, 0.8, 2.0, 0.1, 4.4),
            new LogicFamily("4000B", 5, 1.5, 3.5, 0.05, 4.95),
            new LogicFamily("4000B@10V", 10, 3.0, 7.0, 0.05, 9.95),
            new LogicFamily("4000B@15V", 15, 4.0, 11.0, 0.05, 14.95),
            new LogicFamily("LVTTL", 3.3, 0.8, 2.0, 0.4, 2.4),
            new LogicFamily("LVCMOS", 3.3, 0.8, 2.0, 0.2, 2.8),
            new LogicFamily("NMOS", 5, 0.8, 2.0, 0.4, 2.4));

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
