// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover.internal.paint;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/** The legend of a page: what the marks on it mean, who made them and when, and what can hurt. */
public final class Legend {

    private static final double PADDING = 6;
    private static final double SYMBOL = 19;
    private static final double WIDEST = 150;

    /** Paints a symbol round a middle. */
    @FunctionalInterface
    private interface Symbol {
        void paint(Canvas canvas, Point middle) throws IOException;
    }

    /** A line; symbol and text share the middle {@code down} points below the top edge. */
    private record Row(Symbol symbol, String text, Letters letters, double down) {
    }

    private final TypeFace face;
    private final double unit;
    private final List<Row> rows = new ArrayList<>();
    private double width;
    private double height;
    private double ruleAt;

    /**
     * @param unit points that one design point takes on the page
     */
    public Legend(TypeFace face, double unit) {
        this.face = face;
        this.unit = unit;
        this.height = PADDING * unit;
    }

    /** The head: a title and quieter lines under it. */
    public void head(String title, List<String> lines) {
        for (String line : face.wrap(title, WIDEST * unit, 8 * unit, 2)) {
            add(null, line, Letters.strong(8 * unit), 10.5);
        }
        for (String text : lines) {
            face.wrap(text, WIDEST * unit, 5.8 * unit, 3).forEach(l -> add(null, l, Letters.quiet(5.8 * unit), 7.6));
        }
        height += 3 * unit;
        ruleAt = height;
        height += 2.6 * unit;
    }

    /** A traced net by its band. */
    public void net(String text, Tint tint) {
        item((canvas, m) -> canvas.band(List.of(List.of(m.plus(-6.5 * unit, 0), m.plus(6.5 * unit, 0))), tint,
                5.4 * unit, 0.62), text);
        // The line that the band lies on tells it from a bare bar of colour.
        Row band = rows.get(rows.size() - 1);
        rows.set(rows.size() - 1, new Row((canvas, m) -> {
            band.symbol().paint(canvas, m);
            canvas.line(List.of(m.plus(-8.5 * unit, 0), m.plus(8.5 * unit, 0)), Tint.BLACK, 0.6 * unit);
        }, band.text(), band.letters(), band.down()));
    }

    /** The technician's own net names. */
    public void ownName(String text) {
        Tag tag = Tag.of("NET", true, Tint.BLUE, face, unit * 0.78);
        item((canvas, m) -> tag.paint(canvas, round(m, tag.width(), tag.height())), text);
    }

    /** A sign of readings. */
    public void sign(Sign sign) {
        item((canvas, m) -> sign.paint(canvas, m, 3.7 * unit), sign.words());
    }

    /** Notes. */
    public void note(String text) {
        item((canvas, m) -> {
            Box box = round(m, 12 * unit, 7.4 * unit);
            canvas.card(box, 1.2 * unit, Tint.WHITE, Tint.BLACK, 0.5 * unit);
            canvas.stripe(box, 1.2 * unit, 2.6 * unit, Tint.YELLOW);
            canvas.outline(box, 1.2 * unit, Tint.BLACK, 0.5 * unit);
        }, text);
    }

    /** What can hurt, with the triangle that warns. */
    public void caution(String text) {
        item((canvas, m) -> {
            double r = 4.6 * unit;
            List<Point> corners = List.of(m.plus(0, -r * 0.86), m.plus(r, r * 0.8), m.plus(-r, r * 0.8));
            canvas.shape(corners, Tint.YELLOW);
            canvas.line(List.of(corners.get(0), corners.get(1), corners.get(2), corners.get(0)), Tint.BLACK,
                    0.8 * unit);
            double size = 6.2 * unit;
            canvas.text(m.plus(-face.width("!", size) / 2, r * 0.62), "!", Letters.strong(size));
        }, text);
    }

    /** A quiet closing line. */
    public void foot(String text) {
        height += 1.5 * unit;
        face.wrap(text, WIDEST * unit, 5.2 * unit, 4).forEach(l -> add(null, l, Letters.quiet(5.2 * unit), 6.6));
    }

    private void item(Symbol symbol, String text) {
        List<String> lines = face.wrap(text, (WIDEST - SYMBOL) * unit, 6.4 * unit, 2);
        for (int i = 0; i < lines.size(); i++) {
            add(i == 0 ? symbol : (canvas, m) -> { }, lines.get(i), Letters.plain(6.4 * unit), i == 0 ? 10 : 7.8);
        }
    }

    private void add(Symbol symbol, String text, Letters letters, double room) {
        String clean = face.clean(text);
        double middle = height + room * unit / 2;
        height += room * unit;
        rows.add(new Row(symbol, clean, letters, middle));
        width = Math.max(width, face.width(clean, letters.size()) + (symbol == null ? 0 : SYMBOL * unit));
    }

    private static Box round(Point m, double w, double h) {
        return new Box(m.x() - w / 2, m.y() - h / 2, m.x() + w / 2, m.y() + h / 2);
    }

    public double width() {
        return width + 2 * PADDING * unit;
    }

    public double height() {
        return height + (PADDING - 1) * unit;
    }

    /** Paints it into a box of its size. */
    public void paint(Canvas canvas, Box box) throws IOException {
        canvas.card(box, 3 * unit, Tint.WHITE, Tint.BLACK, 0.6 * unit);
        double left = box.x0() + PADDING * unit;
        canvas.line(List.of(new Point(left, box.y0() + ruleAt), new Point(box.x1() - PADDING * unit,
                box.y0() + ruleAt)), Tint.BLACK, 0.35 * unit);
        for (Row row : rows) {
            double middle = box.y0() + row.down();
            double x = left;
            if (row.symbol() != null) {
                row.symbol().paint(canvas, new Point(left + SYMBOL * unit / 2 - 1.5 * unit, middle));
                x += SYMBOL * unit;
            }
            canvas.text(new Point(x, middle + row.letters().size() * TypeFace.capHeight() / 2), row.text(),
                    row.letters());
        }
    }
}
