// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.name;

import java.util.regex.Pattern;

import org.probeleaf.recognition.symbol.Body;

/** Which texts can be names of nets, by their form alone; values, types and remarks stand beside lines too. */
public final class NetNames {

    /** Values: {@code 4k7}, {@code 100n}, {@code 2.2uF}, {@code 10uF/6.3V}, {@code 8.2K/1%}, {@code 32.768kHz}. */
    private static final Pattern VALUE = Pattern.compile(
            "\\d+(?:[.,]\\d+)?\\s?(?:[kKMRrUuNnPpGgmμµ]\\d*)?(?:[FfHhRWAΩ]|ohms?|Hz)?\\d*(?:[/%].*)?");
    /** Types: {@code 1N5819}, {@code 2N3904}, {@code BSS138PS}, {@code 74LS04}. */
    private static final Pattern TYPE = Pattern.compile(
            "\\d[A-Z]{1,2}\\d{3,}.*|\\d{2}[A-Z]{1,5}\\d{2,}.*|[A-Z]{2,4}\\d{3,}[A-Z]*(?:[-/].*)?|[A-Z]\\d[A-Z]-\\d{3,}");
    /** Remarks on fitting, and multiples of a pin. */
    private static final Pattern REMARK = Pattern.compile("(?i)NA|N/A|NC|NF|DNF|DNP|DNI|TBD|.*\\*\\d+");
    /** A name with a range of members, which names a bus: {@code D[0..7]}, {@code A[15:0]}, {@code D0-D7}. */
    private static final Pattern RANGE = Pattern.compile(
            ".*[\\[(<{]\\d+(?:\\.\\.|:|-)\\d+[\\])>}].*|(\\p{L}+)\\d+(?:-|\\.\\.+)\\1?\\d+");
    /** Names that only supplies have. */
    private static final Pattern SUPPLY = Pattern.compile("(?i).*GND.*|[AD]?V(CC|DD|SS|EE|BB|PP|BAT|BUS|IN|REF)"
            + "[A-Z0-9_]*|[+-]?\\d+(\\.\\d+)?V\\d*(_[A-Z0-9]+)?|[+-]\\d+(\\.\\d+)?|0");
    /** What is written at marks for rule checkers. */
    private static final Pattern FLAG = Pattern.compile("(?i)(?:PWR|POWER)[_ -]?FLAG\\d*");
    /** Designators of parts that no net is named like. */
    private static final Pattern PART = Pattern.compile("(?:R|C|L|U|IC|Q|TP)\\d+[A-Z]?");

    private NetNames() {
    }

    /** Whether the text can be a net's name: one word, not long, with a letter in it or a supply's figure. */
    static boolean isName(String text) {
        return text.length() <= 32 && !text.matches(".*[ =?].*") && (text.matches(".*\\p{L}.*") || isSupply(text))
                && !VALUE.matcher(text).matches() && !REMARK.matcher(text).matches()
                && !text.matches("\\d[A-Z]\\d{3,}.*");
    }

    /** Whether a symbol is the cross at a pin that is meant to stay unconnected. */
    public static boolean isCross(Body body) {
        return Shapes.isCross(body);
    }

    /** Whether the text names a range of nets. */
    static boolean isRange(String text) {
        return RANGE.matcher(text).matches();
    }

    /** Whether the text can only be the name of a supply. */
    public static boolean isSupply(String text) {
        return SUPPLY.matcher(text).matches();
    }

    /** Whether the text says that a net is supplied, without saying which net it is. */
    public static boolean isFlag(String text) {
        return FLAG.matcher(text).matches();
    }

    /** Whether the text can be the name at a symbol that looks like a supply. */
    static boolean maySupply(String text) {
        return isSupply(text) || isName(text) && !TYPE.matcher(text).matches() && !PART.matcher(text).matches();
    }

    /** Whether the text can be the name in a flag. */
    static boolean mayFlag(String text) {
        return isName(text) && !PART.matcher(text).matches();
    }
}
