// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.lettering;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.drawing.primitive.Stroke;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/**
 * The place of one letter in a line.
 *
 * @param marks  what is drawn there
 * @param shape  what that looks like, in points of the page along and across the line
 * @param from   where it begins along the line
 * @param to     where it ends
 */
record Cell(List<Mark> marks, LetterShape shape, double from, double to) {

    static Cell of(Direction direction, List<Mark> marks, List<Stroke> strokes) {
        List<double[][]> lines = new ArrayList<>();
        Box box = direction.turned(marks.get(0).box());
        for (Mark mark : marks) {
            box = box.union(direction.turned(mark.box()));
            for (int i : mark.strokes()) {
                Stroke s = strokes.get(i);
                int n = s.points().size();
                double[][] line = new double[s.closed() ? n + 1 : n][];
                for (int k = 0; k < line.length; k++) {
                    Point p = s.points().get(k % n);
                    line[k] = new double[] {direction.u(p), direction.v(p)};
                }
                lines.add(line);
            }
        }
        return new Cell(List.copyOf(marks), LetterShape.of(lines), box.x0(), box.x1());
    }
}
