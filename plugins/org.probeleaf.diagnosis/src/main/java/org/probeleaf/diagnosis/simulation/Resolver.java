// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.simulation;

import java.util.List;

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
    private static final double THROUGH_GATE = 0.7;
    /** How likely a wrong input shows at one output of a part whose function is not known. */
    private static final double THROUGH_UNKNOWN = 0.1;
    /** How likely a node without a level that is right is on the wrong one. */
    private static final double EVEN = 0.5;

    private final Circuit circuit;
    private final int[] level;
    private final double[] bad;
    private final int[] expected;

    private double doubt;
    private boolean lost;

    Resolver(Circuit circuit, int[] level, double[] bad, int[] expected) {
        this.circuit = circuit;
        this.level = level;
        this.bad = bad;
        this.expected = expected;
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
        return new State(is, Level.known(due) ? Math.min(doubted, EVEN) : doubted);
    }

    /** The level by the cells that drive a node; sets {@link #doubt}. */
    private int driven(Node node, Effect effect) {
        int active = Level.OFF;
        int pull = Level.OFF;
        double most = 0;
        double pullDoubt = 0;
        boolean gone = false;
        boolean weak = true;
        for (int index : node.drivers()) {
            Cell cell = circuit.cells().get(index);
            int out = output(cell, effect);
            gone |= lost;
            if (cell.kind() == Cell.Kind.PULL) {
                pull = meet(pull, out);
                pullDoubt = Math.max(pullDoubt, doubt);
            } else {
                active = meet(active, out);
                most = Math.max(most, doubt);
                weak &= cell.kind() == Cell.Kind.OPEN_COLLECTOR;
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
    private int output(Cell cell, Effect effect) {
        lost = false;
        if (effect instanceof Effect.Off off && off.terminal() == cell.out().index()) {
            doubt = 0;
            lost = true;
            return Level.OFF;
        }
        if (effect instanceof Effect.Broken broken && broken.part() == cell.part()) {
            doubt = 1;
            return Level.UNKNOWN;
        }
        List<Terminal> in = cell.in();
        int[] levels = new int[in.size()];
        double through = cell.transparent() ? 1 : cell.function() == null ? THROUGH_UNKNOWN : THROUGH_GATE;
        double most = 0;
        for (int i = 0; i < levels.length; i++) {
            Terminal t = in.get(i);
            if (t == null) {
                levels[i] = Level.UNKNOWN;
            } else if (effect instanceof Effect.Sees sees && sees.terminal() == t.index()) {
                levels[i] = sees.level();
                int due = expected[t.node()];
                most = Math.max(most, Level.known(due) ? due == sees.level() ? 0 : EVEN * 2 : 1);
            } else {
                levels[i] = level[t.node()];
                most = Math.max(most, bad[t.node()]);
            }
        }
        int out = cell.logic().drive(levels);
        doubt = out == Level.OFF ? 0 : most * through;
        for (Terminal t : cell.power()) {
            if (bad[t.node()] > 0) {
                doubt = Math.max(doubt, bad[t.node()]);
                out = Level.UNKNOWN;
            }
        }
        return out;
    }
}
