// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.name;

import java.util.List;

import org.probeleaf.recognition.ink.Segment;
import org.probeleaf.recognition.symbol.Body;
import org.probeleaf.schematic.geometry.Point;

/**
 * How well the look of a symbol fits the class of part that a designator names: a zig-zag or a plain box for a
 * resistor, facing plates for a capacitor, coils for an inductor, a triangle for a diode (IEEE 315 and IEC 60617
 * symbols).
 */
final class Shapes {

    private Shapes() {
    }

    /** A penalty in pitches, 0 where the look fits or says nothing. */
    static double misfit(String letters, Body body, double pitch) {
        return switch (letters) {
            case "R" -> isPlates(body) || isDiode(body) ? 0.8 : 0;
            case "C" -> isZigzag(body) || isDiode(body) ? 0.8 : 0;
            case "D", "LED", "ZD", "VD" -> isZigzag(body) || isPlates(body) ? 0.8 : 0;
            case "L" -> isPlates(body) ? 0.8 : 0;
            case "U", "IC", "J", "P", "CN" -> isZigzag(body) || isPlates(body) ? 0.8 : 0;
            default -> 0;
        };
    }

    private static boolean isZigzag(Body body) {
        List<Segment> ink = body.ink();
        long slanting = ink.stream().filter(s -> s.shape() == Segment.Shape.LINE && !s.upright()).count();
        return slanting >= 4 && slanting >= 0.6 * ink.size();
    }

    /** Two or more straight lines side by side and nothing slanting. */
    private static boolean isPlates(Body body) {
        List<Segment> ink = body.ink();
        long lines = ink.stream().filter(s -> s.shape() == Segment.Shape.LINE && s.upright()).count();
        long slanting = ink.stream().filter(s -> !s.upright() && s.shape() != Segment.Shape.CURVED
                && s.shape() != Segment.Shape.ROUND).count();
        boolean allAlong = ink.stream().filter(Segment::upright).map(Segment::horizontal).distinct().count() == 1;
        return lines >= 2 && lines <= 4 && slanting == 0 && allAlong;
    }

    private static boolean isDiode(Body body) {
        long slanting = body.ink().stream().filter(s -> !s.upright()
                && (s.shape() == Segment.Shape.CLOSED || s.shape() == Segment.Shape.FILLED)).count();
        return slanting >= 2 && body.ink().size() <= 14;
    }

    /** Slanting lines through one middle and nothing else: the mark of a pin that is meant to stay unconnected. */
    static boolean isCross(Body body) {
        Point centre = body.box().centre();
        double near = 0.12 * Math.max(body.box().width(), body.box().height());
        return !body.ink().isEmpty() && body.ink().size() <= 4 && body.ink().stream()
                .allMatch(s -> s.shape() == Segment.Shape.LINE && !s.upright() && s.distance(centre) <= near);
    }
}
