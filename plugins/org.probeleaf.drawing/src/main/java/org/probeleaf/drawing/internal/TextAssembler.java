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
    /** A gap from which on a space is meant, in letter heights. */
    private static final double SPACE_GAP = 0.18;
    private static final double CAPITAL_HEIGHT = 0.72;
    private static final double DESCENT = 0.2;

    /** One glyph as shown. */
    record Glyph(String text, double x, double y, double endX, double endY, double angle, double size, String font,
            int rgb, boolean visible) {
    }

    private final List<Text> texts = new ArrayList<>();
    private final StringBuilder run = new StringBuilder();
    private Glyph first;
    private Glyph last;

    void add(Glyph glyph) {
        if (glyph.text().isEmpty()) {
            return;
        }
        if (last != null && goesOn(glyph)) {
            double gap = along(glyph.x() - last.endX(), glyph.y() - last.endY());
            if (gap > SPACE_GAP * last.size() && !last.text().isBlank() && !glyph.text().isBlank()) {
                run.append(' ');
            }
        } else {
            flush();
            first = glyph;
        }
        run.append(glyph.text());
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
        return Math.abs(along(dx, dy)) < JOIN_GAP * last.size() && Math.abs(across(dx, dy)) < 0.1 * last.size();
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
        if (first != null) {
            String raw = run.toString();
            String text = raw.strip();
            if (!text.isEmpty()) {
                texts.add(text(raw, text));
            }
        }
        run.setLength(0);
        first = null;
        last = null;
    }

    private Text text(String raw, String stripped) {
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
