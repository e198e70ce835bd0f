// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.ink;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.drawing.primitive.Drawing;
import org.probeleaf.drawing.primitive.Text;

/** Makes a page's ink ready for reading; see the package for the steps. */
public final class InkPreparer {

    /** How far ends that are meant to meet may miss each other, in pitches. */
    private static final double REACH = 0.07;

    private InkPreparer() {
    }

    /**
     * Prepares one page.
     *
     * @param drawing the page, its lettering taken from its strokes
     */
    public static PageInk prepare(Drawing drawing) {
        Cutter cutter = new Cutter(drawing);
        List<Segment> drawn = Doubles.without(new Frame(cutter.segments(), cutter.styles(), cutter.dots(),
                drawing.width(), drawing.height(), 0.5).drawing());
        List<Text> texts = drawing.texts();
        double pitch = Pitch.measure(drawn, texts);
        double reach = Math.max(0.15, REACH * pitch);
        List<Segment> segments = Hops.straightened(drawn, pitch, reach);
        StyleRoles roles = new StyleRoles(segments, cutter.styles(), cutter.dots(), texts, pitch, reach);
        List<Segment> wires = new ArrayList<>();
        List<Segment> buses = new ArrayList<>();
        List<Segment> symbols = new ArrayList<>();
        SymbolLines own = new SymbolLines(segments, pitch, reach);
        for (Segment s : segments) {
            switch (roles.role(s.style())) {
                case WIRE -> (own.isSymbol(s) ? symbols : wires).add(s);
                case BUS -> buses.add(s);
                default -> symbols.add(s);
            }
        }
        return new PageInk(drawing.page(), drawing.width(), drawing.height(), wires, buses,
                Halves.joined(symbols, pitch, reach), cutter.dots(), texts, pitch, reach);
    }
}
