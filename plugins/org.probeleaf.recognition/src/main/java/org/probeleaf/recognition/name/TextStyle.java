// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.name;

import org.probeleaf.drawing.primitive.Text;

/**
 * How a text is set; programs set designators, labels and pin numbers each in their own way, more often than not.
 *
 * @param font name of the font
 * @param size letter height in fifths of a point
 * @param rgb  colour, 0xRRGGBB
 */
record TextStyle(String font, long size, int rgb) {

    static TextStyle of(Text text) {
        return new TextStyle(text.font(), Math.round(text.size() * 5), text.rgb());
    }
}
