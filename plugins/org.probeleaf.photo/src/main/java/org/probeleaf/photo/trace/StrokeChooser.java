// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo.trace;

import java.util.List;

/**
 * Follows the trace from column to column: of all ways through the strokes the one that gathers most light with the fewest
 * jumps (dynamic programming). Columns may be left out, at a cost.
 */
final class StrokeChooser {

    private static final double JUMP = 2.5;
    private static final double LEFT_OUT = 0.25;
    private static final double LONGEST_GAP = 0.6;
    private static final double NEW_START = 6;

    private StrokeChooser() {
    }

    /** For each column the stroke that is the trace's; null for none. */
    static Strokes.Stroke[] choose(Strokes strokes) {
        List<List<Strokes.Stroke>> columns = strokes.columns;
        int n = columns.size();
        int scale = strokes.flat.scale;
        int back = Math.max(2, (int) (LONGEST_GAP * scale));
        double[][] score = new double[n][];
        int[][] fromColumn = new int[n][];
        int[][] fromStroke = new int[n][];
        double bestBefore = 0;
        int bestColumn = -1;
        int bestStroke = -1;
        double[] ends = new double[n];
        int[] endStroke = new int[n];
        int pending = 0;
        for (int x = 0; x < n; x++) {
            List<Strokes.Stroke> here = columns.get(x);
            // A start anew after a longer gap, from the best way that ended before it.
            for (; pending < x - back; pending++) {
                if (score[pending] != null && score[pending].length > 0 && ends[pending] > bestBefore) {
                    bestBefore = ends[pending];
                    bestColumn = pending;
                    bestStroke = endStroke[pending];
                }
            }
            score[x] = new double[here.size()];
            fromColumn[x] = new int[here.size()];
            fromStroke[x] = new int[here.size()];
            ends[x] = Double.NEGATIVE_INFINITY;
            for (int i = 0; i < here.size(); i++) {
                Strokes.Stroke s = here.get(i);
                double best = bestColumn < 0 ? 0 : Math.max(0, bestBefore - NEW_START);
                int column = best > 0 ? bestColumn : -1;
                int stroke = best > 0 ? bestStroke : -1;
                for (int b = x - 1; b >= Math.max(0, x - back); b--) {
                    for (int k = 0; k < score[b].length; k++) {
                        double jump = columns.get(b).get(k).gap(s) / scale;
                        double v = score[b][k] - JUMP * Math.sqrt(jump) * (jump > 0.04 ? 1 : 0) - LEFT_OUT * (x - 1 - b);
                        if (v > best) {
                            best = v;
                            column = b;
                            stroke = k;
                        }
                    }
                }
                score[x][i] = best + Math.min(1, s.peak() / strokes.usual);
                fromColumn[x][i] = column;
                fromStroke[x][i] = stroke;
                if (score[x][i] > ends[x]) {
                    ends[x] = score[x][i];
                    endStroke[x] = i;
                }
            }
        }
        return back(columns, ends, endStroke, fromColumn, fromStroke);
    }

    private static Strokes.Stroke[] back(List<List<Strokes.Stroke>> columns, double[] ends, int[] endStroke,
            int[][] fromColumn, int[][] fromStroke) {
        Strokes.Stroke[] chosen = new Strokes.Stroke[columns.size()];
        int x = 0;
        for (int i = 1; i < ends.length; i++) {
            x = ends[i] > ends[x] ? i : x;
        }
        int stroke = endStroke[x];
        while (x >= 0 && !columns.get(x).isEmpty()) {
            chosen[x] = columns.get(x).get(stroke);
            int column = fromColumn[x][stroke];
            stroke = fromStroke[x][stroke];
            x = column;
        }
        return chosen;
    }
}
