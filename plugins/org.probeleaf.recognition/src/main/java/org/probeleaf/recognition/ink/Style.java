// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.ink;

/**
 * How a line is drawn; programs give wires, symbols and buses a style each, more often than not.
 *
 * @param rgb    colour, 0xRRGGBB
 * @param width  line width in twentieths of a point
 * @param dashed whether it is drawn with a dash pattern
 */
record Style(int rgb, long width, boolean dashed) {
}
