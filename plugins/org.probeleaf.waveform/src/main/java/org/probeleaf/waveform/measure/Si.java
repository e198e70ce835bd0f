// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.measure;

import java.math.BigDecimal;
import java.math.MathContext;

/** Values for people: a number of three or four digits, the prefix that leaves one to three before the point, the unit. */
public final class Si {

    private static final String[] PREFIXES = {"f", "p", "n", "\u00b5", "m", "", "k", "M", "G", "T"};
    private static final int SMALLEST = -15;
    private static final int LARGEST = 12;
    private static final int DIGITS = 4;

    private Si() {
    }

    /** With four digits at most: {@code 4.7 mF}, {@code 1 MHz}, {@code 0 V}. */
    public static String text(double value, String unit) {
        return text(value, DIGITS, unit);
    }

    /**
     * With so many digits at most, zeros at the end left out.
     *
     * @param unit without prefix; may be empty. Per cent and plain numbers take no prefix
     */
    public static String text(double value, int digits, String unit) {
        if (!Double.isFinite(value)) {
            return "-";
        }
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(digits));
        if (rounded.signum() == 0) {
            return ("0 " + unit).strip();
        }
        if (unit.equals("%") || unit.isEmpty()) {
            boolean odd = Math.abs(value) < 1e-4 || Math.abs(value) >= 1e7;
            String plain = odd ? String.valueOf(rounded.doubleValue()) : rounded.stripTrailingZeros().toPlainString();
            return (plain + " " + unit).strip();
        }
        int magnitude = rounded.precision() - rounded.scale() - 1;
        int exponent = Math.max(SMALLEST, Math.min(LARGEST, Math.floorDiv(magnitude, 3) * 3));
        String number = rounded.movePointLeft(exponent).stripTrailingZeros().toPlainString();
        return (number + " " + PREFIXES[(exponent - SMALLEST) / 3] + unit).strip();
    }
}
