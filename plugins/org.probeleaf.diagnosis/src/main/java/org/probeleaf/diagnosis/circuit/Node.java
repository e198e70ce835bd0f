// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.circuit;

import java.util.List;

import org.probeleaf.schematic.netlist.Net;

/**
 * What is electrically one: a net, or a pin that is on none.
 *
 * @param index     its place among the nodes
 * @param net       its net, or null
 * @param title     what a person calls it
 * @param rail      whether it is a supply or ground
 * @param level     of a rail: what a logic input sees there ({@link Level#UNKNOWN} for a negative supply); of any
 *                  other {@link Level#UNKNOWN}
 * @param terminals the pins on it
 * @param drivers   indices of the cells that may drive it
 * @param listeners indices of the cells that it works on
 */
public record Node(int index, Net net, String title, boolean rail, int level, List<Terminal> terminals,
        List<Integer> drivers, List<Integer> listeners) {
}
