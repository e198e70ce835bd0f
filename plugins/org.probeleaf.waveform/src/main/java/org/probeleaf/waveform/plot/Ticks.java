// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.plot;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Round values along an axis, 1, 2 or 5 times a power of ten apart, with words in one prefix for all of them. */
final class Ticks {

    private static final String PREFIXES = "pnµm kMGT";

    private final List<Double> values = new ArrayList<>();
    private final BigDecimal step;
    private final int prefix;
    private final String unit;

    /**
     * Finds them.
     *
     * @param from  the lower end
     * @param to    the upper end
     * @param most  how many there may be, at least 1
     * @param unit  stands behind each; may be empty
     */
    Ticks(double from, double to, int most, String unit) {
        this.unit = unit;
        this.step = step((to - from) / Math.max(1, most));
        long first = (long) Math.ceil(from / step.doubleValue() - 1e-9);
        for (long i = first; i * step.doubleValue() <= to + step.doubleValue() * 1e-9; i++) {
            values.add(step.multiply(BigDecimal.valueOf(i)).doubleValue());
        }
        double largest = values.stream().mapToDouble(Math::abs).max().orElse(0);
        this.prefix = unit.isEmpty() ? 0 : prefix(largest);
    }

    private static BigDecimal step(double least) {
        int exponent = (int) Math.floor(Math.log10(least));
        for (int round : new int[] {1, 2, 5}) {
            BigDecimal step = BigDecimal.valueOf(round).scaleByPowerOfTen(exponent);
            if (step.doubleValue() >= least * (1 - 1e-9)) {
                return step;
            }
        }
        return BigDecimal.ONE.scaleByPowerOfTen(exponent + 1);
    }

    private static int prefix(double largest) {
        int exponent = largest == 0 ? 0 : (int) Math.floor(Math.floor(Math.log10(largest) + 1e-12) / 3) * 3;
        return Math.max(-12, Math.min(12, exponent));
    }

    List<Double> values() {
        return values;
    }

    /** A value in words: {@code 2.5 µs}. */
    String words(double value) {
        BigDecimal shown = step.multiply(BigDecimal.valueOf(Math.round(value / step.doubleValue())))
                .scaleByPowerOfTen(-prefix).stripTrailingZeros();
        return (shown.signum() == 0 ? "0 " + unit : shown.toPlainString() + " " + prefixSign() + unit).strip();
    }

    private String prefixSign() {
        return prefix == 0 ? "" : String.valueOf(PREFIXES.charAt((prefix + 12) / 3));
    }
}
