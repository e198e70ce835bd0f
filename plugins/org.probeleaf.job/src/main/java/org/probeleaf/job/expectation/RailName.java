// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.expectation;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.probeleaf.schematic.quantity.Quantity;
import org.probeleaf.schematic.quantity.QuantityKind;

/**
 * What the name of a supply rail says that its voltage should be: {@code +5V}, {@code 3V3}, {@code -12V}, {@code VCC_3.3V}.
 * Five per cent to either side are taken, as is common practice for regulated supplies.
 */
public final class RailName {

    private static final double SHARE = 0.05;
    private static final Pattern VOLTS = Pattern.compile("(?:(?:[AD]?V(?:CC|DD|EE|BB|IN|OUT|BAT)?|PWR|SUPPLY|RAIL)[_ -]?(?=[+\\d]))?"
            + "(?<sign>[+\u2212\u2013-]?)(?<whole>\\d{1,3})(?:[.,](?<point>\\d{1,2})(?<v1>V?)|(?<v2>V)(?<after>\\d{1,2})?|(?=$))"
            + "(?:[_ -]?[A-Z]{1,8}\\d?)?", Pattern.CASE_INSENSITIVE);

    private RailName() {
    }

    /** What it should be; empty where the name says no voltage. A bare number counts only with a sign ({@code +5}). */
    public static Optional<Expectation> expectation(String net) {
        OptionalDouble volts = volts(net, false);
        if (volts.isEmpty()) {
            return Optional.empty();
        }
        Quantity nominal = Quantity.of(QuantityKind.VOLTAGE_DC, volts.getAsDouble());
        return Optional.of(new Tolerance(nominal, Math.abs(nominal.value()) * SHARE, nominal.text() + "\u00b15%"));
    }

    /**
     * The volts that a name says; empty where it says none, or none but 0.
     *
     * @param supply whether the net is known to be a supply, so that a bare number ({@code 5}) is one of volts
     */
    public static OptionalDouble volts(String net, boolean supply) {
        Matcher m = VOLTS.matcher(net.strip());
        if (!m.matches()) {
            return OptionalDouble.empty();
        }
        String sign = m.group("sign");
        boolean volt = m.group("v2") != null || m.group("v1") != null && !m.group("v1").isEmpty();
        if (!volt && sign.isEmpty() && !supply) {
            return OptionalDouble.empty();
        }
        String fraction = m.group("point") != null ? m.group("point") : m.group("after") != null ? m.group("after") : "0";
        double volts = Double.parseDouble(m.group("whole") + "." + fraction);
        boolean below = !sign.isEmpty() && !sign.equals("+");
        return volts == 0 ? OptionalDouble.empty() : OptionalDouble.of(below ? -volts : volts);
    }
}
