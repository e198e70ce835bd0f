// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.ink;

import java.util.List;

import org.probeleaf.drawing.primitive.Text;
import org.probeleaf.schematic.geometry.Box;

/**
 * A page's ink made ready for reading.
 *
 * @param page    1-based page number
 * @param width   of the page in points
 * @param height  of the page in points
 * @param wires   segments in a style that only wires have
 * @param buses   segments in the style of buses
 * @param symbols all other segments
 * @param dots    junction dots
 * @param texts   text that is part of the drawing
 * @param pitch   the distance between neighbouring pins, in points
 * @param reach   how far two ends may be apart and still be meant to meet, in points
 */
public record PageInk(int page, double width, double height, List<Segment> wires, List<Segment> buses,
        List<Segment> symbols, List<Dot> dots, List<Text> texts, double pitch, double reach) {

    /** The page as a box. */
    public Box box() {
        return new Box(0, 0, width, height);
    }
}
