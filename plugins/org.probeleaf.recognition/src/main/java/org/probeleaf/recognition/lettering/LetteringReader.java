// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.lettering;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.drawing.primitive.Drawing;
import org.probeleaf.drawing.primitive.Stroke;
import org.probeleaf.drawing.primitive.Text;

/** Turns lettering that is drawn with strokes into text. */
public final class LetteringReader {

    private LetteringReader() {
    }

    /** The same page with its letters' strokes taken away and what they say among its texts, all of which show. */
    public static Drawing read(Drawing drawing) {
        HiddenText hidden = new HiddenText(drawing);
        boolean[] letters = hidden.letters();
        List<Text> texts = new ArrayList<>(hidden.texts());
        texts.addAll(StrokeLettering.read(drawing.strokes(), letters, texts.size()));
        List<Stroke> strokes = new ArrayList<>();
        for (int i = 0; i < letters.length; i++) {
            if (!letters[i]) {
                strokes.add(drawing.strokes().get(i));
            }
        }
        return new Drawing(drawing.page(), drawing.width(), drawing.height(), drawing.kind(), strokes, drawing.fills(),
                texts, drawing.pictures(), drawing.complete());
    }
}
