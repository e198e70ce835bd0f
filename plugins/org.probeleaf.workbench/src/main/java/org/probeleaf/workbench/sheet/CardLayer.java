// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.probeleaf.job.JobState;
import org.probeleaf.job.expectation.Outcome;
import org.probeleaf.job.mark.CaptureMark;
import org.probeleaf.job.mark.LabelMark;
import org.probeleaf.job.mark.Mark;
import org.probeleaf.job.mark.NoteMark;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.waveform.plot.Plot;
import org.probeleaf.workbench.geometry.CardLayout;
import org.probeleaf.workbench.geometry.InkMap;
import org.probeleaf.workbench.geometry.PageFrame;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;
import org.probeleaf.workbench.session.LoadedCapture;
import org.probeleaf.workbench.plot.PlotPaint;

/** The marks of the job on the sheet: cards with leader lines, or dots where the sheet is shown small. */
final class CardLayer {

    /** Below this zoom cards fold to dots. */
    private static final double FOLD = 0.42;
    private static final int PAD = 6;
    private static final int DOT = 5;
    private static final int THUMB_WIDTH = 130;
    private static final int THUMB_HEIGHT = 46;

    /** A mark as it stands on the screen. */
    private record Shown(Mark mark, CardText text, Box box, Point anchor) {
    }

    private record Key(int page, double zoom, long revision, boolean inked) {
    }

    private final Look look;
    private final Function<CaptureMark, Optional<LoadedCapture>> captures;
    private final Function<CaptureMark, Optional<Outcome>> signs;
    private final Font head;
    private final Font body;
    private final Map<Integer, List<Shown>> shown = new HashMap<>();
    private final Map<Key, List<Box>> layouts = new HashMap<>();
    private String dragged;
    private Point draggedTo;

    /**
     * @param captures gives a capture as it was read; empty while it is being read
     * @param signs    gives the verdict of a capture; empty where there is none
     */
    CardLayer(Look look, Function<CaptureMark, Optional<LoadedCapture>> captures,
            Function<CaptureMark, Optional<Outcome>> signs) {
        this.look = look;
        this.captures = captures;
        this.signs = signs;
        this.head = look.font(0, true);
        this.body = look.font(-1, false);
    }

    /** Moves a card by hand while it is dragged: its top left corner on the page, or null to end. */
    void drag(String id, Point corner) {
        dragged = id;
        draggedTo = corner;
    }

    /** Paints the marks of a page and keeps where they stand. */
    void paint(GC gc, PageFrame frame, JobState state, InkMap ink, String selected) {
        List<Mark> marks = marks(state, frame.page());
        List<Shown> now = new ArrayList<>();
        if (frame.zoom() < FOLD) {
            for (Mark m : marks) {
                Point at = frame.toScreen(m.at());
                now.add(new Shown(m, text(m), new Box(at.x() - DOT, at.y() - DOT, at.x() + DOT, at.y() + DOT),
                        at));
            }
            now.forEach(s -> dot(gc, s, s.mark().id().equals(selected)));
        } else {
            List<CardText> texts = marks.stream().map(this::text).toList();
            List<Box> boxes = layout(gc, frame, marks, texts, ink, state.revision());
            for (int i = 0; i < marks.size(); i++) {
                Mark m = marks.get(i);
                Box box = m.id().equals(dragged) && draggedTo != null ? moved(boxes.get(i), draggedTo) : boxes.get(i);
                now.add(new Shown(m, texts.get(i), frame.toScreen(box), frame.toScreen(m.at())));
            }
            now.forEach(s -> leader(gc, s));
            now.forEach(s -> card(gc, s, s.mark().id().equals(selected)));
        }
        shown.put(frame.page(), now);
    }

    /** The marks on a page in the order of painting. */
    private static List<Mark> marks(JobState state, int page) {
        List<Mark> marks = new ArrayList<>();
        state.labels().stream().filter(m -> m.page() == page).forEach(marks::add);
        state.notes().stream().filter(m -> m.page() == page).forEach(marks::add);
        state.captures().stream().filter(m -> m.page() == page).forEach(marks::add);
        state.readings().stream().filter(m -> m.page() == page).forEach(marks::add);
        return marks;
    }

    private CardText text(Mark mark) {
        CardText plain = CardText.of(mark);
        return mark instanceof CaptureMark capture ? signs.apply(capture).map(plain::with).orElse(plain) : plain;
    }

    private static Box moved(Box box, Point corner) {
        return new Box(corner.x(), corner.y(), corner.x() + box.width(), corner.y() + box.height());
    }

    private List<Box> layout(GC gc, PageFrame frame, List<Mark> marks, List<CardText> texts, InkMap ink, long rev) {
        Key key = new Key(frame.page(), frame.zoom(), rev, ink != null);
        List<Box> known = layouts.get(key);
        if (known != null) {
            return known;
        }
        double pixel = 1 / frame.zoom();
        List<CardLayout.Card> cards = new ArrayList<>();
        for (int i = 0; i < marks.size(); i++) {
            org.eclipse.swt.graphics.Point size = size(gc, texts.get(i));
            if (marks.get(i) instanceof CaptureMark) {
                size.x = Math.max(size.x, THUMB_WIDTH + 2 * PAD);
                size.y += THUMB_HEIGHT + 4;
            }
            Mark m = marks.get(i);
            Point corner = m.card() == null ? null : m.at().plus(m.card().dx(), m.card().dy());
            cards.add(new CardLayout.Card(m.at(), size.x * pixel, size.y * pixel, corner));
        }
        List<Box> boxes = CardLayout.place(cards, new Box(0, 0, frame.width(), frame.height()), ink, pixel);
        if (layouts.size() > 40) {
            layouts.clear();
        }
        layouts.put(key, boxes);
        return boxes;
    }

    private org.eclipse.swt.graphics.Point size(GC gc, CardText text) {
        gc.setFont(head);
        org.eclipse.swt.graphics.Point h = gc.textExtent(text.head());
        int width = h.x + (text.outcome() == null ? 0 : h.y + 2);
        int height = h.y;
        gc.setFont(body);
        for (String line : text.body()) {
            org.eclipse.swt.graphics.Point b = gc.textExtent(line);
            width = Math.max(width, b.x);
            height += b.y;
        }
        return new org.eclipse.swt.graphics.Point(width + 2 * PAD + 4, height + 2 * PAD - 3);
    }

    private void leader(GC gc, Shown s) {
        Point end = CardLayout.leaderEnd(s.box(), s.anchor());
        gc.setForeground(look.colour(s.text().colour()));
        gc.setBackground(look.colour(s.text().colour()));
        gc.setLineWidth(1);
        gc.drawLine(round(s.anchor().x()), round(s.anchor().y()), round(end.x()), round(end.y()));
        gc.fillOval(round(s.anchor().x()) - 3, round(s.anchor().y()) - 3, 6, 6);
    }

    private void card(GC gc, Shown s, boolean selected) {
        Rectangle r = PagePainter.rectangle(s.box());
        gc.setAlpha(40);
        gc.setBackground(look.colour(Palette.TEXT));
        gc.fillRoundRectangle(r.x + 1, r.y + 2, r.width, r.height, 8, 8);
        gc.setAlpha(255);
        gc.setBackground(look.colour(s.mark() instanceof NoteMark ? Palette.NOTICE : Palette.WHITE));
        gc.fillRoundRectangle(r.x, r.y, r.width, r.height, 8, 8);
        gc.setForeground(look.colour(selected ? Palette.TEXT : s.text().colour()));
        gc.setLineWidth(selected ? 2 : 1);
        gc.drawRoundRectangle(r.x, r.y, r.width, r.height, 8, 8);
        gc.setLineWidth(1);
        gc.setBackground(look.colour(s.text().colour()));
        gc.fillRectangle(r.x + 1, r.y + 4, 3, r.height - 7);
        text(gc, s, r);
    }

    private void text(GC gc, Shown s, Rectangle r) {
        int x = r.x + PAD + 3;
        int y = r.y + PAD - 2;
        gc.setFont(s.mark() instanceof NoteMark ? body : head);
        gc.setForeground(look.colour(Palette.TEXT));
        org.eclipse.swt.graphics.Point h = gc.textExtent(s.text().head());
        int shift = 0;
        if (s.text().outcome() != null) {
            int side = h.y - 5;
            VerdictPainter.paint(gc, look, s.text().outcome(), x, y + 3, side);
            shift = h.y + 1;
            gc.setForeground(look.colour(Palette.TEXT));
        }
        gc.drawText(s.text().head(), x + shift, y, SWT.DRAW_TRANSPARENT);
        y += h.y;
        gc.setFont(body);
        gc.setForeground(look.colour(s.mark() instanceof NoteMark ? Palette.TEXT : Palette.QUIET));
        for (String line : s.text().body()) {
            gc.drawText(line, x, y, SWT.DRAW_TRANSPARENT);
            y += gc.textExtent(line).y;
        }
        if (s.mark() instanceof CaptureMark capture) {
            thumbnail(gc, capture, r, y + 2);
        }
    }

    private void thumbnail(GC gc, CaptureMark capture, Rectangle r, int y) {
        LoadedCapture loaded = captures.apply(capture).orElse(null);
        if (loaded == null || loaded.traces().isEmpty()) {
            gc.drawText(loaded == null ? "reading\u2026" : "cannot be read", r.x + PAD + 3, y, SWT.DRAW_TRANSPARENT);
            return;
        }
        Plot plot = loaded.thumbnail(r.width - 2 * PAD, THUMB_HEIGHT);
        new PlotPaint(look).paint(gc, plot, r.x + PAD + 2, y);
    }

    private void dot(GC gc, Shown s, boolean selected) {
        int x = round(s.anchor().x());
        int y = round(s.anchor().y());
        Outcome outcome = s.text().outcome();
        if (outcome != null) {
            VerdictPainter.paint(gc, look, outcome, x - DOT, y - DOT, 2 * DOT);
            return;
        }
        gc.setBackground(look.colour(s.text().colour()));
        gc.setForeground(look.colour(selected ? Palette.TEXT : Palette.WHITE));
        if (s.mark() instanceof LabelMark) {
            gc.fillRectangle(x - DOT, y - DOT + 1, 2 * DOT, 2 * DOT - 2);
        } else {
            gc.fillOval(x - DOT, y - DOT, 2 * DOT, 2 * DOT);
        }
        gc.drawOval(x - DOT, y - DOT, 2 * DOT, 2 * DOT);
    }

    /** The mark whose card or dot is at a place on the screen, the topmost. */
    Optional<Mark> at(double x, double y) {
        return find(x, y).map(Shown::mark);
    }

    /** Where the card of the mark at a place stands on the screen. */
    Optional<Box> boxAt(double x, double y) {
        return find(x, y).map(Shown::box);
    }

    private Optional<Shown> find(double x, double y) {
        for (List<Shown> page : shown.values()) {
            for (int i = page.size() - 1; i >= 0; i--) {
                if (page.get(i).box().grow(2).contains(x, y)) {
                    return Optional.of(page.get(i));
                }
            }
        }
        return Optional.empty();
    }

    /** Forgets what stood on the screen before a new painting. */
    void clear() {
        shown.clear();
    }

    private static int round(double v) {
        return (int) Math.round(v);
    }
}
