// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing.primitive;

import org.probeleaf.schematic.geometry.Box;

/**
 * A picture placed on the page.
 *
 * @param box          the place it takes
 * @param pixelsWide   its own width in pixels
 * @param pixelsHigh   its own height in pixels
 */
public record Picture(Box box, int pixelsWide, int pixelsHigh) {
}
