// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo;

import java.util.Random;

/**
 * What makes a photograph of a screen hard, besides how it is turned.
 *
 * @param across   divisions
 * @param up       divisions
 * @param screen   0 green tube, 1 amber tube, 2 dark colour display with a yellow trace, 3 white on blue, 4 dark on white
 * @param tilt     about the level axis, degrees
 * @param turn     about the upright axis, degrees
 * @param roll     in the plane of the picture, degrees
 * @param glare    0 to 1
 * @param blur     standard deviation, in pixels
 * @param noise    standard deviation of each colour, of 255
 * @param barrel   how far the rim of the screen is bent outwards, as a share of half its width
 * @param pixels   whether the screen shows its own pixels (moire)
 * @param dressed  whether knobs, texture, text on the screen, a window's reflection and a second trace are there
 * @param fill     how much of the picture's width the screen takes
 */
record Look(int across, int up, int screen, double tilt, double turn, double roll, double glare, double blur, double noise,
        double barrel, boolean pixels, boolean dressed, double fill) {

    /** As the issue names it: perspective to 15 degrees, glare, blur, noise. */
    static Look plain(Random r) {
        return new Look(10, 8, r.nextInt(5), spread(r, 15), spread(r, 15), spread(r, 3), r.nextDouble() * 0.6,
                0.5 + r.nextDouble() * 0.7, 1 + r.nextDouble() * 4, 0, false, false, 0.62 + 0.25 * r.nextDouble());
    }

    /** As bench photographs are. */
    static Look bench(Random r) {
        boolean tube = r.nextInt(5) < 2;
        return new Look(r.nextInt(4) == 0 ? 12 : 10, r.nextInt(6) == 0 ? 10 : 8, tube ? r.nextInt(2) : 2 + r.nextInt(3),
                spread(r, 15), spread(r, 15), spread(r, 5), r.nextDouble() * 0.8, 0.5 + r.nextDouble(), 2 + r.nextDouble() * 5,
                tube ? 0.015 * r.nextDouble() : 0, !tube, true, 0.5 + 0.35 * r.nextDouble());
    }

    private static double spread(Random r, double most) {
        return most * (2 * r.nextDouble() - 1);
    }
}
