// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.trace;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.LabelKind;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.NetLabel;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.PartUnit;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.partbook.PartType;
import org.probeleaf.schematic.partbook.PinRole;
import org.probeleaf.schematic.partbook.PinType;

/**
 * A netlist made by chance, the same for a seed, in the proportions of a large digital board: a sixth of the parts are
 * chips of the part book, with their supplies, a clock that goes everywhere, buses, and gates in chains; the others are
 * resistors (in series and to the supply), capacitors (mostly across the supply), diodes, transistors, connectors and
 * test points.
 */
public final class MadeBoard {

    private static final List<String> GATES = List.of("74LS00", "74LS04", "74LS08", "74LS32", "74LS74", "74LS138", "74LS157",
            "74LS161", "74LS244", "74LS245", "74LS374", "27C128", "6116");
    private static final int BUSES = 64;
    private static final int NEAR = 40;
    private static final String CLOCK = "CLK";

    private final Random random;
    private final Map<String, Net> nets = new LinkedHashMap<>();
    private final List<Part> parts = new ArrayList<>();
    private final List<String> signals = new ArrayList<>();

    private MadeBoard(long seed) {
        this.random = new Random(seed);
    }

    /**
     * Makes a netlist.
     *
     * @param parts how many parts it has
     * @param seed  what chance starts from
     */
    public static Netlist of(int parts, long seed) {
        MadeBoard board = new MadeBoard(seed);
        board.signals.add(board.net(CLOCK));
        for (int i = 0; i < parts; i++) {
            board.add(i);
        }
        return new Netlist("made.pdf", "", List.of(), board.parts, List.copyOf(board.nets.values()), List.of());
    }

    private void add(int i) {
        int kind = random.nextInt(60);
        if (kind < 10) {
            chip("IC" + i, GATES.get(random.nextInt(GATES.size())));
        } else if (kind < 34) {
            two("R" + i, "4k7", near(), random.nextInt(3) == 0 ? "+5V" : fresh());
        } else if (kind < 52) {
            boolean supply = random.nextInt(4) > 0;
            two("C" + i, "100n", supply ? "+5V" : near(), supply ? "GND" : fresh());
        } else if (kind < 54) {
            part("D" + i, "1N4148", List.of("A", near(), "K", fresh()));
        } else if (kind < 56) {
            part("Q" + i, "BC548", List.of("B", near(), "C", fresh(), "E", "GND"));
        } else if (kind < 57) {
            two("J" + i, "PORT", near(), near());
        } else {
            part("TP" + i, null, List.of("1", near()));
        }
    }

    private void chip(String ref, String value) {
        PartType type = PartBook.standard().find(value).orElseThrow();
        List<String> pins = new ArrayList<>();
        int bus = random.nextInt(BUSES / 8) * 8;
        int line = 0;
        for (PinType pin : type.pins()) {
            String net = switch (pin.role()) {
                case SUPPLY -> "+5V";
                case GROUND -> "GND";
                case OUT, OPEN_COLLECTOR -> fresh();
                case THREE_STATE, BIDIR -> net("BUS" + (bus + line++ % 8));
                default -> pin.role() == PinRole.IN && String.valueOf(pin.name()).endsWith("CLK") ? CLOCK : near();
            };
            pins.add(pin.number());
            pins.add(net);
        }
        part(ref, value, pins);
    }

    private void two(String ref, String value, String a, String b) {
        part(ref, value, List.of("1", a, "2", b));
    }

    private void part(String ref, String value, List<String> numbersAndNets) {
        int row = parts.size();
        List<Pin> pins = new ArrayList<>();
        for (int i = 0; i < numbersAndNets.size(); i += 2) {
            pins.add(Pin.drawn(numbersAndNets.get(i), null, null, 1, new Point(10 * i, 20 * row),
                    net(numbersAndNets.get(i + 1))));
        }
        parts.add(new Part(ref, value, List.of(new PartUnit(null, 1, new Box(0, 20 * row, 1, 20 * row + 1))), pins));
    }

    /** A signal that has come up lately, or now and then the clock. */
    private String near() {
        return random.nextInt(NEAR) == 0 ? CLOCK
                : signals.get(Math.max(0, signals.size() - 1 - random.nextInt(NEAR)));
    }

    private String fresh() {
        String net = net("N" + nets.size());
        signals.add(net);
        return net;
    }

    private String net(String id) {
        boolean supply = id.equals("GND") || id.equals("+5V");
        nets.computeIfAbsent(id, n -> new Net(n, n.matches("N\\d+") ? null : n, List.of(1), List.of(), List.of(), supply
                ? List.of(new NetLabel(n, 1, new Point(-100, 0), LabelKind.POWER)) : List.of(), 1));
        return id;
    }
}
