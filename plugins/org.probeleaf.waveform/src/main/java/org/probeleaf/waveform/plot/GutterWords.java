// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.plot;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.probeleaf.waveform.plot.PlotShape.Lean;
import org.probeleaf.waveform.plot.PlotShape.Line;
import org.probeleaf.waveform.plot.PlotShape.Words;

/** The words of levels in the right margin, moved apart where they would lie on each other, each led to its line. */
final class GutterWords {

    /** From the frame to the words. */
    static final double AWAY = 14;
    private static final double APART = 13;

    private GutterWords() {
    }

    static List<PlotShape> of(List<PlotLevel> levels, PlotFrame frame) {
        List<PlotLevel> shown = levels.stream().filter(l -> l.value() >= frame.window().low()
                && l.value() <= frame.window().high()).sorted(Comparator.comparingDouble(PlotLevel::value).reversed()).toList();
        double[] y = shown.stream().mapToDouble(l -> frame.y(l.value())).toArray();
        double[] placed = apart(y, frame.top() - APART / 2, frame.bottom() + APART / 2);
        List<PlotShape> shapes = new ArrayList<>();
        for (int i = 0; i < y.length; i++) {
            Ink ink = shown.get(i).ink();
            shapes.add(new Line(new double[] {frame.right(), y[i], frame.right() + AWAY - 4, placed[i]}, ink));
            shapes.add(new Words(frame.right() + AWAY, placed[i], shown.get(i).words(), Lean.START, false, ink));
        }
        return shapes;
    }

    /** Rising places no closer than the height of letters, each as near to its own as pushing down and then up allows. */
    static double[] apart(double[] rising, double top, double bottom) {
        double[] placed = rising.clone();
        double least = top;
        for (int i = 0; i < placed.length; i++) {
            placed[i] = Math.max(least, placed[i]);
            least = placed[i] + APART;
        }
        double most = bottom;
        for (int i = placed.length - 1; i >= 0; i--) {
            placed[i] = Math.min(most, placed[i]);
            most = placed[i] - APART;
        }
        return placed;
    }
}
