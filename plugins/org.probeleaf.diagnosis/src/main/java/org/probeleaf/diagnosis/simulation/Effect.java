// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.simulation;

/** What a fault does to a circuit. Several faults may have the same effect. */
public sealed interface Effect {

    /** A node is at a level, whatever drives it. */
    record Force(int node, int level) implements Effect {
    }

    /** One terminal takes in a level, whatever its node has; {@code Level.UNKNOWN} where it floats. */
    record Sees(int terminal, int level) implements Effect {
    }

    /** One terminal drives its node no more. */
    record Off(int terminal) implements Effect {
    }

    /** All outputs of a part do anything. */
    record Broken(int part) implements Effect {
    }

    /** Two nodes are one. */
    record Bridge(int a, int b) implements Effect {
    }
}
