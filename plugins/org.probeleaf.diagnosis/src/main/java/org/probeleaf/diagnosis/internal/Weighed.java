// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.internal;

import java.util.List;

import org.probeleaf.diagnosis.simulation.Fault;
import org.probeleaf.diagnosis.simulation.Simulator.Change;

/**
 * An explanation with its share: one fault, or several at once.
 *
 * @param faults the faults, at least one
 * @param change what they change
 * @param weight over all explanations they add up to 1
 * @param fit    how well it agrees with all that was seen, 0 to 1
 */
record Weighed(List<Fault> faults, Change change, double weight, double fit) {

    /** The same with another weight. */
    Weighed weighing(double other) {
        return new Weighed(faults, change, other, fit);
    }
}
