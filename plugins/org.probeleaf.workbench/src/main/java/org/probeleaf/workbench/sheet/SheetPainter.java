// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.sheet;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.probeleaf.diagnosis.Finding;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.PartUnit;
import org.probeleaf.trace.TracedPin;
import org.probeleaf.workbench.correction.Correcting;
import org.probeleaf.workbench.correction.CorrectingPainter;
import org.probeleaf.workbench.geometry.PageFrame;
import org.probeleaf.workbench.geometry.TileKey;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;
import org.probeleaf.workbench.session.CaptureSign;
import org.probeleaf.workbench.session.Facts;
import org.probeleaf.workbench.session.Selection;
import org.probeleaf.workbench.session.SheetSession;

/** Paints the canvas from the paper up: paper, bands, found text, ink, pin marks, cards. */
final class SheetPainter {

    private final SheetSession session;
    private final TileStore tiles;
    private final Look look;
    private final double device;
    private final PagePainter pages;
    private final NetPainter nets;
    private final RoutePainter routes;
    private final ProbePainter probe;
    private final CardLayer cards;
    private final EdgeTabs tabs;
    private final CorrectingPainter correcting;
    private final BoardPainter board;

    SheetPainter(SheetSession session, Correcting correcting, TileStore tiles, Look look, double device) {
        this.session = session;
        this.tiles = tiles;
        this.look = look;
        this.device = device;
        this.pages = new PagePainter(tiles, device);
        this.nets = new NetPainter(look);
        this.routes = new RoutePainter(look, nets);
        this.probe = new ProbePainter(look);
        this.cards = new CardLayer(look, session.captures()::get, c -> CaptureSign.of(session, c));
        this.board = new BoardPainter(look);
        this.tabs = new EdgeTabs(look, nets);
        this.correcting = new CorrectingPainter(look, correcting);
    }

    EdgeTabs tabs() {
        return tabs;
    }

    CardLayer cards() {
        return cards;
    }

    /** Paints, and says which tiles are to be had, the most wanted first. */
    List<TileKey> paint(GC gc, Box canvas, List<PageFrame> frames, List<FindHit> hits, int hit) {
        gc.setAntialias(SWT.ON);
        gc.setInterpolation(SWT.HIGH);
        gc.setBackground(look.colour(Palette.DESK));
        gc.fillRectangle(PagePainter.rectangle(canvas));
        List<TileKey> all = new ArrayList<>();
        cards.clear();
        for (PageFrame frame : frames) {
            paper(gc, frame);
            under(gc, frame, hits, hit);
            List<TileKey> keys = TileKey.covering(frame, device, canvas);
            pages.paint(gc, frame, keys);
            all.addAll(keys);
            failure(gc, frame);
        }
        session.facts().ifPresent(facts -> {
            for (PageFrame frame : frames) {
                over(gc, frame, facts);
            }
            tabs.clear();
            session.selectedNet().filter(n -> !correcting.covers()).ifPresent(net -> tabs.paint(gc, canvas, elsewhere(facts, net, frames, canvas)));
        });
        return all;
    }

    /** The pins of a net that are on another sheet than the current one, and out of sight. */
    private List<TracedPin> elsewhere(Facts facts, Net net, List<PageFrame> frames, Box canvas) {
        return facts.pinsOn(net).stream().filter(p -> p.pin().at() != null
                && p.pin().page() != session.currentPage()
                && frames.stream().noneMatch(f -> f.page() == p.pin().page()
                        && canvas.contains(f.toScreen(p.pin().at())))).toList();
    }

    private void paper(GC gc, PageFrame frame) {
        Rectangle r = PagePainter.rectangle(frame.outline());
        gc.setForeground(look.colour(Palette.SHADOW));
        gc.setAlpha(70);
        gc.drawRectangle(r.x - 2, r.y - 1, r.width + 3, r.height + 4);
        gc.setAlpha(255);
        gc.drawRectangle(r.x - 1, r.y - 1, r.width + 1, r.height + 1);
        gc.setBackground(look.colour(Palette.WHITE));
        gc.fillRectangle(r);
    }

    private void under(GC gc, PageFrame frame, List<FindHit> hits, int hit) {
        Net selected = session.selectedNet().orElse(null);
        if (!correcting.shows()) {
            session.routes().route().ifPresent(r -> routes.bands(gc, frame, r, selected));
        }
        if (selected != null) {
            nets.band(gc, frame, selected);
        }
        correcting.under(gc, frame);
        session.hover().filter(n -> n != selected && !correcting.shows()).ifPresent(n -> nets.hover(gc, frame, n));
        session.selection().filter(s -> s.net() == null && s.part() != null).ifPresent(s -> part(gc, frame, s));
        for (int i = 0; i < hits.size(); i++) {
            if (hits.get(i).page() == frame.page()) {
                Rectangle r = PagePainter.rectangle(frame.toScreen(hits.get(i).box()).grow(2));
                gc.setBackground(look.colour(i == hit ? Palette.ORANGE : Palette.tint(Palette.YELLOW, 0.75)));
                gc.fillRoundRectangle(r.x, r.y, r.width, r.height, 4, 4);
            }
        }
    }

    private void part(GC gc, PageFrame frame, Selection s) {
        gc.setBackground(look.colour(Palette.tint(Palette.SKY, 0.35)));
        for (PartUnit unit : s.part().units()) {
            if (unit.page() == frame.page()) {
                Rectangle r = PagePainter.rectangle(frame.toScreen(unit.box()).grow(3));
                gc.fillRoundRectangle(r.x, r.y, r.width, r.height, 6, 6);
            }
        }
    }

    private void over(GC gc, PageFrame frame, Facts facts) {
        board.paint(gc, frame, facts.state().boards());
        session.selectedNet().ifPresent(net -> nets.pins(gc, frame, facts.pinsOn(net)));
        if (!correcting.shows()) {
            session.routes().route().ifPresent(r -> routes.numbers(gc, frame, r, session.routes().at()));
            session.suspects().finding().map(Finding::next).ifPresent(n -> probe.paint(gc, frame, facts, n));
        }
        session.selection().filter(s -> s.page() == frame.page()).ifPresent(s -> focus(gc, frame.toScreen(s.at())));
        cards.paint(gc, frame, facts.state(), tiles.ink(frame.page()), session.selectedMark().orElse(null));
        correcting.over(gc, frame);
    }

    /** Four strokes round the selected spot. */
    private void focus(GC gc, Point at) {
        int x = (int) Math.round(at.x());
        int y = (int) Math.round(at.y());
        gc.setForeground(look.colour(Palette.BLUE));
        gc.setLineWidth(2);
        int a = 9;
        int b = 14;
        for (int sx = -1; sx <= 1; sx += 2) {
            for (int sy = -1; sy <= 1; sy += 2) {
                gc.drawPolyline(new int[] {x + sx * a, y + sy * b, x + sx * b, y + sy * b, x + sx * b, y + sy * a});
            }
        }
        gc.setLineWidth(1);
    }

    private void failure(GC gc, PageFrame frame) {
        String why = tiles.failure(frame.page());
        if (why == null && tiles.overview(frame.page()) == null) {
            gc.setForeground(look.colour(Palette.QUIET));
            gc.drawText("Drawing sheet " + frame.page() + "\u2026", frame.x() + 24, frame.y() + 24, SWT.DRAW_TRANSPARENT);
        }
        if (why != null) {
            gc.setForeground(look.colour(Palette.VERMILLION));
            gc.drawText(why, frame.x() + 24, frame.y() + 24, SWT.DRAW_TRANSPARENT);
        }
    }
}
