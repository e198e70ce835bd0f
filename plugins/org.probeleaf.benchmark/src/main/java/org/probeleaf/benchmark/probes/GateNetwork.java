// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.probes;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.PartUnit;
import org.probeleaf.schematic.netlist.Pin;

/**
 * A network of gates, each a part of its own. Signals are numbered: the inputs first, then the outputs of the gates in
 * an order in which each comes after all that it needs.
 *
 * @param inputs how many inputs there are
 * @param gates  the gates in that order
 */
record GateNetwork(int inputs, List<Gate> gates) {

    GateNetwork {
        gates = List.copyOf(gates);
    }

    /**
     * A gate.
     *
     * @param kind what it is
     * @param in   the signals that it takes in
     */
    record Gate(GateKind kind, int[] in) {
    }

    /**
     * A single fault: a pin stuck at a level. Of an output that is its whole net; of an input only what its own gate
     * takes in.
     *
     * @param gate  number of the gate
     * @param input number of its input, or -1 for its output
     * @param high  the level
     */
    record Stuck(int gate, int input, boolean high) {
    }

    /**
     * A made network: gates of all kinds, most of which take in something new and something older, as where logic is
     * laid out in levels. What nothing takes in are the outputs.
     *
     * @param seed the same for the same network
     */
    static GateNetwork made(int inputs, int gates, long seed) {
        Random random = new Random(seed);
        List<GateKind> kinds = new ArrayList<>();
        for (int g = 0; g < gates; g++) {
            kinds.add(GateKind.values()[random.nextInt(GateKind.values().length)]);
        }
        return made(inputs, kinds, random);
    }

    /** A made network with a given number of exclusive ORs among its gates. */
    static GateNetwork made(int inputs, int gates, int exors, long seed) {
        Random random = new Random(seed);
        List<GateKind> kinds = new ArrayList<>(Collections.nCopies(exors, GateKind.XOR2));
        while (kinds.size() < gates) {
            kinds.add(GateKind.values()[random.nextInt(GateKind.XOR2.ordinal())]);
        }
        Collections.shuffle(kinds, random);
        return made(inputs, kinds, random);
    }

    private static GateNetwork made(int inputs, List<GateKind> kinds, Random random) {
        NetworkMaker maker = new NetworkMaker(inputs, random);
        kinds.forEach(maker::add);
        return new GateNetwork(inputs, maker.gates());
    }

    int signals() {
        return inputs + gates.size();
    }

    /** The signals that no gate takes in. */
    List<Integer> outputs() {
        boolean[] used = new boolean[signals()];
        gates.forEach(g -> {
            for (int s : g.in()) {
                used[s] = true;
            }
        });
        List<Integer> open = new ArrayList<>();
        for (int s = inputs; s < used.length; s++) {
            if (!used[s]) {
                open.add(s);
            }
        }
        return open;
    }

    /** The levels of all signals; {@code fault} may be null. */
    boolean[] levels(boolean[] given, Stuck fault) {
        boolean[] level = new boolean[signals()];
        System.arraycopy(given, 0, level, 0, inputs);
        for (int g = 0; g < gates.size(); g++) {
            Gate gate = gates.get(g);
            boolean[] in = new boolean[gate.in().length];
            for (int i = 0; i < in.length; i++) {
                in[i] = fault != null && fault.gate() == g && fault.input() == i ? fault.high() : level[gate.in()[i]];
            }
            boolean stuck = fault != null && fault.gate() == g && fault.input() < 0;
            level[inputs + g] = stuck ? fault.high() : gate.kind().output(in);
        }
        return level;
    }

    /** Every single stuck pin. */
    List<Stuck> faults() {
        List<Stuck> all = new ArrayList<>();
        for (int g = 0; g < gates.size(); g++) {
            for (int i = -1; i < gates.get(g).in().length; i++) {
                all.add(new Stuck(g, i, false));
                all.add(new Stuck(g, i, true));
            }
        }
        return all;
    }

    /** The designator of a gate's part. */
    static String ref(int gate) {
        return "U" + (gate + 1);
    }

    /** The id of a signal's net. */
    String net(int signal) {
        return signal < inputs ? "IN" + (signal + 1) : "S" + (signal - inputs + 1);
    }

    /** The network as a board; the inputs come over a connector. */
    Netlist board() {
        Map<String, Net> nets = new LinkedHashMap<>();
        for (int s = 0; s < signals(); s++) {
            nets.put(net(s), new Net(net(s), net(s), List.of(1), List.of(), List.of(), List.of(), 1));
        }
        List<Part> parts = new ArrayList<>();
        List<Pin> contacts = new ArrayList<>();
        for (int i = 0; i < inputs; i++) {
            contacts.add(pin(String.valueOf(i + 1), net(i), 0, i));
        }
        parts.add(part("J1", null, contacts));
        for (int g = 0; g < gates.size(); g++) {
            Gate gate = gates.get(g);
            List<Pin> pins = new ArrayList<>();
            for (int i = 0; i < gate.in().length; i++) {
                pins.add(pin(gate.kind().in().get(i), net(gate.in()[i]), g + 1, i));
            }
            pins.add(pin(gate.kind().out(), net(inputs + g), g + 1, gate.in().length));
            parts.add(part(ref(g), gate.kind().value(), pins));
        }
        return new Netlist("made.pdf", "", List.of(), parts, List.copyOf(nets.values()), List.of());
    }

    private static Pin pin(String number, String net, int row, int column) {
        return Pin.drawn(number, null, null, 1, new Point(20 * column, 20 * row), net);
    }

    private static Part part(String ref, String value, List<Pin> pins) {
        return new Part(ref, value, List.of(new PartUnit(null, 1, new Box(0, 0, 1, 1))), pins);
    }
}
