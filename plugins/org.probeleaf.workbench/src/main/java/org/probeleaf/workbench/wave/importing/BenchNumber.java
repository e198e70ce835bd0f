// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave.importing;

import java.math.BigDecimal;
import java.math.MathContext;

/** A number as it is typed on the bench, with a prefix: {@code 2us}, {@code 10mV}. */
final class BenchNumber {

    private static final String[] PREFIXES = {"f", "p", "n", "u", "m", "", "k", "M", "G"};
    private static final int PLAIN = 5;

    private BenchNumber() {
    }

    /** With so many digits that it is the same number when it is read again, to twelve digits. */
    static String text(double value, String unit) {
        int power = value == 0 ? 0 : (int) Math.floor(Math.log10(Math.abs(value)) / 3 + 1e-12);
        int at = Math.max(0, Math.min(PREFIXES.length - 1, PLAIN + power));
        BigDecimal scaled = new BigDecimal(value, new MathContext(12)).scaleByPowerOfTen(-3 * (at - PLAIN));
        return scaled.stripTrailingZeros().toPlainString() + PREFIXES[at] + unit;
    }
}
