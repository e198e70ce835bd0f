// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.correction;

import java.util.List;

import org.probeleaf.schematic.netlist.Netlist;

/**
 * A netlist with its corrections.
 *
 * @param netlist  the sheets as a person says they are to be read; corrections that do not hold are among its doubts
 * @param outcomes what became of each correction, in their order
 */
public record Corrected(Netlist netlist, List<Outcome> outcomes) {

    public Corrected {
        outcomes = List.copyOf(outcomes);
    }

    /** What became of the last correction; there must be one. */
    public Outcome last() {
        return outcomes.get(outcomes.size() - 1);
    }
}
