// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo.trace;

/** Whether a screen has more to follow than the trace that was followed. */
final class OtherTrace {

    /** So far from the trace that was followed it is another, in divisions. */
    private static final double APART = 0.25;
    /** How strong it is at least, against what is usual for it. */
    private static final double PLAIN = 0.5;
    /** In so much of the width it is seen: writing on a screen is in less. */
    private static final double WIDE = 0.6;

    private OtherTrace() {
    }

    /** Of the same colour: thin strokes beside those that were chosen, in most columns. */
    static boolean alike(Strokes strokes, Strokes.Stroke[] chosen) {
        int seen = 0;
        for (int x = 0; x < chosen.length; x++) {
            Strokes.Stroke followed = chosen[x];
            seen += followed != null && strokes.columns.get(x).stream().anyMatch(s -> apart(s, followed, strokes)) ? 1 : 0;
        }
        return seen > WIDE * chosen.length;
    }

    private static boolean apart(Strokes.Stroke s, Strokes.Stroke followed, Strokes strokes) {
        return s.peak() > PLAIN * strokes.usual && s.gap(followed) > APART * strokes.flat.scale;
    }

    /** Of another colour: it was followed too, and lies apart in most columns. */
    static boolean unlike(FlatScreen flat, float[] way, float floor, Strokes.Stroke[] chosen) {
        Strokes strokes = Strokes.of(flat, way, floor);
        Strokes.Stroke[] second = StrokeChooser.choose(strokes);
        int seen = 0;
        for (int x = 0; x < chosen.length; x++) {
            seen += chosen[x] != null && second[x] != null && apart(second[x], chosen[x], strokes) ? 1 : 0;
        }
        return seen > WIDE * chosen.length;
    }
}
