// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.simulation;

import org.probeleaf.diagnosis.circuit.Circuit;
import org.probeleaf.diagnosis.circuit.Level;

/** What is known of the nodes of a circuit: levels that somebody holds, and what was seen. Immutable. */
public final class Evidence {

    /** What was seen at a node. */
    public enum Sight { NOTHING, GOOD, BAD, LOW, HIGH }

    private final int[] given;
    private final Sight[] seen;

    private Evidence(int[] given, Sight[] seen) {
        this.given = given;
        this.seen = seen;
    }

    /** Nothing is known. */
    public static Evidence none(Circuit circuit) {
        int[] given = new int[circuit.nodes().size()];
        Sight[] seen = new Sight[given.length];
        java.util.Arrays.fill(given, Level.UNKNOWN);
        java.util.Arrays.fill(seen, Sight.NOTHING);
        return new Evidence(given, seen);
    }

    /** With a node held at a level. */
    public Evidence given(int node, int level) {
        int[] more = given.clone();
        more[node] = level;
        return new Evidence(more, seen);
    }

    /** With something seen at a node, in place of what was seen there before. */
    public Evidence seen(int node, Sight sight) {
        Sight[] more = seen.clone();
        more[node] = sight;
        return new Evidence(given, more);
    }

    /** The same without anything seen. */
    Evidence blind() {
        Sight[] nothing = new Sight[seen.length];
        java.util.Arrays.fill(nothing, Sight.NOTHING);
        return new Evidence(given, nothing);
    }

    public boolean isGiven(int node) {
        return given[node] != Level.UNKNOWN;
    }

    int level(int node) {
        return given[node];
    }

    public Sight at(int node) {
        return seen[node];
    }

    public boolean isSeen(int node) {
        return seen[node] != Sight.NOTHING;
    }
}
