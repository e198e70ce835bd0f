// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.lettering;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

import org.probeleaf.drawing.primitive.Drawing;
import org.probeleaf.drawing.primitive.Text;

/** Turns lettering that is drawn with strokes or filled outlines into text. */
public final class LetteringReader {

    /** Designators of the most usual classes of part. */
    private static final Pattern DESIGNATOR = Pattern.compile("(?:R|C|L|D|Q|T|U|IC|X|J|K|P)\\d{1,3}");
    /** So many parts named in a page's own text that its lettering is text, whatever else is drawn on it. */
    private static final int ENOUGH = 8;

    private LetteringReader() {
    }

    /** The same page with its letters' strokes and outlines taken away and what they say among its texts, all of which show. */
    public static Drawing read(Drawing drawing) {
        HiddenText hidden = new HiddenText(drawing, NamedLetters.texts(drawing));
        boolean[] letters = hidden.letters();
        boolean[] outlines = new boolean[drawing.fills().size()];
        List<Text> texts = new ArrayList<>(hidden.texts());
        if (!bearsDesignators(texts)) {
            int words = texts.size();
            texts.addAll(OutlineLettering.read(drawing.fills(), outlines, drawing.strokes(), letters, words));
            if (!bearsDesignators(texts)) {
                texts.addAll(StrokeLettering.read(drawing.strokes(), letters, words));
            }
        }
        return new Drawing(drawing.page(), drawing.width(), drawing.height(), drawing.kind(),
                without(drawing.strokes(), letters), without(drawing.fills(), outlines), texts, drawing.pictures(),
                drawing.complete());
    }

    private static <T> List<T> without(List<T> all, boolean[] letters) {
        List<T> rest = new ArrayList<>();
        for (int i = 0; i < letters.length; i++) {
            if (!letters[i]) {
                rest.add(all.get(i));
            }
        }
        return rest;
    }

    /** Whether the parts are named in text: then the names of their pins and signals are too. */
    private static boolean bearsDesignators(List<Text> texts) {
        return texts.stream().map(Text::text).filter(t -> DESIGNATOR.matcher(t).matches()).distinct().limit(ENOUGH)
                .count() >= ENOUGH;
    }
}
