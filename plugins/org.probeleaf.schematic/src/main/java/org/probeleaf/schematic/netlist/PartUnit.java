// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.netlist;

import org.probeleaf.schematic.geometry.Box;

/**
 * One drawn piece of a part.
 *
 * @param name unit letter or number as printed ({@code "A"}), or null for a part in one piece
 * @param page 1-based page the piece is drawn on
 * @param box  round the symbol's body, without its pins
 */
public record PartUnit(String name, int page, Box box) {
}
