// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/**
 * Where the graticule of the screen lies in a photograph.
 * <ol>
 * <li>{@code Ridges}: how much each pixel looks like part of a thin line, upright or level, whatever the light there</li>
 * <li>{@code LineFinder}: the straight lines of both families (Hough)</li>
 * <li>{@code GridSearch}: which four of them, counted in divisions, explain the picture best as a graticule</li>
 * <li>{@code GridFit}: all lines measured along their way, a homography through their crossings, and what is left over
 * as a smooth bend (curved tubes, wide lenses)</li>
 * </ol>
 * Frames: <em>picture</em>, pixels of the upright picture, x to the right, y down, whole numbers in the middle of pixels;
 * <em>grid</em>, divisions from the top left corner of the graticule, u to the right, v down.
 */
package org.probeleaf.photo.graticule;
