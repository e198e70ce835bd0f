// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.lettering;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

import org.probeleaf.drawing.primitive.Drawing;
import org.probeleaf.drawing.primitive.Stroke;
import org.probeleaf.drawing.primitive.Text;

/** Turns lettering that is drawn with strokes into text. */
public final class LetteringReader {

    /** Designators of the most usual classes of part. */
    private static final Pattern DESIGNATOR = Pattern.compile("(?:R|C|L|D|Q|T|U|IC|X|J|K|P)\\d{1,3}");
    /** So many parts named in a page's own text that its lettering is text, whatever else is drawn on it. */
    private static final int ENOUGH = 8;

    private LetteringReader() {
    }

    /** The same page with its letters' strokes taken away and what they say among its texts, all of which show. */
    public static Drawing read(Drawing drawing) {
        HiddenText hidden = new HiddenText(drawing);
        boolean[] letters = hidden.letters();
        List<Text> texts = new ArrayList<>(hidden.texts());
        if (!bearsDesignators(texts)) {
            texts.addAll(StrokeLettering.read(drawing.strokes(), letters, texts.size()));
        }
        List<Stroke> strokes = new ArrayList<>();
        for (int i = 0; i < letters.length; i++) {
            if (!letters[i]) {
                strokes.add(drawing.strokes().get(i));
            }
        }
        return new Drawing(drawing.page(), drawing.width(), drawing.height(), drawing.kind(), strokes, drawing.fills(),
                texts, drawing.pictures(), drawing.complete());
    }

    /** Whether the parts are named in text: then the names of their pins and signals are too. */
    private static boolean bearsDesignators(List<Text> texts) {
        return texts.stream().map(Text::text).filter(t -> DESIGNATOR.matcher(t).matches()).distinct().limit(ENOUGH)
                .count() >= ENOUGH;
    }
}
