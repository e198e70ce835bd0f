// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing.primitive;

import java.util.List;

import org.probeleaf.schematic.netlist.SheetKind;

/**
 * One page taken apart.
 *
 * @param page     1-based page number
 * @param width    of the page as displayed, in points
 * @param height   of the page as displayed, in points
 * @param kind     how the page carries its drawing
 * @param strokes  lines, in the order of painting
 * @param fills    filled shapes, in the order of painting
 * @param texts    pieces of text, in the order of painting
 * @param pictures placed pictures
 * @param complete false where a part of the page's content could not be read
 * @param forms    letters in the texts that are known by their looks only
 */
public record Drawing(int page, double width, double height, SheetKind kind, List<Stroke> strokes, List<Fill> fills,
        List<Text> texts, List<Picture> pictures, boolean complete, List<LetterForm> forms) {

    public Drawing {
        strokes = List.copyOf(strokes);
        fills = List.copyOf(fills);
        texts = List.copyOf(texts);
        pictures = List.copyOf(pictures);
        forms = List.copyOf(forms);
    }

    /** A page whose texts are texts. */
    public Drawing(int page, double width, double height, SheetKind kind, List<Stroke> strokes, List<Fill> fills,
            List<Text> texts, List<Picture> pictures, boolean complete) {
        this(page, width, height, kind, strokes, fills, texts, pictures, complete, List.of());
    }

    /** A page whose content was read whole. */
    public Drawing(int page, double width, double height, SheetKind kind, List<Stroke> strokes, List<Fill> fills,
            List<Text> texts, List<Picture> pictures) {
        this(page, width, height, kind, strokes, fills, texts, pictures, true);
    }

    /** The same drawing under another page number, as where pages of several files count on. */
    public Drawing asPage(int number) {
        return new Drawing(number, width, height, kind, strokes, fills, texts, pictures, complete, forms);
    }
}
