// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8.sheet;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.example.tl8.ink.Ink;
import org.probeleaf.example.tl8.ink.PageInk;
import org.probeleaf.example.tl8.ink.Typeface;
import org.probeleaf.example.tl8.symbol.Symbol;
import org.probeleaf.example.tl8.symbol.SymbolPin;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/** Turns the model of a page into ink. */
public final class Inking {
    private static final double NUMBER_SIZE = 5.2;
    private static final double NAME_SIZE = 6;
    private static final double REF_SIZE = 7;
    private static final double VALUE_SIZE = 6.2;
    private static final double LABEL_SIZE = 6.2;
    private static final double WHERE_SIZE = 5;
    private static final double DOT = 1.8;
    private static final double TIP = 5;

    private final Typeface typeface;
    private final List<Ink> marks = new ArrayList<>();

    private Inking(Typeface typeface) {
        this.typeface = typeface;
    }

    /** The ink of {@code page}. */
    public static PageInk of(Page page, Typeface typeface) {
        Inking inking = new Inking(typeface);
        page.notes().forEach(n -> inking.marks.add(n.ink()));
        page.parts().forEach(inking::part);
        page.runs().forEach(inking::run);
        page.names().forEach(inking::name);
        Connections.junctions(page).forEach(s -> inking.marks.add(new Ink.Disc(s.point(), DOT, true)));
        return new PageInk(page.columns() * Symbol.GRID, page.rows() * Symbol.GRID, inking.marks);
    }

    private void run(WireRun run) {
        marks.add(new Ink.Line(run.spots().stream().map(Spot::point).toList(), run.bus() ? Ink.THICK : Ink.THIN, false,
                false));
    }

    private void part(Placed part) {
        marks.addAll(part.symbol().ink(part.origin().x(), part.origin().y()));
        for (SymbolPin pin : part.symbol().pins()) {
            pinWords(part, pin);
        }
        partWords(part);
    }

    private void pinWords(Placed part, SymbolPin pin) {
        Point end = part.spot(pin).point();
        double dx = (pin.root().x() - pin.end().x()) * Symbol.GRID;
        double dy = (pin.root().y() - pin.end().y()) * Symbol.GRID;
        boolean upright = Math.abs(dy) > Math.abs(dx);
        if (pin.number() != null) {
            pinNumber(pin.number(), end, part.box(), upright);
        }
        if (pin.name() != null) {
            double inset = 2.2;
            double half = 0.36 * NAME_SIZE;
            Point root = end.plus(dx, dy);
            if (upright) {
                words(pin.name(), root.plus(half, dy > 0 ? inset : -inset), dy > 0 ? 1 : 0, NAME_SIZE, true);
            } else {
                words(pin.name(), root.plus(dx > 0 ? inset : -inset, half), dx > 0 ? 0 : 1, NAME_SIZE, false);
            }
        }
    }

    /** Beside the line, half way to the body: digits along the line, letters always level. */
    private void pinNumber(String number, Point end, Box body, boolean upright) {
        Point edge = new Point(Math.max(body.x0(), Math.min(body.x1(), end.x())),
                Math.max(body.y0(), Math.min(body.y1(), end.y())));
        Point middle = new Point((end.x() + edge.x()) / 2, (end.y() + edge.y()) / 2);
        if (!upright) {
            words(number, middle.plus(0, -1.4), 0.5, NUMBER_SIZE, false);
        } else if (Character.isDigit(number.charAt(0))) {
            words(number, middle.plus(-1.4, 0), 0.5, NUMBER_SIZE, true);
        } else {
            words(number, middle.plus(-1.6, 0.36 * NUMBER_SIZE), 1, NUMBER_SIZE, false);
        }
    }

    private void partWords(Placed part) {
        Box b = part.box();
        Point c = b.centre();
        String ref = part.title();
        String value = part.value() == null ? "" : part.value();
        switch (part.words()) {
            case ABOVE_AND_BELOW -> {
                words(ref, new Point(b.x0(), b.y0() - 2.6), 0, REF_SIZE, false);
                words(value, new Point(b.x0(), b.y1() + 7.2), 0, VALUE_SIZE, false);
            }
            case CENTRED -> {
                words(ref, new Point(c.x(), b.y0() - 2.6), 0.5, REF_SIZE, false);
                words(value, new Point(c.x(), b.y1() + 7.4), 0.5, VALUE_SIZE, false);
            }
            case BOTH_ABOVE -> {
                words(ref, new Point(c.x(), b.y0() - 9.4), 0.5, REF_SIZE, false);
                words(value, new Point(c.x(), b.y0() - 2.4), 0.5, VALUE_SIZE, false);
            }
            case BOTH_BELOW -> {
                words(ref, new Point(c.x(), b.y1() + 7.6), 0.5, REF_SIZE, false);
                words(value, new Point(c.x(), b.y1() + 14.6), 0.5, VALUE_SIZE, false);
            }
            case RIGHT -> {
                words(ref, new Point(b.x1() + 2.6, c.y() - 1), 0, REF_SIZE, false);
                words(value, new Point(b.x1() + 2.6, c.y() + 6), 0, VALUE_SIZE, false);
            }
            case LEFT -> {
                words(ref, new Point(b.x0() - 2.6, c.y() - 1), 1, REF_SIZE, false);
                words(value, new Point(b.x0() - 2.6, c.y() + 6), 1, VALUE_SIZE, false);
            }
        }
    }

    private void name(NameTag tag) {
        Point at = tag.at().point();
        switch (tag.kind()) {
            case LABEL -> words(tag.text(), at.plus(1, -2.1), 0, LABEL_SIZE, false);
            case BUS -> words(tag.text(), at.plus(1, -4), 0, LABEL_SIZE, false);
            case POWER -> power(tag.text(), at);
            case OFFSHEET -> flag(tag, at);
        }
    }

    private void power(String text, Point at) {
        if (text.startsWith("GND")) {
            marks.add(Ink.Line.thin(at, at.plus(0, 5)));
            for (int i = 0; i < 3; i++) {
                double half = 6 - 2.1 * i;
                marks.add(Ink.Line.thin(at.plus(-half, 5 + 2 * i), at.plus(half, 5 + 2 * i)));
            }
            words(text, at.plus(0, 16.5), 0.5, LABEL_SIZE, false);
        } else {
            marks.add(Ink.Line.thin(at, at.plus(0, -7)));
            marks.add(Ink.Line.thin(at.plus(-6, -7), at.plus(6, -7)));
            words(text, at.plus(0, -9.2), 0.5, LABEL_SIZE, false);
        }
    }

    /** A flag that points the way of the signal: it leaves by its flat side and enters by its tip. */
    private void flag(NameTag tag, Point at) {
        double way = tag.right() ? 1 : -1;
        double length = typeface.width(tag.text(), LABEL_SIZE) + 7 + TIP;
        Point far = at.plus(way * length, 0);
        Point flat = tag.leaves() ? at : far;
        Point tip = tag.leaves() ? far : at;
        double shoulder = tip.x() - Math.signum(tip.x() - flat.x()) * TIP;
        double half = 4.6;
        marks.add(Ink.Line.outline(flat.plus(0, -half), new Point(shoulder, at.y() - half), tip,
                new Point(shoulder, at.y() + half), flat.plus(0, half)));
        words(tag.text(), new Point((flat.x() + shoulder) / 2, at.y() + 2.2), 0.5, LABEL_SIZE, false);
        words(tag.where(), far.plus(way * 3, 1.8), tag.right() ? 0 : 1, WHERE_SIZE, false);
    }

    private void words(String text, Point at, double anchor, double size, boolean upward) {
        if (!text.isEmpty()) {
            marks.add(new Ink.Words(text, at, anchor, size, upward));
        }
    }
}
