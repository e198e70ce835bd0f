// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.plot.Ink;
import org.probeleaf.waveform.plot.PlotPane;
import org.probeleaf.waveform.plot.PlotTrace;

class SightTest {

    private final Sight sight = new Sight();
    private final PlotPane pane = PlotPane.of(List.of(PlotTrace.of("A", Channel.volts("A", 1, 0, 4, 0, 4, 0), Ink.TRACE_A)),
            List.of()).between(0, 4);

    @BeforeEach
    void show() {
        sight.of(List.of(pane, pane));
        sight.showAll();
    }

    @Test
    void showAll_isFromTheFirstSampleToTheLast() {
        assertEquals(0, sight.from());
        assertEquals(4, sight.to());
    }

    @Test
    void zoom_keepsTheTimeUnderThePointer() {
        sight.zoom(2, 1);
        assertEquals(0.5, sight.from(), 1e-12);
        assertEquals(2.5, sight.to(), 1e-12);
    }

    @Test
    void zoom_neverGetsCloserThanAnyCaptureOrFartherThanFourTimesAll() {
        for (int i = 0; i < 500; i++) {
            sight.zoom(1.25, 2);
        }
        assertTrue(sight.to() - sight.from() >= 1e-13);
        for (int i = 0; i < 500; i++) {
            sight.zoom(0.8, 2);
        }
        assertTrue(sight.to() - sight.from() <= 16, sight.from() + " to " + sight.to());
    }

    @Test
    void move_leavesATenthOfTheTracesInSight() {
        for (int i = 0; i < 100; i++) {
            sight.move(0.5);
        }
        assertEquals(3.6, sight.from(), 1e-9);
        for (int i = 0; i < 100; i++) {
            sight.move(-0.5);
        }
        assertEquals(0.4, sight.to(), 1e-9);
        assertEquals(4, sight.to() - sight.from(), 1e-9);
    }

    @Test
    void zoomValues_isOfOnePaneAlone() {
        sight.zoomValues(1, 2, 1);
        assertEquals(0, sight.panes().get(0).low());
        assertEquals(0.5, sight.panes().get(1).low(), 1e-12);
        assertEquals(2.5, sight.panes().get(1).high(), 1e-12);
        sight.moveValues(1, 0.5);
        assertEquals(1.5, sight.panes().get(1).low(), 1e-12);
        sight.of(List.of(pane));
        assertEquals(0, sight.panes().get(0).low());
    }

    @Test
    void zoomValues_leavesLanesAlone() {
        sight.of(List.of(PlotPane.lane(pane.traces().get(0))));
        sight.zoomValues(0, 2, 0.5);
        assertEquals(1.2, sight.panes().get(0).high());
    }
}
