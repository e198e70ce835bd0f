// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing.primitive;

import java.util.List;

import org.probeleaf.schematic.geometry.Point;

/**
 * What a letter looks like whose font does not say which letter it is. In the page's texts a sign stands for it.
 *
 * @param sign   the sign, from the private use area of Unicode; each letter of each font has its own
 * @param font   number of its font among those of the page
 * @param lines  its outlines, or the lines that it is drawn with: corners in font sizes from the start of the base line,
 *               y upwards
 * @param filled whether the lines are outlines of a filled shape, so that each runs back to its start
 */
public record LetterForm(char sign, int font, List<List<Point>> lines, boolean filled) {

    public LetterForm {
        lines = lines.stream().map(List::copyOf).toList();
    }
}
