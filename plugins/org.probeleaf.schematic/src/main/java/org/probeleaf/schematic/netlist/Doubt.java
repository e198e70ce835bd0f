// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.netlist;

import org.probeleaf.schematic.geometry.Point;

/**
 * A place where the reading of a sheet is unsure.
 *
 * @param code short, stable name of the kind of doubt ({@code "unattached-label"})
 * @param page 1-based page
 * @param at   the place, in points, or null where the doubt is about the page as a whole
 * @param text one sentence for a person
 */
public record Doubt(String code, int page, Point at, String text) {
}
