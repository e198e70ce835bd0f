// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.name;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How reference designators are written. Class letters after ASME Y14.44 and IEEE 315 clause 22.4 with those that
 * practice adds; a trailing letter, or a number after a mark, names a unit of the part.
 */
public final class DesignatorGrammar {

    private static final Set<String> CLASS_LETTERS = Set.of("AR", "B", "BT", "BR", "BZ", "BUZ", "C", "CN", "CON",
            "CR", "CT", "D", "DL", "DS", "DZ", "F", "FB", "FET", "FL", "FU", "G", "H", "IC", "J", "JP", "JMP", "K",
            "L", "LD", "LED", "LK", "LS", "M", "MP", "N", "OK", "OP", "P", "PL", "POT", "PS", "Q", "QZ", "R", "RA",
            "RFID", "RL", "RLY", "RM", "RN", "RP", "RR", "RV", "S", "SB", "SK", "SP", "SW", "T", "TB", "TC", "TH", "TP",
            "TR", "TVS", "U", "V", "VD", "VR", "VT", "W", "X", "XT", "XTAL", "Y", "ZD");

    private static final Pattern FORM = Pattern.compile(
            "([A-Z0-9]*[A-Z](?:[A-Z0-9_+]*[A-Z_])?)(\\d{1,4})(?:([A-Z]\\d?)|[-:/.]([A-Z]|\\d{1,2}))?");

    /** Values in the letter code of IEC 60062 ({@code 4K7}), pins of a grid ({@code B12A1}), inputs and outputs. */
    private static final Pattern NO_DESIGNATOR = Pattern.compile(
            "\\d+[KMRUNPVF]\\d+|(?:[A-H]\\d+){2,}|G?P?IO\\d+|\\d{2,}[A-Z]{1,5}\\d+[A-Z]*|\\d+V\\d*|[A-Z]+\\d{2,}[A-Z]+\\d+");

    private DesignatorGrammar() {
    }

    /**
     * A designator taken apart.
     *
     * @param ref    without the unit
     * @param unit   the unit, or null
     * @param strong whether its letters are a known class of part
     */
    public record Designator(String ref, String unit, boolean strong) {
    }

    /** The text as a designator, or null where it has not the form of one. */
    public static Designator parse(String text) {
        Matcher m = FORM.matcher(text.strip());
        if (!m.matches() || NO_DESIGNATOR.matcher(text.strip()).matches()) {
            return null;
        }
        String unit = m.group(3) != null ? m.group(3) : m.group(4);
        boolean strong = CLASS_LETTERS.contains(m.group(1).toUpperCase(Locale.ROOT));
        if (!strong && m.group(2).length() > 2) {
            // Long numbers behind other letters are types: BC548, 1N4148.
            return null;
        }
        return new Designator(m.group(1) + m.group(2), unit, strong);
    }

    /** The class letters of a designator: all before its closing number. */
    public static String letters(String ref) {
        return ref.replaceAll("\\d+[A-Z]?$", "");
    }
}
