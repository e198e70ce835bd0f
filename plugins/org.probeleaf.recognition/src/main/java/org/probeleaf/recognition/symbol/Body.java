// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.symbol;

import java.util.List;

import org.probeleaf.recognition.ink.Segment;
import org.probeleaf.schematic.geometry.Box;

/**
 * The ink of one symbol, or of one piece of it.
 *
 * @param id      its place in the page's list of bodies
 * @param box     round its ink
 * @param ink     its segments
 * @param outline the box of its largest closed outline, or null where it has none
 */
public record Body(int id, Box box, List<Segment> ink, Box outline) {
}
