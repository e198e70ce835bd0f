// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.simulation;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

import org.probeleaf.diagnosis.circuit.Cell;
import org.probeleaf.diagnosis.circuit.Circuit;
import org.probeleaf.diagnosis.circuit.Level;
import org.probeleaf.diagnosis.circuit.Node;
import org.probeleaf.diagnosis.circuit.Terminal;
import org.probeleaf.diagnosis.fault.FaultKind;
import org.probeleaf.diagnosis.fault.Priors;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.partbook.PinDirection;

/** Names every single fault that could work on a node, back to the nodes that were observed. */
public final class FaultFinder {

    private final Circuit circuit;
    private final Evidence evidence;
    private final Simulator simulator;
    private final double[] partWeight;
    /** Parts that drive or listen of themselves; the others conduct, or do not. */
    private final boolean[] active;
    private final Priors priors;
    private final Map<Integer, List<Terminal>> pinsOfPart = new HashMap<>();
    private final Set<Fault> faults = new LinkedHashSet<>();

    public FaultFinder(Circuit circuit, Evidence evidence, Simulator simulator, Priors priors, PartBook book) {
        this.simulator = simulator;
        this.circuit = circuit;
        this.evidence = evidence;
        this.priors = priors;
        this.partWeight = circuit.parts().stream().mapToDouble(p -> priors.of(p, book)).toArray();
        this.active = new boolean[partWeight.length];
        for (Terminal t : circuit.terminals()) {
            active[t.part()] |= t.direction() != PinDirection.PASSIVE && t.direction() != PinDirection.POWER;
        }
        circuit.terminals().forEach(t -> pinsOfPart.computeIfAbsent(t.part(), p -> new ArrayList<>()).add(t));
    }

    /** The faults that may work on a node. */
    public List<Fault> workingOn(int node) {
        return at(upstream(node));
    }

    /** All faults. */
    public List<Fault> all() {
        return at(circuit.nodes().stream().map(Node::index).toList());
    }

    /** A pin that makes no contact with its net: what it takes in is gone. */
    public Fault noContact(Terminal t) {
        return new Fault(circuit.ref(t.part()), t.part(), t, null, FaultKind.OPEN, "pin " + t.label()
                + " without contact", new Effect.Sees(t.index(), Level.UNKNOWN),
                partWeight[t.part()] * priors.of(FaultKind.OPEN));
    }

    private List<Fault> at(Collection<Integer> nodes) {
        faults.clear();
        Set<Integer> parts = new TreeSet<>();
        for (int n : nodes) {
            Node at = circuit.nodes().get(n);
            at.terminals().forEach(t -> onNode(at, t));
            for (int index : at.drivers()) {
                Cell cell = circuit.cells().get(index);
                parts.add(cell.part());
                cell.in().stream().filter(t -> t != null).forEach(t -> input(cell, t));
            }
        }
        parts.forEach(this::whole);
        return List.copyOf(faults);
    }

    /** A part wrong in some way that nobody knows. */
    public Fault anyOf(int part) {
        return new Fault(circuit.ref(part), part, null, null, FaultKind.WRONG, "wrong together with others", new Effect.Broken(part),
                partWeight[part] * priors.of(FaultKind.WRONG));
    }

    /** The node and all that lead to it, back to nodes whose level was seen or that are good. */
    private Set<Integer> upstream(int node) {
        Set<Integer> found = new LinkedHashSet<>(Set.of(node));
        Deque<Integer> next = new ArrayDeque<>(found);
        while (!next.isEmpty()) {
            for (int index : circuit.nodes().get(next.poll()).drivers()) {
                Cell cell = circuit.cells().get(index);
                for (Terminal t : cell.in()) {
                    if (t != null && free(t.node()) && found.add(t.node())) {
                        next.add(t.node());
                    }
                }
            }
        }
        return found;
    }

    private boolean free(int node) {
        return (!evidence.isSeen(node) || simulator.isDoubted(node)) && !evidence.isGiven(node) && !circuit.nodes().get(node).rail();
    }

    /** A pin on a node: an output may be stuck or off, what listens may load the node. */
    private void onNode(Node node, Terminal t) {
        boolean drives = drives(t);
        if (active[t.part()]) {
            add(t, drives ? FaultKind.STUCK_LOW : FaultKind.LOADS_LOW, new Effect.Force(node.index(), Level.LOW),
                    drives ? "stuck low" : "pulls " + node.title() + " low");
            add(t, drives ? FaultKind.STUCK_HIGH : FaultKind.LOADS_HIGH, new Effect.Force(node.index(), Level.HIGH),
                    drives ? "stuck high" : "pulls " + node.title() + " high");
        }
        if (drives) {
            add(t, FaultKind.OPEN, new Effect.Off(t.index()), "open");
        }
        neighbours(t);
    }

    private boolean drives(Terminal t) {
        return circuit.nodes().get(t.node()).drivers().stream().anyMatch(c -> circuit.cells().get(c).out() == t);
    }

    private void input(Cell cell, Terminal t) {
        boolean gate = cell.kind() == Cell.Kind.ACTIVE || cell.kind() == Cell.Kind.OPEN_COLLECTOR;
        if (gate) {
            add(t, FaultKind.STUCK_LOW, new Effect.Sees(t.index(), Level.LOW), "taken in as low");
            add(t, FaultKind.STUCK_HIGH, new Effect.Sees(t.index(), Level.HIGH), "taken in as high");
            add(t, FaultKind.OPEN, new Effect.Sees(t.index(), Level.UNKNOWN), "open");
        }
    }

    /** Joined to the pin before or after it, or to the other end of a part with two. */
    private void neighbours(Terminal t) {
        List<Terminal> pins = pinsOfPart.get(t.part());
        for (Terminal other : pins) {
            boolean near = pins.size() == 2 ? other != t : Math.abs(number(t) - number(other)) == 1;
            if (near && other.node() != t.node() && other.pin().net() != null) {
                Node far = circuit.nodes().get(other.node());
                Effect effect = far.rail() ? new Effect.Force(t.node(), far.level())
                        : new Effect.Bridge(Math.min(t.node(), far.index()), Math.max(t.node(), far.index()));
                if (!far.rail() || Level.known(far.level())) {
                    add(t, other.label(), FaultKind.BRIDGED, effect, pins.size() == 2 ? "shorted"
                            : "joined to pin " + other.label() + " (" + far.title() + ")");
                }
            }
        }
    }

    private static int number(Terminal t) {
        try {
            return Integer.parseInt(t.pin().number() == null ? "-9" : t.pin().number());
        } catch (NumberFormatException e) {
            // A contact such as A1: its neighbours are not known.
            return Integer.MIN_VALUE / 2;
        }
    }

    private void whole(int part) {
        if (active[part]) {
            addFault(new Fault(circuit.ref(part), part, null, null, FaultKind.DEAD, "dead", new Effect.Broken(part),
                    partWeight[part] * priors.of(FaultKind.DEAD)));
        }
    }

    private void add(Terminal t, FaultKind kind, Effect effect, String text) {
        add(t, null, kind, effect, text);
    }

    private void add(Terminal t, String beside, FaultKind kind, Effect effect, String text) {
        boolean two = pinsOfPart.get(t.part()).size() == 2;
        String words = two && kind == FaultKind.OPEN || two && kind == FaultKind.BRIDGED ? text
                : (t.label() == null ? "" : "pin " + t.label() + " ") + text;
        addFault(new Fault(circuit.ref(t.part()), t.part(), t, beside, kind, words, effect, partWeight[t.part()] * priors.of(kind)));
    }

    private void addFault(Fault fault) {
        if (fault.prior() > 0) {
            faults.add(fault);
        }
    }
}
