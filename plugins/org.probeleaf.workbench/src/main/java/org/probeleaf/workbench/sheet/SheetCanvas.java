// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.sheet;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.eclipse.swt.SWT;
import org.eclipse.swt.events.PaintEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.workbench.correction.Correcting;
import org.probeleaf.workbench.geometry.PageFrame;
import org.probeleaf.workbench.geometry.PageStack;
import org.probeleaf.workbench.geometry.TileKey;
import org.probeleaf.workbench.geometry.Viewport;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.session.SessionListener;
import org.probeleaf.workbench.session.SheetSession;

/** The canvas that shows the sheets: holds what part of them is in sight and paints it. */
public final class SheetCanvas extends Canvas {

    private static final int MARGIN = 18;
    private static final int MOST_BACK = 50;

    private final SheetSession session;
    private final TileStore tiles;
    private final SheetPainter painter;
    private final List<Runnable> viewListeners = new ArrayList<>();
    private final SessionListener listener = new Listener();
    private PageStack stack = PageStack.none();
    private Viewport view = new Viewport(1, 0, 0);
    private boolean single;
    private int singlePage = 1;
    /** What to fit once the size of the canvas is known: 0 nothing, 1 the page. */
    private boolean fitPending = true;
    private final Deque<Viewport> before = new ArrayDeque<>();
    private List<FindHit> hits = List.of();
    private int hit = -1;

    SheetCanvas(Composite parent, SheetSession session, Correcting correcting) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_BACKGROUND);
        this.session = session;
        this.tiles = new TileStore(getDisplay(), getMonitor().getZoom(), this::tilesReady);
        this.painter = new SheetPainter(session, correcting, tiles, new Look(this), getMonitor().getZoom() / 100.0);
        addPaintListener(this::paint);
        addListener(SWT.Resize, e -> resized());
        addListener(SWT.Dispose, e -> {
            session.removeListener(listener);
            tiles.dispose();
        });
        session.addListener(listener);
        correcting.addListener(() -> {
            if (!isDisposed()) {
                redraw();
            }
        });
    }

    private final class Listener implements SessionListener {
        @Override
        public void sheetsReady() {
            tiles.setSource(session.sheets());
            layOut();
            fitPending = true;
            resized();
        }

        @Override
        public void factsChanged() {
            redraw();
        }

        @Override
        public void selectionChanged() {
            redraw();
        }

        @Override
        public void routeChanged() {
            redraw();
        }

        @Override
        public void suspectsChanged() {
            redraw();
        }

        @Override
        public void capturesChanged() {
            redraw();
        }

        @Override
        public void hoverChanged() {
            redraw();
        }

        @Override
        public void showPage(int page) {
            remember();
            SheetCanvas.this.showPage(page);
        }

        @Override
        public void reveal(int page, Box box) {
            remember();
            showBox(page, box);
        }
    }

    private void tilesReady() {
        if (!isDisposed()) {
            redraw();
            session.firstDrawn();
        }
    }

    private void resized() {
        if (fitPending && pageCount() > 0 && getSize().x > 50 && getSize().y > 50) {
            fitPending = false;
            fitPage();
        }
    }

    private void layOut() {
        singlePage = Math.max(1, Math.min(singlePage, pageCount()));
        stack = single ? PageStack.single(session.sheets().sizes(), singlePage)
                : PageStack.all(session.sheets().sizes());
    }

    private void paint(PaintEvent e) {
        GC gc = e.gc;
        Rectangle area = getClientArea();
        Box canvas = new Box(0, 0, area.width, area.height);
        List<PageFrame> frames = frames();
        List<TileKey> keys = painter.paint(gc, canvas, frames, hits, hit);
        tiles.want(frames.stream().map(PageFrame::page).toList(), keys);
    }

    /** The pages in sight. */
    List<PageFrame> frames() {
        Rectangle area = getClientArea();
        return stack.touching(view.shown(area.width, area.height)).stream()
                .map(p -> PageFrame.of(p, stack, view)).toList();
    }

    /** The frame of a page, in sight or not; empty where it is not laid out. */
    Optional<PageFrame> frame(int page) {
        return stack.shows(page) ? Optional.of(PageFrame.of(page, stack, view)) : Optional.empty();
    }

    /** The page at a place on the screen. */
    public Optional<PageFrame> frameAt(double x, double y) {
        return frames().stream().filter(f -> f.outline().contains(x, y)).findFirst();
    }

    SheetPainter painter() {
        return painter;
    }

    public Viewport view() {
        return view;
    }

    private void setView(Viewport next) {
        Rectangle area = getClientArea();
        view = next.within(stack.bounds(), area.width, area.height);
        redraw();
        session.setCurrentPage(currentPage());
        viewListeners.forEach(Runnable::run);
    }

    /** Keeps the view for {@link #back}. */
    private void remember() {
        if (pageCount() > 0 && !view.equals(before.peek())) {
            before.push(view);
        }
        if (before.size() > MOST_BACK) {
            before.removeLast();
        }
    }

    /** Returns to what was in sight before the last jump. */
    public void back() {
        if (!before.isEmpty()) {
            setView(before.pop());
        }
    }

    /** Tells {@code listener} when another part of the sheets is in sight. */
    public void addViewListener(Runnable listener) {
        viewListeners.add(listener);
    }

    public int pageCount() {
        return session.sheets().sizes().size();
    }

    /** The page that takes the middle of the canvas; 0 where there is none. */
    public int currentPage() {
        Rectangle area = getClientArea();
        OptionalInt page = stack.nearest(view.toDocument(area.width / 2.0, area.height / 2.0));
        return page.orElse(0);
    }

    void drag(double dx, double dy) {
        setView(view.dragged(dx, dy));
    }

    void zoomAt(double x, double y, double factor) {
        setView(view.zoomedAt(x, y, factor));
    }

    /** Zooms about the middle. */
    public void zoom(double factor) {
        Rectangle area = getClientArea();
        zoomAt(area.width / 2.0, area.height / 2.0, factor);
    }

    /** Fits the current page. */
    public void fitPage() {
        fit(Math.max(1, currentPage()), false);
    }

    /** Fits the width of the current page. */
    public void fitWidth() {
        fit(Math.max(1, currentPage()), true);
    }

    private void fit(int page, boolean width) {
        if (!stack.shows(page)) {
            return;
        }
        Rectangle area = getClientArea();
        Viewport whole = Viewport.fitting(stack.box(page), area.width, area.height, MARGIN);
        boolean roomBelow = stack.box(page).height() * whole.zoom() < area.height - 2.5 * MARGIN;
        // With other pages below, spare room is better filled with the next page than left on both sides.
        setView(width || roomBelow && !single && pageCount() > 1
                ? Viewport.fittingWidth(stack.box(page), area.width, MARGIN) : whole);
    }

    /** Goes to a page and fits it. */
    public void showPage(int page) {
        if (page < 1 || page > pageCount()) {
            return;
        }
        singlePage = page;
        if (single) {
            layOut();
        }
        fit(page, false);
    }

    /** Shows one page at a time, or all one after another. */
    public void setSingle(boolean one) {
        if (single != one) {
            singlePage = Math.max(1, currentPage());
            single = one;
            layOut();
            fit(singlePage, false);
        }
    }

    public boolean single() {
        return single;
    }

    /** Fits a piece of a page, such as a part. */
    void fitBox(int page, Box box) {
        remember();
        ensureShown(page);
        Box onPage = stack.box(page);
        Box document = new Box(box.x0() + onPage.x0(), box.y0() + onPage.y0(), box.x1() + onPage.x0(),
                box.y1() + onPage.y0());
        Rectangle area = getClientArea();
        setView(Viewport.fitting(document, area.width, area.height, Math.min(area.width, area.height) / 6.0));
    }

    /** Brings a piece of a page into sight, at a zoom at which it can be read; moves no more than is needed. */
    public void showBox(int page, Box box) {
        if (page < 1 || page > pageCount()) {
            return;
        }
        ensureShown(page);
        Rectangle area = getClientArea();
        Box there = PageFrame.of(page, stack, view).toScreen(box);
        Box calm = new Box(0, 0, area.width, area.height).grow(-Math.min(area.width, area.height) / 8.0);
        if (view.zoom() < 0.55 || !calm.contains(there)) {
            setView(Viewport.centred(stack.toDocument(page, box.centre()), Math.max(view.zoom(), 0.9), area.width,
                    area.height));
        }
    }

    private void ensureShown(int page) {
        if (!stack.shows(page)) {
            singlePage = page;
            layOut();
        }
    }

    /** The page point at a place on the screen. */
    Optional<Point> pointAt(double x, double y) {
        return frameAt(x, y).map(f -> f.toPage(x, y));
    }

    /** Shows where a text was found; {@code current} is the hit to stand out, or -1. */
    void showHits(List<FindHit> found, int current) {
        hits = found;
        hit = current;
        if (current >= 0) {
            showBox(found.get(current).page(), found.get(current).box());
        }
        redraw();
    }
}
