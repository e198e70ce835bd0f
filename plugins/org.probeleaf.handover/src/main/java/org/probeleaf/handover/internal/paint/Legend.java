// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover.internal.paint;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/**
 * The legend of a page: what the marks on it mean, who made them and when, and what can hurt. It is collected first;
 * {@link #form} then sets it in one or more columns, for the layout to choose which fits the page best.
 */
public final class Legend {

    private static final double SYMBOL = 19;
    private static final double WIDEST = 128;
    private static final double WIDEST_HEAD = 170;
    private static final double ITEM = 6.4;

    /** Paints a symbol round a middle. */
    @FunctionalInterface
    private interface Symbol {
        void paint(Canvas canvas, Point middle) throws IOException;
    }

    private record Item(Symbol symbol, List<String> lines) {
    }

    private final TypeFace face;
    private final double unit;
    private final List<Item> items = new ArrayList<>();
    private String title = "";
    private List<String> under = List.of();
    private String foot = "";

    /**
     * @param unit points that one design point takes on the page
     */
    public Legend(TypeFace face, double unit) {
        this.face = face;
        this.unit = unit;
    }

    /** The head: a title and quieter lines under it. */
    public void head(String text, List<String> lines) {
        title = text;
        under = List.copyOf(lines);
    }

    /** A quiet closing line. */
    public void foot(String text) {
        foot = text;
    }

    public boolean isEmpty() {
        return items.isEmpty();
    }

    /** A traced net by its band, on the line that it lies on. */
    public void net(String text, Tint tint) {
        item((canvas, m) -> {
            canvas.band(List.of(List.of(m.plus(-6.5 * unit, 0), m.plus(6.5 * unit, 0))), tint, 5.4 * unit, 0.62);
            canvas.line(List.of(m.plus(-8.5 * unit, 0), m.plus(8.5 * unit, 0)), Tint.BLACK, 0.6 * unit);
        }, text);
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

    /** Waveforms. */
    public void waveform(String text) {
        item((canvas, m) -> {
            Box box = round(m, 12 * unit, 8.4 * unit);
            canvas.card(box, 1.2 * unit, Tint.WHITE, Tint.BLUE, 0.6 * unit);
            double h = 2 * unit;
            canvas.line(List.of(m.plus(-4.5 * unit, h), m.plus(-2 * unit, h), m.plus(-2 * unit, -h), m.plus(1 * unit, -h),
                    m.plus(1 * unit, h), m.plus(3.6 * unit, h), m.plus(3.6 * unit, -h)), Tint.BLUE, 0.7 * unit);
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

    private void item(Symbol symbol, String text) {
        items.add(new Item(symbol, face.wrap(text, (WIDEST - SYMBOL) * unit, ITEM * unit, 2)));
    }

    private static Box round(Point m, double w, double h) {
        return new Box(m.x() - w / 2, m.y() - h / 2, m.x() + w / 2, m.y() + h / 2);
    }

    /** A legend set in columns. */
    public static final class Form {

        /** A line whose middle is {@code x, y} from the top left; a symbol's middle stands left of it. */
        private record Row(Symbol symbol, String text, Letters letters, double x, double y) {
        }

        private static final double PADDING = 6;
        private static final double GUTTER = 10;

        private final Legend legend;
        private final double unit;
        private final List<Row> rows = new ArrayList<>();
        private double width;
        private double height;
        private double ruleAt;

        private Form(Legend legend, int columns) {
            this.legend = legend;
            this.unit = legend.unit;
            double inner = columnWidths(columns);
            this.width = inner + 2 * PADDING * unit;
            this.height = PADDING * unit;
            head(inner);
            columns(columns);
            foot(inner);
            this.height += (PADDING - 1) * unit;
        }

        private int perColumn(int columns) {
            return (legend.items.size() + columns - 1) / columns;
        }

        private double columnWidth(int column, int columns) {
            int from = Math.min(legend.items.size(), column * perColumn(columns));
            int to = Math.min(legend.items.size(), from + perColumn(columns));
            return legend.items.subList(from, to).stream().flatMap(i -> i.lines().stream())
                    .mapToDouble(l -> legend.face.width(l, ITEM * unit)).max().orElse(0) + SYMBOL * unit;
        }

        private double columnWidths(int columns) {
            double sum = 0;
            for (int c = 0; c < columns; c++) {
                sum += columnWidth(c, columns) + (c == 0 ? 0 : GUTTER * unit);
            }
            double head = legend.under.stream().mapToDouble(l -> legend.face.width(l, 5.8 * unit)).max().orElse(0);
            return Math.max(sum, Math.max(96 * unit, Math.min(WIDEST_HEAD * unit, head)));
        }

        private void head(double inner) {
            for (String line : legend.face.wrap(legend.title, inner, 8 * unit, 2)) {
                add(line, Letters.strong(8 * unit), 10.5);
            }
            for (String text : legend.under) {
                legend.face.wrap(text, inner, 5.8 * unit, 2).forEach(l -> add(l, Letters.quiet(5.8 * unit), 7.6));
            }
            height += 2.6 * unit;
            ruleAt = height;
            height += 2.6 * unit;
        }

        private void columns(int columns) {
            double top = height;
            double left = PADDING * unit;
            double bottom = top;
            for (int c = 0; c < columns; c++) {
                double y = top;
                for (int i = c * perColumn(columns); i < Math.min(legend.items.size(), (c + 1) * perColumn(columns));
                        i++) {
                    Item item = legend.items.get(i);
                    for (int l = 0; l < item.lines().size(); l++) {
                        double room = (l == 0 ? 10.2 : 7.6) * unit;
                        rows.add(new Row(l == 0 ? item.symbol() : null, item.lines().get(l),
                                Letters.plain(ITEM * unit), left + SYMBOL * unit, y + room / 2));
                        y += room;
                    }
                }
                bottom = Math.max(bottom, y);
                left += columnWidth(c, columns) + GUTTER * unit;
            }
            height = bottom;
        }

        private void foot(double inner) {
            List<String> lines = legend.face.wrap(legend.foot, inner, 5.2 * unit, 4);
            height += lines.isEmpty() ? 0 : 1.6 * unit;
            lines.forEach(l -> add(l, Letters.quiet(5.2 * unit), 6.6));
        }

        private void add(String text, Letters letters, double room) {
            String clean = legend.face.clean(text);
            rows.add(new Row(null, clean, letters, PADDING * unit, height + room * unit / 2));
            height += room * unit;
        }

        public double width() {
            return width;
        }

        public double height() {
            return height;
        }

        /** Paints it into a box of its size. */
        public void paint(Canvas canvas, Box box) throws IOException {
            canvas.card(box, 3 * unit, Tint.WHITE, Tint.BLACK, 0.6 * unit);
            canvas.line(List.of(new Point(box.x0() + PADDING * unit, box.y0() + ruleAt),
                    new Point(box.x1() - PADDING * unit, box.y0() + ruleAt)), Tint.BLACK, 0.35 * unit);
            for (Row row : rows) {
                Point at = new Point(box.x0() + row.x(), box.y0() + row.y());
                if (row.symbol() != null) {
                    row.symbol().paint(canvas, at.plus(-(SYMBOL / 2 + 1.5) * unit, 0));
                }
                canvas.text(at.plus(0, row.letters().size() * TypeFace.capHeight() / 2), row.text(), row.letters());
            }
        }
    }

    /** Sets the legend in columns. */
    public Form form(int columns) {
        return new Form(this, columns);
    }

    /** The forms worth trying, the plainest first. */
    public List<Form> forms() {
        List<Form> forms = new ArrayList<>();
        for (int columns = 1; columns <= 4 && (columns == 1 || items.size() > columns); columns++) {
            forms.add(form(columns));
        }
        return forms;
    }
}
