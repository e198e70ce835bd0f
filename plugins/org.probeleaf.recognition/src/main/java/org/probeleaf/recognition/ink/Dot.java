// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.ink;

import org.probeleaf.schematic.geometry.Point;

/**
 * A filled round spot, such as marks a junction.
 *
 * @param at     its centre
 * @param radius in points
 * @param rgb    colour, 0xRRGGBB
 */
public record Dot(Point at, double radius, int rgb) {
}
