// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.circuit;

import java.util.List;
import java.util.Objects;

/**
 * What makes one output of a part out of its inputs.
 *
 * @param index    its place among the cells
 * @param part     index of its part
 * @param out      the terminal that it drives
 * @param in       the terminals that it takes in, in the order that {@code logic} expects; null for one that the
 *                 drawing does not have
 * @param power    the terminals that it is supplied through
 * @param logic    what it does
 * @param function name of the function ({@code "NAND"}), or null where it is not known
 * @param kind     how it drives
 * @param surely   whether each of its inputs is known to be one and its output to follow them
 */
public record Cell(int index, int part, Terminal out, List<Terminal> in, List<Terminal> power, CellLogic logic,
        String function, Kind kind, boolean surely) {

    /** How a cell drives its node. */
    public enum Kind {
        /** An output that drives both ways, or lets go. */
        ACTIVE,
        /** An output that only pulls down. */
        OPEN_COLLECTOR,
        /** A resistor to a rail: counts where nothing else drives. */
        PULL,
        /** A part in series. */
        SERIES,
        /** A contact to the world outside. */
        SOURCE
    }

    /** Whether a wrong input must show: there is one only, and nothing in the part can hold it back. */
    public boolean transparent() {
        return surely && in.stream().filter(Objects::nonNull).count() == 1
                && (function == null || function.equals("BUF") || function.equals("NOT"));
    }
}
