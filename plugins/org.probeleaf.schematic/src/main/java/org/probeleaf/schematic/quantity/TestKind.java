// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.quantity;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Words beside a number that say with which test of the meter it was read: {@code 0.6 diode}, {@code ESR 0.8}. Common
 * practice: the diode test shows volts or millivolts, never more than a few volts.
 */
final class TestKind {

    /** Meters that show more than this show millivolts. */
    private static final double LARGEST_DROP = 10;
    /** Beyond this a voltage beside the word diode is the voltage at a diode. */
    private static final double LARGEST_TEST = 4;
    private static final Pattern DROP = Pattern.compile("(diode\\s+drop|diode|vf)(?![\\p{L}\\d])[\\s,;:=]*",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern ESR = Pattern.compile("(esr)(?![\\p{L}\\d])[\\s,;:=]*", Pattern.CASE_INSENSITIVE);

    private TestKind() {
    }

    /** A value whose remark begins with such a word, as what that word says. */
    static BenchValue behind(BenchValue read) {
        return told(DROP.matcher(read.remark()), read, QuantityKind.DIODE_DROP)
                .or(() -> told(ESR.matcher(read.remark()), read, QuantityKind.ESR)).orElse(read);
    }

    /** A text that begins with such a word: {@code ESR 0.8}. */
    static Optional<BenchValue> before(String t) {
        return led(t, DROP).or(() -> led(t, ESR));
    }

    private static Optional<BenchValue> led(String t, Pattern word) {
        Matcher m = word.matcher(t);
        if (!m.lookingAt() || m.end() >= t.length() || "+-.0123456789Rr".indexOf(t.charAt(m.end())) < 0) {
            return Optional.empty();
        }
        BenchValue read = BenchValue.parse(t.substring(m.end()));
        QuantityKind kind = word == ESR ? QuantityKind.ESR : QuantityKind.DIODE_DROP;
        return convert(read.quantity(), kind, m.group(1)).map(q -> new BenchValue(q, read.remark()));
    }

    private static Optional<BenchValue> told(Matcher m, BenchValue read, QuantityKind kind) {
        return !m.lookingAt() ? Optional.empty() : convert(read.quantity(), kind, m.group(1))
                .map(q -> new BenchValue(q, read.remark().substring(m.end()).strip()));
    }

    private static Optional<Quantity> convert(Quantity value, QuantityKind kind, String word) {
        double v = value.value();
        if (kind == QuantityKind.ESR) {
            boolean ohms = value.kind() == QuantityKind.RESISTANCE || value.kind() == QuantityKind.NUMBER;
            return ohms ? Optional.of(Quantity.of(kind, v)) : Optional.empty();
        }
        if (value.kind() == QuantityKind.NUMBER) {
            return Optional.of(Quantity.of(kind, Math.abs(v) > LARGEST_DROP ? v / 1000 : v));
        }
        boolean volts = value.kind() == QuantityKind.VOLTAGE_DC && (!word.equalsIgnoreCase("diode") || Math.abs(v) <= LARGEST_TEST);
        return volts ? Optional.of(Quantity.of(kind, v)) : Optional.empty();
    }
}
