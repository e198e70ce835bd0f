// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.quantity;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A value with a letter in the place of the decimal point, as IEC 60062 codes resistances and capacitances
 * ({@code 4R7}, {@code 3k3}, {@code R47}, {@code 4n7}) and people write voltages and currents ({@code 0V6},
 * {@code 1A5}). A tolerance letter may follow ({@code 4K7J}).
 *
 * @param number    the number with the letter's power of ten applied
 * @param kind      what the letter says
 * @param exact     whether the letter leaves no other kind; {@code k} does, a unit may follow
 * @param tolerance as text ({@code "\u00b15%"}), or empty
 * @param end       where in the text the code ends
 */
record LetterCode(BigDecimal number, QuantityKind kind, boolean exact, String tolerance, int end) {

    private static final Pattern CODE = Pattern.compile(
            "([+-]?)(?:(\\d+)([RKkMGTLVAmpnu\u00b5\u03bc])(\\d+)|([RpnuVm\u00b5\u03bc])(\\d+)|(\\d+)(R)(?=[FGJKM](?![\\p{L}\\d])))"
                    + "([FGJKM](?![\\p{L}\\d]))?");
    private static final Map<String, String> TOLERANCES = Map.of("F", "\u00b11%", "G", "\u00b12%", "J", "\u00b15%",
            "K", "\u00b110%", "M", "\u00b120%");

    /** Reads a code at the start of a text. */
    static Optional<LetterCode> at(String text) {
        Matcher m = CODE.matcher(text);
        if (!m.lookingAt()) {
            return Optional.empty();
        }
        String whole = m.group(2) != null ? m.group(2) : m.group(7) != null ? m.group(7) : "0";
        String letter = m.group(3) != null ? m.group(3) : m.group(5) != null ? m.group(5) : m.group(8);
        String fraction = m.group(4) != null ? m.group(4) : m.group(6) != null ? m.group(6) : "0";
        BigDecimal number = new BigDecimal(m.group(1) + whole + "." + fraction).movePointRight(exponent(letter));
        String tolerance = m.group(9) == null ? "" : TOLERANCES.get(m.group(9));
        boolean exact = "RVAL".contains(letter) && !"V".equals(letter);
        return Optional.of(new LetterCode(number, kind(letter), exact, tolerance, m.end()));
    }

    private static int exponent(String letter) {
        return switch (letter) {
            case "K", "k" -> 3;
            case "M" -> 6;
            case "G" -> 9;
            case "T" -> 12;
            case "L", "m" -> -3;
            case "u", "\u00b5", "\u03bc" -> -6;
            case "n" -> -9;
            case "p" -> -12;
            default -> 0;
        };
    }

    private static QuantityKind kind(String letter) {
        return switch (letter) {
            case "V" -> QuantityKind.VOLTAGE_DC;
            case "A" -> QuantityKind.CURRENT;
            case "u", "\u00b5", "\u03bc", "n", "p" -> QuantityKind.CAPACITANCE;
            case "m" -> QuantityKind.NUMBER;
            default -> QuantityKind.RESISTANCE;
        };
    }
}
