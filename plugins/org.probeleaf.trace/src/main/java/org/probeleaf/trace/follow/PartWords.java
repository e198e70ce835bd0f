// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.follow;

import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.partbook.PartClass;
import org.probeleaf.schematic.partbook.UnitType;
import org.probeleaf.schematic.quantity.BenchValue;
import org.probeleaf.schematic.quantity.QuantityKind;
import org.probeleaf.trace.TracedPin;

/** What to call parts, sections and pins in a reason. */
final class PartWords {

    private static final String ACTIVE_LOW = "_n";

    private PartWords() {
    }

    /** {@code IC3 (74LS32)}; the designator alone where the sheet prints no value. */
    static String part(Part part) {
        return part.value() == null ? part.ref() : part.ref() + " (" + part.value() + ")";
    }

    /** A value as it is written in full: {@code 33} of a resistor is {@code 33 Ω}; others as printed; null for none. */
    static String value(Part part, PartClass kind) {
        QuantityKind quantity = kind == PartClass.RESISTOR ? QuantityKind.RESISTANCE
                : kind == PartClass.CAPACITOR ? QuantityKind.CAPACITANCE : null;
        if (part.value() == null || quantity == null) {
            return part.value();
        }
        try {
            BenchValue value = BenchValue.parse(part.value(), quantity);
            return value.quantity().kind() != quantity ? part.value()
                    : (value.quantity().text() + " " + value.remark()).strip();
        } catch (IllegalArgumentException e) {
            return part.value();
        }
    }

    /** {@code pin 3 (1Y)}; {@code pin K}; {@code its pin} where the sheet prints nothing. */
    static String pin(TracedPin pin) {
        if (pin.pin().number() == null) {
            return pin.name() == null ? "its pin" : "pin " + pin.name();
        }
        return "pin " + pin.pin().number() + (pin.name() == null || pin.name().equals(pin.pin().number()) ? ""
                : " (" + pin.name() + ")");
    }

    /** {@code pin 3}, without its name. */
    static String shortPin(TracedPin pin) {
        String label = pin.pin().label();
        return label.equals("?") ? "its pin" : "pin " + label;
    }

    /**
     * {@code gate A of IC3 (74LS32, OR)}, {@code decoder IC4 (74LS138)}, {@code flip-flop B of IC12 (74LS74)}.
     *
     * @param several whether the chip has other sections
     */
    static String section(TracedPin pin, UnitType unit, boolean several) {
        Part part = pin.part();
        String letter = pin.pin().unit() != null ? pin.pin().unit() : unit.name();
        String what = function(unit);
        String of = several ? what + " " + letter + " of " + part.ref() : what + " " + part.ref();
        String gate = what.equals("gate") ? ", " + unit.function() : "";
        return of + (part.value() == null ? gate.isEmpty() ? "" : " (" + unit.function() + ")"
                : " (" + part.value() + gate + ")");
    }

    private static String function(UnitType unit) {
        String f = unit.function();
        int end = 0;
        while (end < f.length() && Character.isLetter(f.charAt(end))) {
            end++;
        }
        return switch (f.substring(0, end)) {
            case "NOT" -> "inverter";
            case "BUF" -> "buffer";
            case "DFF", "JKFF", "TFF", "SRFF" -> "flip-flop";
            case "LATCH" -> "latch";
            case "XCVR" -> "transceiver";
            case "COUNTER" -> "counter";
            case "DECODE" -> "decoder";
            case "MUX" -> "multiplexer";
            case "PISO", "SIPO", "SISO" -> "shift register";
            case "MONOSTABLE" -> "monostable";
            case "AND", "OR", "NAND", "NOR", "XOR", "XNOR" -> "gate";
            default -> "section";
        };
    }

    /** What a control pin of a section is: {@code clock}, {@code output enable}. */
    static String control(String word) {
        return switch (word.endsWith(ACTIVE_LOW) ? word.substring(0, word.length() - ACTIVE_LOW.length()) : word) {
            case "clk" -> "clock";
            case "clr" -> "clear";
            case "pre" -> "preset";
            case "en" -> "enable";
            case "oe" -> "output enable";
            case "sel" -> "select";
            case "le" -> "latch enable";
            case "load" -> "load";
            case "dir" -> "direction";
            case "reset" -> "reset";
            case "clk_inhibit" -> "clock inhibit";
            default -> word;
        };
    }

    /** What a part is by its class, for a reason: {@code resistor}, {@code diode}. */
    static String kind(PartClass kind) {
        return switch (kind) {
            case PROTECTION -> "fuse or breaker";
            case NETWORK -> "network";
            case SWITCH -> "switch";
            case FILTER -> "filter";
            case INDICATOR -> "lamp";
            case TRANSDUCER -> "transducer";
            case ELECTROMECHANICAL -> "motor, buzzer or the like";
            case SOURCE -> "source";
            case CRYSTAL -> "crystal";
            case AMBIGUOUS, UNKNOWN, OTHER -> "part";
            default -> kind.name().toLowerCase(java.util.Locale.ROOT);
        };
    }
}
