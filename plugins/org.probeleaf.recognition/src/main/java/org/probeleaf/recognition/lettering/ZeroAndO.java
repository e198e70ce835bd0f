// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.lettering;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * Tells the zeros of a hand from its letters O. Both are rings, and which is which is often a guess; but in one hand
 * all zeros are of one width and all O of another, wider one.
 */
final class ZeroAndO {

    /** How much wider an O must be for the two to be told apart by it. */
    private static final double WIDER = 1.05;

    private ZeroAndO() {
    }

    /** Sorts the shapes that were taken for zeros and O anew, where their widths fall in two groups. */
    static void part(Map<Character, List<LetterShape>> shapes) {
        List<LetterShape> zeros = shapes.getOrDefault('0', List.of());
        List<LetterShape> all = new ArrayList<>(zeros);
        all.addAll(shapes.getOrDefault('O', List.of()));
        all.sort(Comparator.comparingDouble(LetterShape::width));
        int split = split(all);
        if (split == 0) {
            return;
        }
        List<LetterShape> narrow = List.copyOf(all.subList(0, split));
        List<LetterShape> wide = List.copyOf(all.subList(split, all.size()));
        if (mean(wide) >= WIDER * mean(narrow) && share(zeros, narrow) >= share(zeros, wide)) {
            shapes.put('0', narrow);
            shapes.put('O', wide);
        }
    }

    /** Where two groups of least spread part, by the number in the lower group; 0 where there are no two. */
    private static int split(List<LetterShape> sorted) {
        int best = 0;
        double least = Double.MAX_VALUE;
        for (int i = 1; i < sorted.size(); i++) {
            double spread = spread(sorted.subList(0, i)) + spread(sorted.subList(i, sorted.size()));
            if (spread < least) {
                least = spread;
                best = i;
            }
        }
        return best;
    }

    private static double spread(List<LetterShape> shapes) {
        double mean = mean(shapes);
        return shapes.stream().mapToDouble(s -> (s.width() - mean) * (s.width() - mean)).sum();
    }

    private static double mean(List<LetterShape> shapes) {
        return shapes.stream().mapToDouble(LetterShape::width).average().orElse(0);
    }

    private static double share(List<LetterShape> zeros, List<LetterShape> group) {
        return group.stream().filter(zeros::contains).count() / (double) group.size();
    }
}
