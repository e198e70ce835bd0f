// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.simulation;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

import org.probeleaf.diagnosis.circuit.Circuit;
import org.probeleaf.diagnosis.circuit.Level;
import org.probeleaf.diagnosis.circuit.Node;
import org.probeleaf.diagnosis.circuit.Terminal;
import org.probeleaf.diagnosis.simulation.Evidence.Sight;

/**
 * Works out levels and doubts of all nodes, first of the sound circuit, then of the circuit with one effect, where only
 * what changes is worked out anew. Not for several threads.
 */
public final class Simulator {

    /** How often a node may change in one run: loops of memories and buses settle, or are left as they are. */
    private static final int MOST_CHANGES = 12;
    /** A doubt below this is none. */
    private static final double LEAST = 0.05;

    private final Circuit circuit;
    private final Evidence evidence;
    private final int[] expected;
    private final int[] baseLevel;
    private final double[] baseBad;
    private final int[] level;
    private final double[] bad;
    private final int[] changes;
    private final boolean[] waiting;
    private final boolean[] touched;
    /** For each node those that it works on through one cell. */
    private final int[][] follows;
    private final Deque<Integer> queue = new ArrayDeque<>();
    private final List<Integer> touchedNodes = new ArrayList<>();
    private final Resolver resolver;

    /** Simulates the sound circuit. */
    public Simulator(Circuit circuit, Evidence evidence) {
        this.circuit = circuit;
        this.evidence = evidence;
        int n = circuit.nodes().size();
        this.expected = new int[n];
        java.util.Arrays.fill(expected, Level.UNKNOWN);
        this.level = new int[n];
        this.bad = new double[n];
        this.changes = new int[n];
        this.waiting = new boolean[n];
        this.touched = new boolean[n];
        this.follows = circuit.nodes().stream().map(node -> node.listeners().stream()
                .mapToInt(c -> circuit.cells().get(c).out().node()).distinct().toArray()).toArray(int[][]::new);
        this.resolver = new Resolver(circuit, level, bad, expected);
        settle(evidence.blind());
        System.arraycopy(level, 0, expected, 0, n);
        for (Node node : circuit.nodes()) {
            if (node.rail() && evidence.isSeen(node.index())) {
                // A supply may be bad in other ways than by a logic level.
                expected[node.index()] = Level.UNKNOWN;
            }
        }
        settle(evidence);
        this.baseLevel = level.clone();
        this.baseBad = bad.clone();
        for (int i = 0; i < n; i++) {
            if (evidence.isSeen(i)) {
                State derived = derive(i, null);
                baseLevel[i] = derived.level();
                baseBad[i] = derived.bad();
            }
        }
    }

    /**
     * A node's level and how likely something is wrong there.
     *
     * @param level as {@link Level} has it
     * @param bad   0 to 1
     */
    public record State(int level, double bad) {
    }

    /** What a sound board has at a node, as far as the held levels tell. */
    public int expected(int node) {
        return expected[node];
    }

    /** What a node would have by what drives it, with nothing broken from the last observed nodes on. */
    public State base(int node) {
        return new State(baseLevel[node], baseBad[node]);
    }

    /** Whether a node was seen to be bad without anybody knowing what should be there. */
    public boolean isDoubted(int node) {
        return evidence.at(node) == Sight.BAD && !Level.known(expected[node]);
    }

    /** How well a state agrees with what was seen at a node: 1 fully, 0 not at all. */
    public double agreement(int node, State state) {
        double likely = likely(node, state);
        return switch (evidence.at(node)) {
            case NOTHING -> 1;
            case BAD, HIGH -> likely;
            case GOOD, LOW -> 1 - likely;
        };
    }

    /** How likely a node in a state is seen bad, where good or bad was seen; high, where a level was. */
    public double likely(int node, State state) {
        if (evidence.at(node) == Sight.GOOD || evidence.at(node) == Sight.BAD) {
            return state.bad();
        }
        if (Level.known(state.level())) {
            return state.level() == Level.HIGH ? 1 : 0;
        }
        int due = expected[node];
        return !Level.known(due) ? 0.5 : due == Level.HIGH ? 1 - state.bad() : state.bad();
    }

    /** What an effect changes: the nodes and their states under it; observed nodes with what would drive them. */
    public Change run(Effect effect) {
        seeds(effect).forEach(this::enqueue);
        while (!queue.isEmpty()) {
            int node = queue.poll();
            waiting[node] = false;
            State state = derive(node, effect);
            boolean first = !touched[node];
            boolean same = state.level() == level[node] && Math.abs(state.bad() - bad[node]) < 1e-9;
            if (first) {
                touched[node] = true;
                touchedNodes.add(node);
            }
            if (evidence.isSeen(node)) {
                derived.put(node, state);
                if (isDoubted(node) && state.bad() > 0 && bad[node] == 0) {
                    bad[node] = 1;
                    follow(node);
                }
            } else if (!same && changes[node]++ < MOST_CHANGES) {
                level[node] = state.level();
                bad[node] = state.bad();
                follow(node);
            }
        }
        return collect();
    }

    private final java.util.Map<Integer, State> derived = new java.util.HashMap<>();

    private Change collect() {
        List<Integer> nodes = new ArrayList<>();
        List<State> states = new ArrayList<>();
        for (int node : touchedNodes) {
            State state = evidence.isSeen(node) ? derived.get(node) : new State(level[node], bad[node]);
            if (state.level() != baseLevel[node] || state.bad() != baseBad[node]) {
                nodes.add(node);
                states.add(state);
            }
            touched[node] = false;
            changes[node] = 0;
            if (!evidence.isSeen(node)) {
                level[node] = baseLevel[node];
                bad[node] = baseBad[node];
            } else if (isDoubted(node)) {
                bad[node] = 0;
            }
        }
        touchedNodes.clear();
        derived.clear();
        return new Change(nodes, states);
    }

    /** What an effect changes. */
    public record Change(List<Integer> nodes, List<State> states) {
    }

    private List<Integer> seeds(Effect effect) {
        if (effect instanceof Effect.Force f) {
            return List.of(f.node());
        } else if (effect instanceof Effect.Bridge b) {
            return List.of(b.a(), b.b());
        } else if (effect instanceof Effect.Off off) {
            return List.of(circuit.terminals().get(off.terminal()).node());
        } else if (effect instanceof Effect.Sees sees) {
            Terminal t = circuit.terminals().get(sees.terminal());
            return circuit.nodes().get(t.node()).listeners().stream().map(circuit.cells()::get)
                    .filter(c -> c.part() == t.part() && c.in().contains(t)).map(c -> c.out().node()).distinct().toList();
        }
        int part = ((Effect.Broken) effect).part();
        return circuit.cells().stream().filter(c -> c.part() == part).map(c -> c.out().node()).distinct().toList();
    }

    private void settle(Evidence known) {
        for (Node node : circuit.nodes()) {
            level[node.index()] = node.level();
            bad[node.index()] = 0;
            changes[node.index()] = 0;
        }
        for (int i = 0; i < level.length; i++) {
            fix(i, known);
        }
        for (int i = 0; i < level.length; i++) {
            enqueue(i);
        }
        while (!queue.isEmpty()) {
            int node = queue.poll();
            waiting[node] = false;
            if (!known.isSeen(node)) {
                State state = resolver.state(node, null, known);
                boolean same = state.level() == level[node] && Math.abs(state.bad() - bad[node]) < 1e-9;
                if (!same && changes[node]++ < MOST_CHANGES) {
                    level[node] = state.level();
                    bad[node] = state.bad();
                    follow(node);
                }
            }
        }
        java.util.Arrays.fill(changes, 0);
    }

    /** Puts what was seen to a node. */
    private void fix(int node, Evidence known) {
        int due = expected[node];
        switch (known.at(node)) {
            case GOOD -> level[node] = circuit.nodes().get(node).rail() ? circuit.nodes().get(node).level() : due;
            case BAD -> {
                // A supply that is bad has no level. Without a level, what is bad is so only as far as a fault reaches it: see run.
                level[node] = Level.not(due);
                bad[node] = Level.known(due) ? 1 : 0;
            }
            case LOW, HIGH -> {
                level[node] = known.at(node) == Sight.LOW ? Level.LOW : Level.HIGH;
                bad[node] = Level.known(due) && due != level[node] ? 1 : 0;
            }
            default -> {
                // nothing to put
            }
        }
    }

    private State derive(int node, Effect effect) {
        State state = resolver.state(node, effect, evidence);
        return state.bad() < LEAST ? new State(state.level(), 0) : state;
    }

    private void follow(int node) {
        for (int next : follows[node]) {
            enqueue(next);
        }
    }

    private void enqueue(int node) {
        if (!waiting[node]) {
            waiting[node] = true;
            queue.add(node);
        }
    }
}
