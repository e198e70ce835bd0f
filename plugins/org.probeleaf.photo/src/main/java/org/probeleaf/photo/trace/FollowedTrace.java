// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo.trace;

import org.probeleaf.photo.graticule.GridMap;
import org.probeleaf.photo.picture.Picture;

/**
 * A trace that was followed over a screen, in the frame of the grid: divisions from the upper left corner, down and to the
 * right.
 *
 * @param perDivision columns a division; the first column is half of one from the left rim
 * @param down        for each column how far down the middle of the trace is; NaN where there is none
 * @param pen         how thick it is, in divisions
 * @param colour      what was followed, {@code 0xRRGGBB}
 * @param darker      whether it is darker than the background
 * @param second      what else there is to follow
 */
public record FollowedTrace(int perDivision, double[] down, double pen, int colour, boolean darker, Second second) {

    /** Whether there is another trace on the screen. */
    public enum Second {
        /** None was seen. */
        NONE,
        /** One of the same colour. */
        ALIKE,
        /** One of another colour; looked for only where no colour was said. */
        UNLIKE
    }


    /**
     * Follows a trace.
     *
     * @param picture as it was photographed
     * @param map     where its graticule lies
     * @param colour  of the trace; null to find it
     * @return null where nothing stands out from the screen
     */
    public static FollowedTrace of(Picture picture, GridMap map, TraceColour colour) {
        FlatScreen flat = FlatScreen.of(picture, map);
        ColourFinder finder = new ColourFinder(flat);
        float[] way = colour == null ? finder.find() : finder.towards(colour.rgb());
        if (way == null) {
            return null;
        }
        Strokes strokes = Strokes.of(flat, way, finder.floor());
        Strokes.Stroke[] chosen = StrokeChooser.choose(strokes);
        ThinLine line = ThinLine.of(chosen);
        double[] down = new double[line.middle.length];
        for (int i = 0; i < down.length; i++) {
            down[i] = line.middle[i] / flat.scale;
        }
        return new FollowedTrace(flat.scale, down, line.pen / flat.scale, colour(flat, way, strokes.usual),
                way[0] + way[1] + way[2] < 0, second(strokes, chosen, colour == null ? finder.next() : null, finder.floor()));
    }

    private static Second second(Strokes strokes, Strokes.Stroke[] chosen, float[] next, float floor) {
        if (OtherTrace.alike(strokes, chosen)) {
            return Second.ALIKE;
        }
        return next != null && OtherTrace.unlike(strokes.flat, next, floor, chosen) ? Second.UNLIKE : Second.NONE;
    }

    private static int colour(FlatScreen flat, float[] way, double usual) {
        int rgb = 0;
        for (int c = 0; c < 3; c++) {
            float[] ground = flat.ground[c].clone();
            java.util.Arrays.sort(ground);
            double v = ground[ground.length / 2] + way[c] * usual;
            rgb = rgb << 8 | (int) Math.max(0, Math.min(255, Math.round(v * 255)));
        }
        return rgb;
    }

    /** In how many of the columns it was seen, 0 to 1. */
    public double covered() {
        int seen = 0;
        for (double d : down) {
            seen += Double.isNaN(d) ? 0 : 1;
        }
        return seen / (double) down.length;
    }
}
