// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing.internal;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.drawing.primitive.Text;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/**
 * Joins glyphs into pieces of text: a glyph goes on with the piece before it where it stands on the same base line,
 * in the same style, at about the place where that piece ended. Programs that place each glyph by itself, and those
 * that write whole words, come out alike.
 */
final class TextAssembler {

    /** How far from the expected place the next glyph may stand, in letter heights. */
    private static final double JOIN_GAP = 0.35;
    private static final double LETTER_GAP = 0.2;
    private static final double WHOLE_WORD_GAP = 0.02;
    /** A gap from which on a space is meant, in letter heights. */
    private static final double SPACE_GAP = 0.18;
    private static final double CAPITAL_HEIGHT = 0.72;
    private static final double DESCENT = 0.2;

    /** One glyph as shown. */
    // "show" numbers the text-showing operation that the glyph came from.
    record Glyph(String text, double x, double y, double endX, double endY, double angle, double size, String font,
            int rgb, boolean visible, int show) {
    }

    private final List<Text> texts = new ArrayList<>();
    private final List<Glyph> glyphs = new ArrayList<>();
    private Glyph last;
    private int shownLast;

    void add(Glyph glyph) {
        if (glyph.text().isEmpty()) {
            return;
        }
        if (last != null && goesOn(glyph)) {
            double gap = along(glyph.x() - last.endX(), glyph.y() - last.endY());
            if (gap > SPACE_GAP * last.size() && !last.text().isBlank() && !glyph.text().isBlank()) {
                glyphs.add(new Glyph(" ", last.endX(), last.endY(), glyph.x(), glyph.y(), last.angle(), last.size(),
                        last.font(), last.rgb(), last.visible(), glyph.show()));
            }
        } else {
            flush();
        }
        shownLast = last != null && last.show() == glyph.show() ? shownLast + 1 : 1;
        glyphs.add(glyph);
        last = glyph;
    }

    List<Text> finish() {
        flush();
        return texts;
    }

    private boolean goesOn(Glyph g) {
        if (g.visible() != last.visible() || g.rgb() != last.rgb() || !g.font().equals(last.font())
                || Math.abs(g.angle() - last.angle()) > 1 || Math.abs(g.size() - last.size()) > 0.1 * last.size()) {
            return false;
        }
        double dx = g.x() - last.endX();
        double dy = g.y() - last.endY();
        // A word written in one go stands by itself; what follows is joined only where letters come one by one.
        double gap = g.show() == last.show() ? JOIN_GAP : shownLast > 1 ? WHOLE_WORD_GAP : LETTER_GAP;
        return Math.abs(along(dx, dy)) < gap * last.size() && Math.abs(across(dx, dy)) < 0.1 * last.size();
    }

    private double along(double dx, double dy) {
        double a = Math.toRadians(last.angle());
        return dx * Math.cos(a) + dy * Math.sin(a);
    }

    private double across(double dx, double dy) {
        double a = Math.toRadians(last.angle());
        return -dx * Math.sin(a) + dy * Math.cos(a);
    }

    private void flush() {
        int half = glyphs.size() / 2;
        if (half >= 3 && half * 2 == glyphs.size() && string(glyphs.subList(0, half))
                .equals(string(glyphs.subList(half, glyphs.size())))) {
            // The same word twice without a gap is two labels that happen to stand end to end.
            keep(glyphs.subList(0, half));
            keep(glyphs.subList(half, glyphs.size()));
        } else {
            keep(glyphs);
        }
        glyphs.clear();
        last = null;
    }

    private static String string(List<Glyph> run) {
        StringBuilder s = new StringBuilder();
        run.forEach(g -> s.append(g.text()));
        return s.toString();
    }

    private void keep(List<Glyph> run) {
        String raw = string(run);
        if (!raw.isBlank()) {
            texts.add(text(run.get(0), run.get(run.size() - 1), raw, raw.strip()));
        }
    }

    private static Text text(Glyph first, Glyph last, String raw, String stripped) {
        double a = Math.toRadians(first.angle());
        double ux = Math.cos(a);
        double uy = Math.sin(a);
        // "Up" from the base line, for a direction measured clockwise with y growing downwards.
        double vx = uy;
        double vy = -ux;
        double length = (last.endX() - first.x()) * ux + (last.endY() - first.y()) * uy;
        // Blanks at either end take their share of the length; letters of one width are near enough for a box.
        double lead = length * (raw.length() - raw.stripLeading().length()) / raw.length();
        double trail = length * (raw.length() - raw.stripTrailing().length()) / raw.length();
        double x0 = first.x() + ux * lead;
        double y0 = first.y() + uy * lead;
        double x1 = first.x() + ux * (length - trail);
        double y1 = first.y() + uy * (length - trail);
        double up = CAPITAL_HEIGHT * first.size();
        double down = DESCENT * first.size();
        Box box = Box.of(x0 + vx * up, y0 + vy * up, x1 + vx * up, y1 + vy * up)
                .union(Box.of(x0 - vx * down, y0 - vy * down, x1 - vx * down, y1 - vy * down));
        return new Text(stripped, new Point(x0, y0), first.angle(), first.size(), box, first.font(), first.rgb(),
                first.visible());
    }
}
