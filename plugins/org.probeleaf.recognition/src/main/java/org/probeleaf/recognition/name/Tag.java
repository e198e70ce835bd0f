// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.name;

import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.LabelKind;

/**
 * A name that the page gives to a conductor.
 *
 * @param text    the name, cleaned of sheet and zone references
 * @param segment number of a segment of the conductor
 * @param at      where the name meets it
 * @param kind    what kind of name it is
 */
public record Tag(String text, int segment, Point at, LabelKind kind) {
}
