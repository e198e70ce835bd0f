// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.plot;

import java.util.ArrayList;
import java.util.List;

/** Where the panes of a plot lie: margins for scales, names and the words beside levels, then the heights by their weights. */
final class PaneLayout {

    /** A letter is about so wide. */
    static final double LETTER = 6.2;
    /** Room above a pane for the names of its traces. */
    static final double HEAD = 28;
    private static final double LEFT = 62;
    private static final double RIGHT = 24;
    private static final double FOOT = 26;
    private static final double EDGE = 2;
    private static final double LANE = 22;
    private static final double LANE_GAP = 5;
    private static final double WIDEST = 150;
    private static final double LEAST = 16;

    private final Plot plot;

    PaneLayout(Plot plot) {
        this.plot = plot;
    }

    List<PlotFrame> frames() {
        return plot.bare() ? bare() : full();
    }

    private List<PlotFrame> bare() {
        List<PlotFrame> frames = new ArrayList<>();
        double each = (plot.height() - 2 * EDGE) / Math.max(1, plot.panes().size());
        for (int i = 0; i < plot.panes().size(); i++) {
            frames.add(frame(plot.panes().get(i), EDGE, plot.width() - EDGE, EDGE + i * each, EDGE + (i + 1) * each));
        }
        return frames;
    }

    private List<PlotFrame> full() {
        double left = left();
        double right = Math.max(left + 10, plot.width() - right());
        double lanes = plot.panes().stream().filter(PlotPane::lane).count() * (LANE + LANE_GAP);
        double weights = plot.panes().stream().filter(p -> !p.lane()).mapToDouble(PlotPane::weight).sum();
        double heads = plot.panes().stream().filter(p -> !p.lane()).count() * HEAD;
        double room = plot.height() - FOOT - heads;
        boolean onlyLanes = weights == 0;
        double lane = onlyLanes || lanes < 0.6 * room ? LANE + LANE_GAP
                : 0.6 * room / plot.panes().stream().filter(PlotPane::lane).count();
        if (onlyLanes) {
            lane = Math.max(8, Math.min(2 * LANE, (room - HEAD) / Math.max(1, plot.panes().size())));
        }
        double share = weights == 0 ? 0 : (room - lane * plot.panes().stream().filter(PlotPane::lane).count()) / weights;
        List<PlotFrame> frames = new ArrayList<>();
        double y = onlyLanes ? HEAD / 2 : 0;
        for (PlotPane pane : plot.panes()) {
            double top = y + (pane.lane() ? Math.min(LANE_GAP, lane / 4) : HEAD);
            double bottom = pane.lane() ? y + lane : top + Math.max(LEAST, share * pane.weight());
            frames.add(frame(pane, left, right, top, Math.max(top + 4, bottom)));
            y = bottom;
        }
        return frames;
    }

    private PlotFrame frame(PlotPane pane, double left, double right, double top, double bottom) {
        return new PlotFrame(new PlotWindow(plot.from(), plot.to(), pane.low(), pane.high()), left, top, right, bottom);
    }

    /** Room for the scale, or for the names of lanes where these are longer. */
    private double left() {
        double names = plot.panes().stream().filter(PlotPane::lane).flatMap(p -> p.traces().stream())
                .mapToDouble(t -> t.title().length() * LETTER + 14).max().orElse(0);
        return Math.max(LEFT, Math.min(WIDEST, names));
    }

    /** Room for the words beside levels. */
    private double right() {
        double words = plot.panes().stream().flatMap(p -> p.levels().stream())
                .mapToDouble(l -> l.words().length() * LETTER + GutterWords.AWAY + 4).max().orElse(0);
        return Math.max(RIGHT, Math.min(WIDEST, words));
    }
}
