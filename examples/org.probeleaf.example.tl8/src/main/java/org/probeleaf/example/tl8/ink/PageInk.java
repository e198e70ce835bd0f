// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8.ink;

import java.util.List;

/**
 * Everything that is drawn on one page, in the order of drawing.
 *
 * @param width  of the page, in points
 * @param height of the page, in points
 * @param marks  the ink
 */
public record PageInk(double width, double height, List<Ink> marks) {

    public PageInk {
        marks = List.copyOf(marks);
    }
}
