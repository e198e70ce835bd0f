// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing.primitive;

import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/**
 * A piece of text in one line and one style.
 *
 * @param text    its characters, never blank; signs stand for letters that are known by their {@link LetterForm} only
 * @param origin  start of the base line
 * @param angle   writing direction in degrees, clockwise as seen: 0 left to right, 90 downwards, 270 upwards
 * @param size    letter height (font size as displayed) in points
 * @param box     round the letters, from the font's ascent and descent
 * @param font    name of the font as the file gives it, or ""
 * @param rgb     colour, 0xRRGGBB
 * @param visible false for text that the page carries but does not show
 */
public record Text(String text, Point origin, double angle, double size, Box box, String font, int rgb,
        boolean visible) {
}
