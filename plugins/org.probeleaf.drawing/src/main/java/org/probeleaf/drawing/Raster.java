// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing;

/**
 * A piece of a page as pixels.
 *
 * @param width  pixels
 * @param height pixels
 * @param argb   {@code width * height} pixels, row by row from the top, 0xAARRGGBB; not copied, not to be changed
 */
public record Raster(int width, int height, int[] argb) {
}
