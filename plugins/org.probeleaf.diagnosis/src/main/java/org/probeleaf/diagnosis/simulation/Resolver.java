// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.simulation;

import java.util.Set;

import org.probeleaf.diagnosis.circuit.Cell;
import org.probeleaf.diagnosis.circuit.Circuit;
import org.probeleaf.diagnosis.circuit.Level;
import org.probeleaf.diagnosis.circuit.Node;
import org.probeleaf.diagnosis.circuit.Terminal;
import org.probeleaf.diagnosis.simulation.Simulator.State;

/**
 * What a node has by what drives it. Where levels are known they decide. Where they are not, doubt is passed on: whole
 * through a part with one input, less through a gate whose other inputs may hold it back, least through a part of which
 * nothing is known.
 */
final class Resolver {

    /** How likely a wrong input shows at the output of a gate with several. */
    private static final double THROUGH_GATE = 0.4;
    /** How likely a wrong input shows at one output of a part whose function is not known. */
    private static final double THROUGH_UNKNOWN = 0.1;
    /** How likely a node without a level that is right is on the wrong one. */
    private static final double EVEN = 0.5;

    private static final Set<String> PLAIN = Set.of("AND", "NAND", "OR", "NOR", "XOR", "XNOR", "NOT", "BUF", "MUX2",
            "DECODE2", "DECODE3");

    private final Circuit circuit;
    private final Wired[] cells;
    private final Wired[][] drivers;
    private final int[] level;
    private final double[] bad;
    private final int[] expected;

    private double doubt;
    private boolean lost;

    Resolver(Circuit circuit, int[] level, double[] bad, int[] expected) {
        this.circuit = circuit;
        this.cells = circuit.cells().stream().map(Wired::new).toArray(Wired[]::new);
        this.drivers = circuit.nodes().stream().map(n -> n.drivers().stream().map(d -> cells[d]).toArray(Wired[]::new))
                .toArray(Wired[][]::new);
        this.level = level;
        this.bad = bad;
        this.expected = expected;
    }

    /** A cell with what is asked of it most in arrays. */
    private static final class Wired {

        final Cell cell;
        final int part;
        final int out;
        final boolean pull;
        final boolean collector;
        final int[] nodes;
        final int[] terminals;
        final int[] power;
        final double through;
        final int[] levels;
        /** A gate whose output is open only because of inputs that are: one alone shows for certain. */
        final boolean plain;

        Wired(Cell cell) {
            this.cell = cell;
            this.part = cell.part();
            this.out = cell.out().index();
            this.pull = cell.kind() == Cell.Kind.PULL;
            this.collector = cell.kind() == Cell.Kind.OPEN_COLLECTOR;
            this.nodes = cell.in().stream().mapToInt(t -> t == null ? -1 : t.node()).toArray();
            this.terminals = cell.in().stream().mapToInt(t -> t == null ? -1 : t.index()).toArray();
            this.power = cell.power().stream().mapToInt(Terminal::node).distinct().toArray();
            this.through = cell.transparent() ? 1 : cell.function() == null ? THROUGH_UNKNOWN : THROUGH_GATE;
            this.levels = new int[nodes.length];
            this.plain = cell.function() != null && PLAIN.contains(cell.function());
        }
    }

    State state(int index, Effect effect, Evidence evidence) {
        Node node = circuit.nodes().get(index);
        if (effect instanceof Effect.Force f && f.node() == index) {
            return judged(index, f.level(), 1);
        }
        if (evidence.isGiven(index)) {
            return judged(index, evidence.level(index), 0);
        }
        if (node.rail() && !evidence.isSeen(index)) {
            return new State(node.level(), 0);
        }
        if (effect instanceof Effect.Bridge b && (b.a() == index || b.b() == index)) {
            return bridged(index, b, evidence);
        }
        int driven = driven(node, effect);
        return judged(index, driven, doubt);
    }

    /** Where levels fight, low wins: outputs pull down harder than up in most families. */
    private State bridged(int index, Effect.Bridge bridge, Evidence evidence) {
        int other = bridge.a() == index ? bridge.b() : bridge.a();
        int mine = driven(circuit.nodes().get(index), null);
        double doubtMine = doubt;
        int theirs = evidence.isGiven(other) ? evidence.level(other) : driven(circuit.nodes().get(other), null);
        int both = mine == theirs ? mine : mine == Level.LOW || theirs == Level.LOW ? Level.LOW : Level.UNKNOWN;
        return judged(index, both, Level.known(mine) && mine == both ? Math.max(doubtMine, EVEN) : 1);
    }

    private State judged(int index, int is, double doubted) {
        int due = expected[index];
        if (Level.known(due) && Level.known(is)) {
            return new State(is, due == is ? 0 : 1);
        }
        return new State(is, doubted);
    }

    /** The level by the cells that drive a node; sets {@link #doubt}. */
    private int driven(Node node, Effect effect) {
        int active = Level.OFF;
        int pull = Level.OFF;
        double most = 0;
        double pullDoubt = 0;
        boolean gone = false;
        boolean weak = true;
        for (Wired cell : drivers[node.index()]) {
            int out = output(cell, effect);
            gone |= lost;
            if (cell.pull) {
                pull = meet(pull, out);
                pullDoubt = Math.max(pullDoubt, doubt);
            } else {
                active = meet(active, out);
                most = Math.max(most, doubt);
                weak &= cell.collector;
            }
        }
        if (active == Level.OFF) {
            doubt = Math.max(Math.max(most, pullDoubt), gone ? 1 : 0);
            return pull == Level.OFF ? Level.UNKNOWN : pull;
        }
        doubt = weak ? Math.max(most, pullDoubt) : most;
        return active;
    }

    private static int meet(int a, int b) {
        return a == Level.OFF || a == b ? b : b == Level.OFF ? a : Level.UNKNOWN;
    }

    /** What a cell gives; sets {@link #doubt} and whether it is {@link #lost}. */
    private int output(Wired cell, Effect effect) {
        lost = false;
        if (effect instanceof Effect.Off off && off.terminal() == cell.out) {
            doubt = 0;
            lost = true;
            return Level.OFF;
        }
        if (effect instanceof Effect.Broken broken && broken.part() == cell.part) {
            doubt = 1;
            return Level.UNKNOWN;
        }
        int seen = effect instanceof Effect.Sees sees ? sees.terminal() : -2;
        double most = 0;
        for (int i = 0; i < cell.nodes.length; i++) {
            int node = cell.nodes[i];
            if (node < 0) {
                cell.levels[i] = Level.UNKNOWN;
            } else if (cell.terminals[i] == seen) {
                cell.levels[i] = ((Effect.Sees) effect).level();
                most = Level.known(expected[node]) && expected[node] == cell.levels[i] ? most : 1;
            } else {
                cell.levels[i] = level[node];
                most = Math.max(most, bad[node]);
            }
        }
        int out = cell.cell.logic().drive(cell.levels);
        boolean shows = cell.plain && out == Level.UNKNOWN && wrongIsOpen(cell, seen);
        doubt = out == Level.OFF ? 0 : shows ? most : most * cell.through;
        for (int node : cell.power) {
            if (bad[node] > 0) {
                doubt = Math.max(doubt, bad[node]);
                out = Level.UNKNOWN;
            }
        }
        return out;
    }

    /** Whether one input alone is open, and that is what may be wrong. */
    private boolean wrongIsOpen(Wired cell, int seen) {
        int open = -1;
        for (int i = 0; i < cell.levels.length; i++) {
            if (!Level.known(cell.levels[i])) {
                if (open >= 0) {
                    return false;
                }
                open = i;
            }
        }
        return open >= 0 && cell.nodes[open] >= 0 && (cell.terminals[open] == seen || bad[cell.nodes[open]] > 0);
    }
}
