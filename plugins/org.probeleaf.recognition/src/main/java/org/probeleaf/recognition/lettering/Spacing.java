// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.lettering;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.stream.IntStream;

/** Finds where words part in a line of letters. */
final class Spacing {

    /** A gap between letters drawn with a pen that is wider than this parts words; in capital heights, as the others. */
    private static final double DRAWN = 0.62;
    /** What a gap between printed letters must have beyond the room that fonts leave between these letters. */
    private static final double PRINTED = 0.22;
    /** How far apart the letters of a line may be set all in all. */
    private static final double LEAST_SET = -0.1;
    private static final double MOST_SET = 0.25;
    /** How far middles of letters may be off the places of a typewriter, in those. */
    private static final double OFF = 0.2;
    /** Letters from which on a line may be seen to be typewritten. */
    private static final int TYPED = 5;
    /** Gaps from which on a line tells how far apart its letters are set. */
    private static final int TELLING = 4;
    /** The share of a page's lines that must be typewritten for all to be. */
    private static final double MOSTLY = 0.6;

    private Spacing() {
    }

    /**
     * Whether a word ends with each letter of a line, the last aside.
     *
     * @param guesses what each letter may be, best first
     * @param hand    what is known of the page's hand
     */
    static boolean[] ends(List<Cell> cells, List<List<Guess>> guesses, double capital, LetterSet set, Hand hand) {
        boolean[] ends = new boolean[cells.size()];
        double typed = set.pen() ? 0 : hand.pitch() > 0 ? hand.pitch() * capital : pitch(cells);
        double[] beyond = new double[cells.size() - 1];
        for (int i = 0; i < beyond.length; i++) {
            beyond[i] = beyond(cells, i, guesses.get(i).get(0).letter(), guesses.get(i + 1).get(0).letter(), capital, set);
        }
        double limit = set.pen() ? DRAWN : PRINTED + usual(beyond, hand.set());
        for (int i = 0; i + 1 < ends.length; i++) {
            ends[i] = typed > 0 ? middle(cells.get(i + 1)) - middle(cells.get(i)) > 1.5 * typed : beyond[i] > limit;
        }
        return ends;
    }

    /** The gap after a letter beyond the room that fonts leave there. */
    private static double beyond(List<Cell> cells, int i, char before, char after, double capital, LetterSet set) {
        double gap = (cells.get(i + 1).from() - cells.get(i).to()) / capital;
        return set.pen() ? gap : gap - set.bearings().after(before) - set.bearings().before(after);
    }

    /** How far apart the letters of a line are set beyond what their font does; of a short one, as on the whole page. */
    private static double usual(double[] beyond, double onPage) {
        return beyond.length < TELLING ? onPage : median(beyond);
    }

    private static double median(double[] beyond) {
        double[] sorted = beyond.clone();
        Arrays.sort(sorted);
        return sorted.length == 0 ? 0 : Math.max(LEAST_SET, Math.min(MOST_SET, sorted[(sorted.length - 1) / 2]));
    }

    /** How far apart the letters of printed lines are set beyond what their fonts do, in capital heights. */
    static double set(Collection<Line> lines, LetterSet set) {
        return median(lines.stream().flatMapToDouble(l -> IntStream.range(1, l.cells().size()).mapToDouble(i ->
                beyond(l.cells(), i - 1, l.letters().get(i - 1).letter(), l.letters().get(i).letter(), l.capital(), set)))
                .toArray());
    }

    private static double middle(Cell cell) {
        return (cell.from() + cell.to()) / 2;
    }

    /** The step from letter to letter on a page that is typewritten, in capital heights; 0 where it is not. */
    static double pitch(Collection<Line> lines) {
        List<Double> pitches = new ArrayList<>();
        int told = 0;
        for (Line line : lines) {
            if (line.cells().size() >= TYPED && line.text().chars().distinct().count() >= TYPED) {
                told++;
                double pitch = pitch(line.cells()) / line.capital();
                if (pitch > 0) {
                    pitches.add(pitch);
                }
            }
        }
        pitches.sort(null);
        double usual = pitches.isEmpty() ? 0 : pitches.get(pitches.size() / 2);
        long alike = pitches.stream().filter(p -> Math.abs(p - usual) < OFF * usual).count();
        return alike > 1 && alike > MOSTLY * told ? usual : 0;
    }

    /** From middle to middle of letters that all stand at steps of one width, with some left out; 0 where they don't. */
    private static double pitch(List<Cell> cells) {
        if (cells.size() < TYPED) {
            return 0;
        }
        List<Double> steps = new ArrayList<>();
        for (int i = 1; i < cells.size(); i++) {
            steps.add(middle(cells.get(i)) - middle(cells.get(i - 1)));
        }
        double pitch = steps.stream().sorted().toList().get(steps.size() / 2);
        for (double step : steps) {
            double n = step / pitch;
            if (n < 0.5 || Math.abs(n - Math.rint(n)) > OFF) {
                return 0;
            }
        }
        return pitch;
    }
}
