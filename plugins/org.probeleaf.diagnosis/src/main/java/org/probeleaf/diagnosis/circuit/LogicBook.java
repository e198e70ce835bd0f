// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.circuit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.probeleaf.schematic.partbook.UnitType;

/**
 * What the functions of the part book do, for steady levels. A function with a memory (flip-flop, counter, shift
 * register) is known only while a control holds it or a latch lets through; else its output is unknown. Truth tables:
 * those of the data sheets of the 74 series.
 */
final class LogicBook {

    private LogicBook() {
    }

    /**
     * The logic of one output.
     *
     * @param unit   of the part book
     * @param output index of the output in the unit
     * @param low    whether the output's name says that it is active low
     */
    static CellLogic of(UnitType unit, int output, boolean low) {
        Controls controls = new Controls(unit);
        int n = unit.inputs().size();
        CellLogic plain = switch (unit.function()) {
            case "AND" -> in -> and(in, n);
            case "NAND" -> in -> Level.not(and(in, n));
            case "OR" -> in -> or(in, n);
            case "NOR" -> in -> Level.not(or(in, n));
            case "XOR" -> in -> xor(in, n);
            case "XNOR" -> in -> Level.not(xor(in, n));
            case "NOT" -> in -> Level.not(in[0]);
            case "BUF" -> in -> in[0];
            case "DFF", "MONOSTABLE" -> in -> held(in, controls, output > 0 || low);
            case "LATCH" -> in -> controls.all(in, "le") == Level.HIGH ? in[0] : held(in, controls, low);
            case "MUX2" -> in -> choose(in[0], in[1], controls.all(in, "sel"));
            case "DECODE2", "DECODE3" -> in -> decoded(in, n, output, controls, low);
            default -> in -> held(in, controls, low);
        };
        return withEnables(plain, unit, controls);
    }

    /** Whether a unit with the function is known for steady levels, apart from a memory. */
    static boolean knows(UnitType unit) {
        return switch (unit.function()) {
            case "AND", "NAND", "OR", "NOR", "XOR", "XNOR", "NOT", "BUF", "MUX2", "DECODE2", "DECODE3", "LATCH", "DFF",
                    "XCVR" -> true;
            default -> false;
        };
    }

    /** One side of a transceiver: it drives while enabled and turned its way. */
    static CellLogic transceiver(UnitType unit, boolean forward) {
        Controls controls = new Controls(unit);
        return in -> {
            int dir = controls.all(in, "dir");
            int on = both(Level.not(controls.any(in, "oe_n")), forward ? dir : Level.not(dir));
            return on == Level.HIGH ? in[0] : on == Level.LOW ? Level.OFF : Level.UNKNOWN;
        };
    }

    /** What holds a memory fast: preset, clear, reset; else nobody knows its state. */
    private static int held(int[] in, Controls controls, boolean inverted) {
        boolean set = controls.all(in, "pre_n") == Level.LOW;
        boolean clear = controls.all(in, "clr_n") == Level.LOW
                || controls.has("reset") && controls.all(in, "reset") == Level.HIGH;
        if (set && clear) {
            // No use of it, but of the 7474 both outputs are high then.
            return Level.HIGH;
        }
        return set || clear ? set == inverted ? Level.LOW : Level.HIGH : Level.UNKNOWN;
    }

    private static CellLogic withEnables(CellLogic plain, UnitType unit, Controls controls) {
        boolean decoder = unit.function().startsWith("DECODE");
        if (unit.controls().containsKey("oe_n")) {
            return in -> {
                int off = controls.any(in, "oe_n");
                return off == Level.HIGH ? Level.OFF : off == Level.LOW ? plain.drive(in) : Level.UNKNOWN;
            };
        }
        if (unit.controls().containsKey("en_n") && !decoder) {
            return in -> both(plain.drive(in), Level.not(controls.any(in, "en_n")));
        }
        return plain;
    }

    private static int decoded(int[] in, int n, int output, Controls controls, boolean low) {
        int chosen = both(Level.not(controls.any(in, "en_n")), controls.all(in, "en"));
        for (int i = 0; i < n; i++) {
            chosen = both(chosen, (output >> i & 1) == 1 ? in[i] : Level.not(in[i]));
        }
        return low ? Level.not(chosen) : chosen;
    }

    private static int choose(int a, int b, int select) {
        return select == Level.LOW ? a : select == Level.HIGH ? b : a == b ? a : Level.UNKNOWN;
    }

    static int both(int a, int b) {
        return a == Level.LOW || b == Level.LOW ? Level.LOW
                : a == Level.HIGH && b == Level.HIGH ? Level.HIGH : Level.UNKNOWN;
    }

    private static int and(int[] in, int n) {
        int level = Level.HIGH;
        for (int i = 0; i < n; i++) {
            level = both(level, in[i]);
        }
        return level;
    }

    private static int or(int[] in, int n) {
        int level = Level.HIGH;
        for (int i = 0; i < n; i++) {
            level = both(level, Level.not(in[i]));
        }
        return Level.not(level);
    }

    private static int xor(int[] in, int n) {
        int level = Level.LOW;
        for (int i = 0; i < n; i++) {
            level = Level.known(level) && Level.known(in[i]) ? level ^ in[i] : Level.UNKNOWN;
        }
        return level;
    }

    /** The order of a cell's inputs: those of the unit, then its controls by name. */
    static List<String> inputs(UnitType unit) {
        List<String> pins = new ArrayList<>(unit.inputs());
        unit.controls().keySet().stream().filter(c -> !c.equals("rc")).sorted()
                .forEach(c -> pins.addAll(unit.controls().get(c)));
        return pins;
    }

    /** Where the controls stand among the inputs. */
    private static final class Controls {

        private final Map<String, int[]> at = new HashMap<>();

        Controls(UnitType unit) {
            int next = unit.inputs().size();
            for (String name : unit.controls().keySet().stream().filter(c -> !c.equals("rc")).sorted().toList()) {
                int[] places = new int[unit.controls().get(name).size()];
                for (int i = 0; i < places.length; i++) {
                    places[i] = next++;
                }
                at.put(name, places);
            }
        }

        boolean has(String name) {
            return at.containsKey(name);
        }

        /** High where all of them are, low where one is low; high where there is none. */
        int all(int[] in, String name) {
            int level = Level.HIGH;
            for (int i : at.getOrDefault(name, new int[0])) {
                level = both(level, in[i]);
            }
            return level;
        }

        /** High where one of them is, low where all are low; low where there is none. */
        int any(int[] in, String name) {
            int level = Level.HIGH;
            for (int i : at.getOrDefault(name, new int[0])) {
                level = both(level, Level.not(in[i]));
            }
            return Level.not(level);
        }
    }
}
