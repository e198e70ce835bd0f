// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.lettering;

import java.util.List;

/**
 * What letters look like in one way of making them, and how near a shape must come to one.
 *
 * @param letters  all letters, in all their shapes
 * @param offPlace what a letter is worth less whose top or bottom is off by a capital height
 * @param offWidth what a letter is worth less whose width is off by a factor e
 * @param bearings room between letters, or null where they are drawn with a pen
 */
record LetterSet(List<Alphabet.Letter> letters, double offPlace, double offWidth, Bearings bearings) {

    /** Letters drawn with single strokes. */
    static final LetterSet DRAWN = new LetterSet(Alphabet.letters(), 0.35, 0.12, null);

    /** Whether letters are drawn with a pen, stroke by stroke, rather than printed as filled shapes. */
    boolean pen() {
        return bearings == null;
    }

    /** Letters of fonts, by their outlines. */
    static LetterSet printed() {
        return Fonts.PRINTED;
    }

    /** Read when it is first asked for: few pages need it. */
    private static final class Fonts {
        private static final LetterSet PRINTED = FontAlphabet.standard().set();
    }
}
