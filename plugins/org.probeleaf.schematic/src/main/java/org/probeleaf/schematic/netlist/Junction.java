// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.netlist;

import org.probeleaf.schematic.geometry.Point;

/**
 * A place where wires are joined.
 *
 * @param page 1-based page
 * @param at   the place, in points
 */
public record Junction(int page, Point at) {
}
