// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover.internal.paint;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.probeleaf.handover.wave.Wave;
import org.probeleaf.job.mark.CaptureMark;
import org.probeleaf.job.mark.NoteMark;
import org.probeleaf.job.mark.ReadingMark;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.schematic.quantity.QuantityKind;

/**
 * The card of a note or a reading: a white rounded box with a coloured left side, a sign for a reading, a few lines.
 * Measured first, painted where the layout puts it.
 */
public final class Card {

    private static final double WIDEST_NOTE = 132;
    private static final double NARROWER_NOTE = 84;
    private static final double WIDEST_READING = 118;
    private static final double NARROWER_READING = 72;
    private static final int MOST_LINES = 9;
    private static final double STRIPE = 3.2;
    private static final double PADDING = 4;
    private static final double RADIUS = 2.6;
    private static final double SIGN = 4.3;
    /** Size of the picture of a waveform, in design points. */
    public static final double WAVE_WIDTH = 104;
    public static final double WAVE_HEIGHT = 36;
    private static final double PICTURE_GAP = 2.5;

    /** A line with the room above its base line, both in points. */
    private record Line(String text, Letters letters, double down, boolean besideSign) {
    }

    private final double unit;
    private final Sign sign;
    private final Tint side;
    private final Tint edge;
    private final List<Line> lines = new ArrayList<>();
    private double width;
    private double height;
    private Canvas.Drawn picture;
    private double pictureDown;

    private Card(double unit, Sign sign, Tint side, Tint edge) {
        this.unit = unit;
        this.sign = sign;
        this.side = side;
        this.edge = edge;
        this.height = PADDING * 0.75 * unit;
    }

    /**
     * The card of a note in the shapes worth trying.
     *
     * @param unit points that one design point takes on the page
     */
    public static List<Card> of(NoteMark note, TypeFace face, double unit) {
        return List.of(of(note, face, unit, WIDEST_NOTE), of(note, face, unit, NARROWER_NOTE));
    }

    private static Card of(NoteMark note, TypeFace face, double unit, double widest) {
        Card card = new Card(unit, null, Tint.YELLOW, Tint.BLACK);
        String place = placeName(note.place());
        if (!place.isEmpty()) {
            card.add(face, face.clean(place), Letters.quiet(5.6 * unit), false);
        }
        for (String line : face.wrap(note.text(), widest * unit, 7 * unit, MOST_LINES)) {
            card.add(face, line, Letters.plain(7 * unit), false);
        }
        return card.finished();
    }

    /**
     * The card of a reading in the shapes worth trying.
     *
     * @param unit points that one design point takes on the page
     */
    public static List<Card> of(ReadingMark reading, TypeFace face, double unit) {
        return List.of(of(reading, face, unit, WIDEST_READING * unit),
                of(reading, face, unit, NARROWER_READING * unit));
    }

    private static Card of(ReadingMark reading, TypeFace face, double unit, double widest) {
        Sign sign = Sign.of(reading.verdict());
        Card card = new Card(unit, sign, sign.tint(), sign.tint());
        card.add(face, face.clean(reading.shown()), Letters.strong(9 * unit), true);
        String place = placeName(reading.place());
        String expected = reading.expectation() == null ? "" : "expected " + reading.expectation().text();
        String beside = place.isEmpty() || expected.isEmpty() ? place + expected : place + ", " + expected;
        face.wrap(beside, widest, 5.8 * unit, 2)
                .forEach(l -> card.add(face, l, Letters.quiet(5.8 * unit), false));
        String said = (reading.remark() + " " + reading.circumstances().text()).strip();
        face.wrap(said, widest, 6.4 * unit, 4)
                .forEach(l -> card.add(face, l, Letters.plain(6.4 * unit), false));
        boolean saidByItself = reading.value().kind() == QuantityKind.CONDITION;
        if ((sign == Sign.BAD || sign == Sign.UNSURE) && !saidByItself) {
            face.wrap(reading.verdict().reason(), widest, 5.8 * unit, 3)
                    .forEach(l -> card.add(face, l, Letters.plain(5.8 * unit), false));
        }
        return card.finished();
    }

    /**
     * The card of a waveform, with room for its picture.
     *
     * @param wave    as it was read, or null where nobody read it
     * @param picture draws it in points of the page, or null where there is nothing to draw
     * @param unit    points that one design point takes on the page
     */
    public static List<Card> of(CaptureMark mark, Wave wave, Canvas.Drawn picture, TypeFace face, double unit) {
        Sign sign = wave == null ? Sign.NONE : Sign.of(wave);
        boolean signed = sign != Sign.NONE;
        Card card = new Card(unit, signed ? sign : null, signed ? sign.tint() : Tint.BLUE, signed ? sign.tint() : Tint.BLUE);
        String word = wave == null ? "" : wave.first().map(t -> t.judgement().verdict().word().replace('-', ' ')).orElse("");
        card.add(face, face.clean(word.isEmpty() ? mark.fileName() : word), Letters.strong(7.5 * unit), signed);
        String place = placeName(mark.place());
        face.wrap(place.isEmpty() ? WaveWords.line(wave) : place + ", " + WaveWords.line(wave), WAVE_WIDTH * unit, 5.8 * unit, 2)
                .forEach(l -> card.add(face, l, Letters.quiet(5.8 * unit), false));
        if (picture != null) {
            card.picture(picture);
        }
        face.wrap(mark.note(), WAVE_WIDTH * unit, 6.4 * unit, 3)
                .forEach(l -> card.add(face, l, Letters.plain(6.4 * unit), false));
        return List.of(card.finished());
    }

    private void picture(Canvas.Drawn drawn) {
        picture = drawn;
        pictureDown = height + PICTURE_GAP * unit;
        height = pictureDown + WAVE_HEIGHT * unit;
        width = Math.max(width, WAVE_WIDTH * unit);
    }

    /** What a card says of where it is pinned; nothing for a bare spot, the leader shows that. */
    private static String placeName(Place place) {
        return place instanceof Place.OnPage ? "" : place instanceof Place.OfNet net ? net.net() : place.text();
    }

    private void add(TypeFace face, String text, Letters letters, boolean besideSign) {
        double lead = letters.size() * (lines.isEmpty() ? 0.95 : 1.2);
        height += lead;
        lines.add(new Line(text, letters, height, besideSign));
        double indent = besideSign ? (2 * SIGN + 3) * unit : 0;
        width = Math.max(width, face.width(text, letters.size()) + indent);
    }

    private Card finished() {
        height += (PADDING + 0.4) * unit;
        width += (STRIPE + 2 * PADDING) * unit;
        return this;
    }

    public double width() {
        return width;
    }

    public double height() {
        return height;
    }

    /** Paints it into a box of its size. */
    public void paint(Canvas canvas, Box box) throws IOException {
        double r = RADIUS * unit;
        canvas.fill(new Box(box.x0() + 0.7 * unit, box.y0() + 0.9 * unit, box.x1() + 0.7 * unit, box.y1() + 0.9 * unit),
                r, Tint.BLACK, 0.13);
        canvas.fill(box, r, Tint.WHITE, 1);
        canvas.stripe(box, r, STRIPE * unit, side);
        canvas.outline(box, r, edge, 0.6 * unit);
        if (side == Tint.YELLOW) {
            double x = box.x0() + STRIPE * unit;
            canvas.line(List.of(new Point(x, box.y0()), new Point(x, box.y1())), edge, 0.35 * unit);
        }
        double left = box.x0() + (STRIPE + PADDING) * unit;
        if (picture != null) {
            canvas.drawn(new Point(left, box.y0() + pictureDown), picture);
        }
        for (Line line : lines) {
            double y = box.y0() + line.down();
            double x = left;
            if (line.besideSign()) {
                double middle = y - line.letters().size() * TypeFace.capHeight() / 2;
                sign.paint(canvas, new Point(left + SIGN * unit, middle), SIGN * unit);
                x += (2 * SIGN + 3) * unit;
            }
            canvas.text(new Point(x, y), line.text(), line.letters());
        }
    }

    /** Paints the leader from the anchor to the card, and the dot on the anchor. */
    public void paintLeader(Canvas canvas, Point anchor, Point end) throws IOException {
        double dot = 1.9 * unit;
        double length = anchor.distance(end);
        if (length > dot) {
            Point start = anchor.plus((end.x() - anchor.x()) / length * dot, (end.y() - anchor.y()) / length * dot);
            canvas.line(List.of(start, end), edge, 0.8 * unit);
        }
        canvas.disc(anchor, dot + 0.6 * unit, Tint.WHITE);
        canvas.ring(anchor, dot, edge, 0.9 * unit);
        canvas.disc(anchor, 0.7 * unit, edge);
    }
}
