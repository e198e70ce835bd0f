// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.quantity;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What stands behind a number: a prefix, a unit, or both in one word ({@code k}, {@code mV}, {@code Vrms}).
 *
 * @param exponent power of ten of the prefix, 0 without one
 * @param kind     what the unit says, or null without a unit
 * @param exact    whether the kind is certain; {@code V} alone is not, it may be AC
 */
record Suffix(int exponent, QuantityKind kind, boolean exact) {

    private static final Map<String, Integer> PREFIXES = new LinkedHashMap<>();
    private static final Map<String, QuantityKind> UNITS = new LinkedHashMap<>();

    static {
        for (String mega : new String[] {"meg", "Meg", "MEG"}) {
            PREFIXES.put(mega, 6);
        }
        putAll(-12, "p", "P");
        putAll(-9, "n", "N");
        putAll(-6, "u", "U", "\u00b5", "\u03bc");
        putAll(-3, "m");
        putAll(3, "k", "K");
        putAll(6, "M");
        putAll(9, "G");
        putAll(12, "T");
        PREFIXES.put("", 0);
        units(QuantityKind.VOLTAGE_DC, "V", "v", "volt", "volts", "Volt", "Volts", "Vdc", "VDC", "vdc");
        units(QuantityKind.VOLTAGE_AC, "Vac", "VAC", "vac", "V~", "Vrms", "VRMS", "vrms", "Veff");
        units(QuantityKind.VOLTAGE_PP, "Vpp", "VPP", "vpp", "Vp-p", "Vpk-pk");
        units(QuantityKind.VOLTAGE_PEAK, "Vp", "Vpk", "VPK", "vpk", "Vpeak");
        units(QuantityKind.CURRENT, "A", "a", "amp", "amps", "Amp", "Amps");
        units(QuantityKind.RESISTANCE, "\u03a9", "\u2126", "ohm", "ohms", "Ohm", "Ohms", "OHM", "R", "r");
        units(QuantityKind.CAPACITANCE, "F", "f", "farad", "Farad");
        units(QuantityKind.FREQUENCY, "Hz", "hz", "HZ", "hertz", "Hertz");
        units(QuantityKind.TIME, "s", "S", "sec", "secs");
        units(QuantityKind.TEMPERATURE, "\u00b0C", "\u00b0", "degC", "deg", "degs", "degree", "degrees", "C", "celsius", "Celsius");
    }

    private static void putAll(int exponent, String... prefixes) {
        for (String p : prefixes) {
            PREFIXES.put(p, exponent);
        }
    }

    private static void units(QuantityKind kind, String... spellings) {
        for (String s : spellings) {
            UNITS.put(s, kind);
        }
    }

    /**
     * Reads a word right behind the number.
     *
     * @return what it says, or empty where it is no prefix and no unit
     */
    static Optional<Suffix> attached(String word) {
        if (word.equalsIgnoreCase("mfd") || word.equalsIgnoreCase("mmfd")) {
            // Old sheets: mfd is a microfarad, mmfd a picofarad.
            return Optional.of(new Suffix(word.length() == 3 ? -6 : -12, QuantityKind.CAPACITANCE, true));
        }
        for (Map.Entry<String, Integer> prefix : PREFIXES.entrySet()) {
            if (!word.startsWith(prefix.getKey())) {
                continue;
            }
            String unit = word.substring(prefix.getKey().length());
            if (unit.isEmpty() && !prefix.getKey().isEmpty()) {
                return Optional.of(new Suffix(prefix.getValue(), null, false));
            }
            QuantityKind kind = UNITS.get(unit);
            if (kind != null && !(kind == QuantityKind.TEMPERATURE && !prefix.getKey().isEmpty())) {
                return Optional.of(new Suffix(exponent(prefix, unit), kind, !isPlainVolt(unit)));
            }
        }
        return Optional.empty();
    }

    /**
     * Reads a word that a space parts from the number; single letters that are words of the language do not count.
     *
     * @return what it says, or empty where it is part of a remark
     */
    static Optional<Suffix> apart(String word) {
        return switch (word) {
            case "a", "f", "m", "r", "S", "P", "N", "U", "T" -> Optional.empty();
            default -> attached(word);
        };
    }

    private static int exponent(Map.Entry<String, Integer> prefix, String unit) {
        boolean hastyMega = prefix.getKey().equals("m") && (unit.equals("hz") || unit.equals("HZ"));
        return hastyMega ? 6 : prefix.getValue();
    }

    private static boolean isPlainVolt(String unit) {
        return unit.equalsIgnoreCase("V") || unit.toLowerCase(Locale.ROOT).startsWith("volt");
    }
}
