// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.netlist;

import org.probeleaf.schematic.geometry.Point;

/**
 * A name drawn on a net.
 *
 * @param text as printed
 * @param page 1-based page
 * @param at   where the name meets its wire, in points
 * @param kind what the name is
 */
public record NetLabel(String text, int page, Point at, LabelKind kind) {
}
