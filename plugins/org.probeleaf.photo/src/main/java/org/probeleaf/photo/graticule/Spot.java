// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo.graticule;

/**
 * A place in a picture.
 *
 * @param x to the right, in pixels, whole in the middle of pixels
 * @param y down, likewise
 */
public record Spot(double x, double y) {

    /** How far another is, in pixels. */
    public double distance(Spot other) {
        return Math.hypot(x - other.x, y - other.y);
    }
}
