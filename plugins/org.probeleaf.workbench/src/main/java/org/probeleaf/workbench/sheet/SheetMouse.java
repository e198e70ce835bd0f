// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.sheet;

import java.time.Instant;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Cursor;
import org.eclipse.swt.widgets.Event;
import org.probeleaf.job.change.MoveCard;
import org.probeleaf.job.mark.Mark;
import org.probeleaf.job.mark.Offset;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.PartUnit;
import org.probeleaf.trace.TracedPin;
import org.probeleaf.workbench.correction.Correcting;
import org.probeleaf.workbench.correction.Task.Aim;
import org.probeleaf.workbench.geometry.PageFrame;
import org.probeleaf.workbench.session.Facts;
import org.probeleaf.workbench.session.Selection;
import org.probeleaf.workbench.session.SheetSession;

/**
 * The mouse on the sheet: wheel zooms to the pointer (Shift and wheel go sideways, Ctrl and wheel up and down), middle
 * button or space and left button drag the paper, a click selects, a double click fits a part, a card is dragged.
 */
final class SheetMouse {

    private static final double STEP = Math.pow(2, 0.25);
    private static final double REACH = 7;
    private static final int SLACK = 4;

    private final SheetCanvas canvas;
    private final SheetSession session;
    private final Correcting correcting;
    private final Cursor hand;
    private final Cursor cross;
    private boolean space;
    private boolean panning;
    private int lastX;
    private int lastY;
    private int downX;
    private int downY;
    private Mark card;
    private Box cardBox;
    private boolean cardMoved;
    private boolean cornerDown;

    SheetMouse(SheetCanvas canvas, SheetSession session, Correcting correcting) {
        this.correcting = correcting;
        this.canvas = canvas;
        this.session = session;
        this.hand = canvas.getDisplay().getSystemCursor(SWT.CURSOR_HAND);
        this.cross = canvas.getDisplay().getSystemCursor(SWT.CURSOR_CROSS);
        canvas.addListener(SWT.MouseWheel, this::wheel);
        canvas.addListener(SWT.MouseHorizontalWheel, e -> canvas.drag(e.count * 20, 0));
        canvas.addListener(SWT.MouseDown, this::down);
        canvas.addListener(SWT.MouseMove, this::move);
        canvas.addListener(SWT.MouseUp, this::up);
        canvas.addListener(SWT.MouseDoubleClick, this::doubleClick);
        canvas.addListener(SWT.MouseExit, e -> session.setHover(null));
        canvas.addListener(SWT.KeyDown, e -> space = space || e.keyCode == ' ');
        canvas.addListener(SWT.KeyUp, e -> space = space && e.keyCode != ' ');
        canvas.addListener(SWT.FocusOut, e -> space = false);
    }

    private void wheel(Event e) {
        if ((e.stateMask & SWT.SHIFT) != 0) {
            canvas.drag(e.count * 25, 0);
        } else if ((e.stateMask & SWT.MOD1) != 0) {
            canvas.drag(0, e.count * 25);
        } else {
            canvas.zoomAt(e.x, e.y, e.count > 0 ? STEP : 1 / STEP);
        }
        e.doit = false;
    }

    private void down(Event e) {
        canvas.forceFocus();
        lastX = e.x;
        lastY = e.y;
        downX = e.x;
        downY = e.y;
        if (e.button == 2 || e.button == 1 && space) {
            panning = true;
            canvas.setCursor(canvas.getDisplay().getSystemCursor(SWT.CURSOR_SIZEALL));
            return;
        }
        if (e.button != 1) {
            return;
        }
        if (correcting.active()) {
            cornerDown = correcting.aim().filter(a -> a == Aim.CORNER).isPresent() && correcting.picks().isEmpty();
            canvas.frameAt(e.x, e.y).ifPresent(f -> correcting.pick(under(f, e.x, e.y)));
            return;
        }
        Optional<TracedPin> tab = canvas.painter().tabs().at(e.x, e.y);
        Optional<Mark> mark = canvas.painter().cards().at(e.x, e.y);
        if (tab.isPresent()) {
            go(tab.get());
        } else if (mark.isPresent()) {
            card = mark.get();
            cardBox = canvas.painter().cards().boxAt(e.x, e.y).orElse(null);
            cardMoved = false;
            session.selectMark(card.id(), placeOf(card));
        } else {
            canvas.frameAt(e.x, e.y).ifPresent(f -> session.select(under(f, e.x, e.y)));
        }
    }

    private void go(TracedPin pin) {
        session.select(Selection.pin(pin.part(), pin.pin(), session.selectedNet().orElse(null)));
        session.reveal(pin.pin().page(), Box.of(pin.pin().at()).grow(40));
    }

    /** The place of a mark, with what is drawn there. */
    Selection placeOf(Mark mark) {
        Selection there = session.facts().map(f -> f.at(mark.page(), mark.at(), 3))
                .orElse(Selection.spot(mark.page(), mark.at()));
        return new Selection(mark.page(), mark.at(), mark.place(), there.net(), there.part(), there.pin());
    }

    /** What a click selects; a click on bare paper selects nothing but the spot. */
    Selection under(PageFrame frame, int x, int y) {
        Point at = frame.toPage(x, y);
        if (correcting.aim().filter(a -> a == Aim.CORNER).isPresent()) {
            return Selection.spot(frame.page(), at);
        }
        Selection hit = session.facts().map(f -> f.at(frame.page(), at, reach(frame)))
                .orElse(Selection.spot(frame.page(), at));
        if (hit.pin() == null && hit.net() != null) {
            return new Selection(hit.page(), onWire(hit), hit.place(), hit.net(), null, null);
        }
        return hit;
    }

    private static Point onWire(Selection hit) {
        return WirePoint.nearest(hit.net(), hit.page(), hit.at());
    }

    private static double reach(PageFrame frame) {
        return Math.min(6, REACH / frame.zoom());
    }

    private void move(Event e) {
        if (panning) {
            canvas.drag(e.x - lastX, e.y - lastY);
            lastX = e.x;
            lastY = e.y;
            return;
        }
        if (card != null && cardBox != null) {
            dragCard(e);
            return;
        }
        if (correcting.active()) {
            canvas.frameAt(e.x, e.y).ifPresent(f -> {
                Selection under = under(f, e.x, e.y);
                session.setHover(under.net());
                correcting.point(under);
            });
            canvas.setCursor(cross);
            return;
        }
        boolean tab = canvas.painter().tabs().at(e.x, e.y).isPresent();
        Optional<Mark> mark = canvas.painter().cards().at(e.x, e.y);
        Optional<PageFrame> frame = tab || mark.isPresent() ? Optional.empty() : canvas.frameAt(e.x, e.y);
        Selection hit = frame.flatMap(f -> session.facts()
                .map(k -> k.at(f.page(), f.toPage(e.x, e.y), reach(f)))).orElse(null);
        session.setHover(hit == null ? null : hit.net());
        canvas.setCursor(tab || mark.isPresent() || hit != null && (hit.net() != null || hit.pin() != null) ? hand : null);
    }

    private void dragCard(Event e) {
        if (!cardMoved && Math.hypot(e.x - downX, e.y - downY) < SLACK) {
            return;
        }
        cardMoved = true;
        canvas.frame(card.page()).ifPresent(f -> {
            canvas.painter().cards().drag(card.id(), f.toPage(cardBox.x0() + e.x - downX, cardBox.y0() + e.y - downY));
            canvas.redraw();
        });
    }

    private void up(Event e) {
        if (panning) {
            panning = false;
            canvas.setCursor(null);
        }
        if (cornerDown && correcting.active() && Math.hypot(e.x - downX, e.y - downY) >= SLACK) {
            canvas.frameAt(e.x, e.y).ifPresent(f -> correcting.pick(under(f, e.x, e.y)));
        }
        cornerDown = false;
        if (card != null && cardMoved && cardBox != null) {
            Mark moved = card;
            canvas.frame(moved.page()).ifPresent(f -> {
                Point corner = f.toPage(cardBox.x0() + e.x - downX, cardBox.y0() + e.y - downY);
                session.apply(new MoveCard(moved.id(), new Offset(corner.x() - moved.at().x(),
                        corner.y() - moved.at().y()), Instant.now()));
            });
        }
        card = null;
        cardBox = null;
    }

    /** The card that was dragged stays where it was let go until the job says so. */
    void settled() {
        if (card == null) {
            canvas.painter().cards().drag(null, null);
        }
    }

    private void doubleClick(Event e) {
        Optional<PageFrame> frame = canvas.frameAt(e.x, e.y);
        Optional<Facts> facts = session.facts();
        if (e.button != 1 || frame.isEmpty() || facts.isEmpty()) {
            return;
        }
        Point at = frame.get().toPage(e.x, e.y);
        facts.get().partAt(frame.get().page(), at).flatMap(p -> unit(p, frame.get().page(), at))
                .ifPresent(box -> canvas.fitBox(frame.get().page(), box));
    }

    private static Optional<Box> unit(Part part, int page, Point at) {
        return part.units().stream().filter(u -> u.page() == page && u.box().grow(2).contains(at))
                .map(PartUnit::box).findFirst();
    }
}
