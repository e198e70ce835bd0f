// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo.graticule;

/**
 * A graticule in a picture.
 *
 * @param map        from divisions to pixels of the picture that was looked at
 * @param confidence 0 to 1 that it is the right one, to a fraction of a division
 * @param found      whether it was found by itself rather than marked
 * @param assumed    whether the number of divisions was assumed
 */
public record Graticule(GridMap map, double confidence, boolean found, boolean assumed) {
}
