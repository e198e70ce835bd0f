// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover.internal.paint;

/**
 * How a line of text is set.
 *
 * @param size    letter size, points
 * @param strong  with thickened strokes
 * @param tint    colour
 * @param opacity 0 to 1; less than 1 makes black grey
 */
public record Letters(double size, boolean strong, Tint tint, double opacity) {

    public static Letters plain(double size) {
        return new Letters(size, false, Tint.BLACK, 1);
    }

    public static Letters strong(double size) {
        return new Letters(size, true, Tint.BLACK, 1);
    }

    /** For what is said beside. */
    public static Letters quiet(double size) {
        return new Letters(size, false, Tint.BLACK, 0.68);
    }

    public Letters in(Tint other) {
        return new Letters(size, strong, other, 1);
    }
}
