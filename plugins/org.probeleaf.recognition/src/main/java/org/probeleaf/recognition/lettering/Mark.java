// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.lettering;

import java.util.List;

import org.probeleaf.schematic.geometry.Box;

/**
 * Strokes of one style that hang together: a letter, a part of one, or something else of that size.
 *
 * @param strokes indices of its strokes, ascending
 * @param box     round it
 * @param style   what it is drawn with; the same number for the same
 * @param pen     width of its strokes in points
 * @param touches whether other ink touches it
 * @param bare    whether it is nothing but a straight line or, filled, a bar or the like, which may be anything
 */
record Mark(List<Integer> strokes, Box box, int style, double pen, boolean touches, boolean bare) {
}
