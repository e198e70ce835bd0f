// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.sheet;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.probeleaf.job.Boards;
import org.probeleaf.job.mark.Board;
import org.probeleaf.job.mark.KeptBoardChange;
import org.probeleaf.schematic.board.BoardChange;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.PartUnit;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.trace.board.BoardState;
import org.probeleaf.trace.board.ChangedValue;
import org.probeleaf.trace.board.CutMark;
import org.probeleaf.trace.board.LinkMark;
import org.probeleaf.trace.board.LoosePin;
import org.probeleaf.workbench.geometry.PageFrame;
import org.probeleaf.workbench.geometry.PinMark;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;

/**
 * Paints on the sheet what is otherwise on the board: parts that are not fitted hatched, parts taken out struck through,
 * lifted pins as a gap with an arrow, links as heavy dotted lines, cuts as two short strokes.
 */
final class BoardPainter {

    /** Distance of the hatching, in logical pixels. */
    private static final int HATCH = 7;

    private final Look look;

    BoardPainter(Look look) {
        this.look = look;
    }

    void paint(GC gc, PageFrame frame, Boards boards) {
        BoardState board = boards.state(Board.THIS);
        if (board == null || board.changes().isEmpty()) {
            return;
        }
        gc.setForeground(look.colour(Palette.VERMILLION));
        gc.setBackground(look.colour(Palette.WHITE));
        Set<String> takenOut = boards.open().stream().map(KeptBoardChange::change)
                .filter(BoardChange.Remove.class::isInstance).map(c -> ((BoardChange.Remove) c).ref().toUpperCase(
                        Locale.ROOT)).collect(Collectors.toSet());
        for (Part part : board.removed()) {
            boolean struck = takenOut.contains(part.ref().toUpperCase(Locale.ROOT));
            part.units().stream().filter(u -> u.page() == frame.page()).forEach(u -> out(gc, frame, u, struck));
        }
        board.loosePins().stream().filter(l -> !l.cut()).forEach(l -> lifted(gc, frame, l));
        board.cuts().forEach(c -> cut(gc, frame, c));
        board.links().forEach(l -> link(gc, frame, l));
        board.fitted().forEach(p -> fitted(gc, frame, p));
        values(gc, frame, board);
        gc.setLineWidth(1);
        gc.setLineStyle(SWT.LINE_SOLID);
    }

    private static int width(PageFrame frame, double points) {
        return (int) Math.max(2, Math.min(5, Math.round(frame.zoom() * points)));
    }

    private static void out(GC gc, PageFrame frame, PartUnit unit, boolean struck) {
        Rectangle r = PagePainter.rectangle(frame.toScreen(unit.box()).grow(2));
        gc.setLineWidth(struck ? width(frame, 1.2) : 1);
        if (struck) {
            gc.drawLine(r.x, r.y, r.x + r.width, r.y + r.height);
            gc.drawLine(r.x, r.y + r.height, r.x + r.width, r.y);
            return;
        }
        Rectangle clip = gc.getClipping();
        gc.setClipping(r.intersection(clip));
        for (int x = r.x - r.height; x < r.x + r.width; x += HATCH) {
            gc.drawLine(x, r.y + r.height, x + r.height, r.y);
        }
        gc.setClipping(clip);
        gc.drawRectangle(r);
    }

    /** A gap at the end of the pin, and an arrow from the pad towards the part. */
    private static void lifted(GC gc, PageFrame frame, LoosePin loose) {
        Pin pin = loose.pin();
        if (pin.page() != frame.page() || pin.at() == null) {
            return;
        }
        Point out = PinMark.outwards(loose.part(), pin);
        Point at = frame.toScreen(pin.at());
        double size = Math.max(6, Math.min(16, frame.zoom() * 5));
        int r = (int) Math.round(size * 0.7);
        gc.fillOval((int) at.x() - r, (int) at.y() - r, 2 * r, 2 * r);
        gc.setLineWidth(width(frame, 0.9));
        // The arrow stands off the wire, so that it covers no lettering on it.
        double px = -out.y();
        double py = out.x();
        Point tail = new Point(at.x() + px * size * 0.4, at.y() + py * size * 0.4);
        Point tip = new Point(tail.x() + (px - out.x() * 0.8) * size * 1.3, tail.y() + (py - out.y() * 0.8) * size * 1.3);
        line(gc, tail, tip);
        double dx = (tip.x() - tail.x()) / tip.distance(tail);
        double dy = (tip.y() - tail.y()) / tip.distance(tail);
        for (int side = -1; side <= 1; side += 2) {
            line(gc, tip, new Point(tip.x() - size * 0.6 * (dx * 0.8 + side * dy * 0.6),
                    tip.y() - size * 0.6 * (dy * 0.8 - side * dx * 0.6)));
        }
        gc.drawOval((int) at.x() - r, (int) at.y() - r, 2 * r, 2 * r);
    }

    private static void cut(GC gc, PageFrame frame, CutMark cut) {
        if (cut.at() == null || cut.at().page() != frame.page()) {
            return;
        }
        Point at = frame.toScreen(cut.at().at());
        double size = Math.max(6, Math.min(14, frame.zoom() * 4.5));
        gc.setLineWidth(width(frame, 1.1));
        for (int side = -1; side <= 1; side += 2) {
            double x = at.x() + side * size * 0.35;
            line(gc, new Point(x - size * 0.5, at.y() + size), new Point(x + size * 0.5, at.y() - size));
        }
    }

    private static void link(GC gc, PageFrame frame, LinkMark link) {
        boolean from = link.from() != null && link.from().page() == frame.page();
        boolean to = link.to() != null && link.to().page() == frame.page();
        gc.setLineWidth(width(frame, 1.4));
        gc.setLineStyle(SWT.LINE_DOT);
        if (from && to) {
            line(gc, frame.toScreen(link.from().at()), frame.toScreen(link.to().at()));
        }
        gc.setLineStyle(SWT.LINE_SOLID);
        if (from) {
            end(gc, frame.toScreen(link.from().at()));
        }
        if (to) {
            end(gc, frame.toScreen(link.to().at()));
        }
        if (from != to) {
            Point at = frame.toScreen(from ? link.from().at() : link.to().at());
            gc.drawText("link to " + (from ? link.change().to() : link.change().from()).text(), (int) at.x() + 8,
                    (int) at.y() - 18, SWT.DRAW_TRANSPARENT);
        }
    }

    private static void end(GC gc, Point at) {
        gc.fillOval((int) at.x() - 4, (int) at.y() - 4, 8, 8);
        gc.drawOval((int) at.x() - 4, (int) at.y() - 4, 8, 8);
    }

    private void fitted(GC gc, PageFrame frame, Part part) {
        List<Point> ends = part.pins().stream().filter(p -> p.page() == frame.page() && p.at() != null)
                .map(p -> frame.toScreen(p.at())).toList();
        gc.setLineWidth(width(frame, 1));
        for (int i = 1; i < ends.size(); i++) {
            gc.setLineStyle(SWT.LINE_DOT);
            line(gc, ends.get(i - 1), ends.get(i));
            gc.setLineStyle(SWT.LINE_SOLID);
        }
        ends.forEach(e -> end(gc, e));
        if (!ends.isEmpty()) {
            Point a = ends.get(0);
            Point b = ends.get(ends.size() - 1);
            tag(gc, new Point((a.x() + b.x()) / 2, (a.y() + b.y()) / 2),
                    part.ref() + (part.value() == null ? "" : " " + part.value()));
        }
    }

    private void values(GC gc, PageFrame frame, BoardState board) {
        for (ChangedValue value : board.values()) {
            board.netlist().part(value.ref()).ifPresent(part -> part.units().stream()
                    .filter(u -> u.page() == frame.page()).findFirst().ifPresent(u -> {
                        Box box = frame.toScreen(u.box());
                        tag(gc, new Point(box.centre().x(), box.y1() + 9), "now " + value.now());
                    }));
        }
    }

    private void tag(GC gc, Point middle, String text) {
        gc.setFont(look.font(-1, true));
        org.eclipse.swt.graphics.Point size = gc.textExtent(text);
        int x = (int) Math.round(middle.x() - size.x / 2.0) - 4;
        int y = (int) Math.round(middle.y() - size.y / 2.0) - 1;
        gc.setLineWidth(1);
        gc.fillRoundRectangle(x, y, size.x + 8, size.y + 2, 5, 5);
        gc.drawRoundRectangle(x, y, size.x + 8, size.y + 2, 5, 5);
        gc.drawText(text, x + 4, y + 1, SWT.DRAW_TRANSPARENT);
    }

    private static void line(GC gc, Point a, Point b) {
        gc.drawLine((int) Math.round(a.x()), (int) Math.round(a.y()), (int) Math.round(b.x()), (int) Math.round(b.y()));
    }
}
