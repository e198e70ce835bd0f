// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing;

/**
 * The size of a page as displayed, crop box and rotation applied.
 *
 * @param width  points
 * @param height points
 */
public record PageSize(double width, double height) {
}
