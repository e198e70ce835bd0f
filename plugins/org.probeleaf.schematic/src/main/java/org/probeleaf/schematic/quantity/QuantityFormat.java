// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.quantity;

import java.math.BigDecimal;

/** Writes values for people: every digit that the value has, with the prefix that leaves one to three before the point. */
final class QuantityFormat {

    private static final String[] PREFIXES = {"p", "n", "\u00b5", "m", "", "k", "M", "G", "T"};
    private static final int SMALLEST = -12;
    private static final int LARGEST = 12;

    private QuantityFormat() {
    }

    /** As {@link Quantity#text()}. */
    static String text(Quantity quantity) {
        double v = quantity.value();
        return switch (quantity.kind()) {
            case LOGIC -> v == 1 ? "high" : "low";
            case ACTIVITY -> v == 1 ? "pulsing" : "no signal";
            case CONTINUITY -> v == 1 ? "joined" : "open";
            case CONDITION -> v == 1 ? "good" : "bad";
            case NUMBER -> number(v);
            case TEMPERATURE -> plain(v, 0) + " " + Unit.DEGREE_CELSIUS.symbol();
            case CAPACITANCE -> prefixed(v, Math.abs(v) < 0.1 ? Math.min(-6, exponent(v)) : 0) + "F";
            case VOLTAGE_AC -> prefixed(v, exponent(v)) + "V AC";
            case VOLTAGE_PP -> prefixed(v, exponent(v)) + "Vpp";
            case VOLTAGE_PEAK -> prefixed(v, exponent(v)) + "Vpk";
            case DIODE_DROP -> prefixed(v, exponent(v)) + "V diode drop";
            case ESR -> prefixed(v, exponent(v)) + Unit.OHM.symbol() + " ESR";
            default -> prefixed(v, exponent(v)) + quantity.kind().unit().symbol();
        };
    }

    private static String number(double v) {
        boolean small = v != 0 && Math.abs(v) < 1e-3;
        int e = small || Math.abs(v) >= 1e4 ? exponent(v) : 0;
        return prefixed(v, e).replace(" ", "");
    }

    /** Number, space, prefix. */
    private static String prefixed(double v, int exponent) {
        if (v != 0 && (Math.abs(v) < 1e-15 || Math.abs(v) >= 1e18)) {
            return v + " ";
        }
        return plain(v, exponent) + " " + PREFIXES[(exponent - SMALLEST) / 3];
    }

    private static String plain(double v, int exponent) {
        if (v != 0 && (Math.abs(v) < 1e-15 || Math.abs(v) >= 1e18)) {
            return Double.toString(v);
        }
        BigDecimal shifted = new BigDecimal(Double.toString(v)).movePointLeft(exponent);
        return shifted.signum() == 0 ? "0" : shifted.stripTrailingZeros().toPlainString();
    }

    /** The power of a thousand that leaves one to three digits before the point, within the known prefixes. */
    private static int exponent(double v) {
        if (v == 0) {
            return 0;
        }
        BigDecimal exact = new BigDecimal(Double.toString(v));
        int magnitude = exact.precision() - exact.scale() - 1;
        return Math.max(SMALLEST, Math.min(LARGEST, Math.floorDiv(magnitude, 3) * 3));
    }
}
