// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.ink;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.probeleaf.drawing.primitive.Text;

/**
 * Measures the sheet's own scale: the distance between neighbouring pins, taken as the commonest distance between a
 * short straight line and the next one beside it that starts or ends level with it.
 */
final class Pitch {

    private static final double BIN = 0.1;
    private static final double LARGEST = 40;

    private Pitch() {
    }

    /**
     * @param segments the page's lines without frame and letters
     * @param texts    its text, whose size serves where there are too few lines
     * @return the pitch in points
     */
    static double measure(List<Segment> segments, List<Text> texts) {
        double letter = medianLetter(texts);
        double smallest = letter > 0 ? 0.7 * letter : 1.5;
        double largest = letter > 0 ? 3.5 * letter : LARGEST;
        int[] counts = new int[(int) (LARGEST / BIN) + 3];
        double[] sums = new double[counts.length];
        int total = count(segments, true, smallest, counts, sums) + count(segments, false, smallest, counts, sums);
        int last = (int) Math.min(counts.length - 2, Math.min(largest, LARGEST) / BIN);
        int best = commonest(counts, last);
        int bestCount = best > 0 ? around(best, counts) : 0;
        if (best > 0 && bestCount >= 6 && bestCount >= total / 50) {
            for (int i = 1; i <= last; i++) {
                // Of distances that are about as common, the one that explains most others is the pitch.
                boolean peak = around(i, counts) >= 0.6 * bestCount && around(i, counts) >= around(i - 1, counts)
                        && around(i, counts) >= around(i + 1, counts);
                if (peak && explained(centre(i, counts, sums), counts) > 1.1
                        * explained(centre(best, counts, sums), counts)) {
                    best = i;
                }
            }
            return finer(centre(best, counts, sums), counts, smallest);
        }
        return letter > 0 ? 1.3 * letter : 7.2;
    }

    private static int commonest(int[] counts, int last) {
        int best = -1;
        int most = 0;
        for (int i = 1; i <= last; i++) {
            if (around(i, counts) > most) {
                most = around(i, counts);
                best = i;
            }
        }
        return best;
    }

    /**
     * Where pins are drawn two or three steps apart more often than one, the step is what all distances are multiples
     * of: a half or a third of the commonest, if it occurs itself and explains many more.
     */
    private static double finer(double best, int[] counts, double smallest) {
        for (int part = 3; part > 1; part--) {
            double step = best / part;
            if (step > smallest && near(step, counts) >= 0.2 * near(best, counts)
                    && explained(step, counts) > 1.25 * explained(best, counts)) {
                return step;
            }
        }
        return best;
    }

    private static int explained(double step, int[] counts) {
        int sum = 0;
        for (int multiple = 1; multiple * step < LARGEST; multiple++) {
            sum += near(multiple * step, counts);
        }
        return sum;
    }

    private static int near(double distance, int[] counts) {
        return around((int) (distance / BIN), counts);
    }

    private static int around(int i, int[] counts) {
        return i < 1 ? 0 : counts[i - 1] + counts[i] + counts[i + 1];
    }

    /** The mean distance in a peak of three bins. */
    private static double centre(int i, int[] counts, double[] sums) {
        return (sums[i - 1] + sums[i] + sums[i + 1]) / around(i, counts);
    }

    private static double medianLetter(List<Text> texts) {
        double[] sizes = texts.stream().mapToDouble(Text::size).sorted().toArray();
        return sizes.length == 0 ? 0 : sizes[sizes.length / 2];
    }

    private static int count(List<Segment> segments, boolean horizontal, double smallest, int[] counts,
            double[] sums) {
        List<double[]> lines = new ArrayList<>();
        for (Segment s : segments) {
            if (s.shape() == Segment.Shape.LINE && s.upright() && s.horizontal() == horizontal
                    && s.length() > 0.5 * smallest) {
                double at = horizontal ? s.a().y() : s.a().x();
                double from = horizontal ? Math.min(s.a().x(), s.b().x()) : Math.min(s.a().y(), s.b().y());
                lines.add(new double[] {at, from, from + s.length()});
            }
        }
        lines.sort(Comparator.comparingDouble(l -> l[0]));
        int total = 0;
        for (int i = 0; i < lines.size(); i++) {
            double[] l = lines.get(i);
            for (int j = i + 1; j < lines.size() && lines.get(j)[0] - l[0] < LARGEST; j++) {
                double[] m = lines.get(j);
                double gap = m[0] - l[0];
                boolean level = Math.abs(m[1] - l[1]) < 0.3 || Math.abs(m[2] - l[2]) < 0.3;
                if (level && gap > smallest) {
                    counts[(int) (gap / BIN)]++;
                    sums[(int) (gap / BIN)] += gap;
                    total++;
                    break;
                }
            }
        }
        return total;
    }
}
