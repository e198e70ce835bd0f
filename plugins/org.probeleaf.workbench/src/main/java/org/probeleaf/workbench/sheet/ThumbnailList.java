// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.sheet;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.ScrollBar;
import org.probeleaf.drawing.PageSize;
import org.probeleaf.job.JobState;
import org.probeleaf.workbench.geometry.PageFrame;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;
import org.probeleaf.workbench.session.SheetSession;
import org.probeleaf.workbench.session.Sheets;

/** A column of thumbnails of all pages. Only those in sight are rendered. */
public final class ThumbnailList extends Canvas {

    private static final int MARGIN = 14;
    private static final int CAPTION = 38;

    private final Look look;
    private final TileStore tiles;
    private final NetPainter nets;
    private SheetSession session;
    private Sheets shown = Sheets.none();

    public ThumbnailList(Composite parent) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_BACKGROUND | SWT.V_SCROLL);
        look = new Look(this);
        nets = new NetPainter(look);
        tiles = new TileStore(getDisplay(), getMonitor().getZoom(), () -> {
            if (!isDisposed()) {
                redraw();
            }
        });
        addPaintListener(e -> paint(e.gc));
        addListener(SWT.Resize, e -> scrollRange());
        addListener(SWT.MouseDown, this::click);
        addListener(SWT.KeyDown, this::key);
        addListener(SWT.MouseWheel, e -> scroll(getVerticalBar().getSelection() - e.count * 30));
        addListener(SWT.Dispose, e -> tiles.dispose());
        getVerticalBar().addListener(SWT.Selection, e -> redraw());
    }

    /** Shows the pages of a job, or nothing for null. */
    public void show(SheetSession next) {
        session = next;
        Sheets sheets = next == null ? Sheets.none() : next.sheets();
        if (sheets != shown) {
            shown = sheets;
            tiles.setSource(sheets);
        }
        scrollRange();
        redraw();
    }

    private int height(PageSize size) {
        int width = Math.max(40, getClientArea().width - 2 * MARGIN);
        return (int) Math.min(width * size.height() / size.width(), 2.0 * width) + CAPTION + MARGIN;
    }

    private void scrollRange() {
        int total = MARGIN + shown.sizes().stream().mapToInt(this::height).sum();
        ScrollBar bar = getVerticalBar();
        int view = Math.max(1, getClientArea().height);
        bar.setVisible(total > view);
        bar.setMaximum(Math.max(total, view));
        bar.setThumb(view);
        bar.setPageIncrement(view);
        bar.setIncrement(40);
        scroll(bar.getSelection());
    }

    private void scroll(int to) {
        ScrollBar bar = getVerticalBar();
        bar.setSelection(Math.max(0, Math.min(to, bar.getMaximum() - bar.getThumb())));
        redraw();
    }

    private void paint(GC gc) {
        Rectangle area = getClientArea();
        gc.setAntialias(SWT.ON);
        gc.setInterpolation(SWT.HIGH);
        gc.setBackground(look.colour(Palette.DESK));
        gc.fillRectangle(area);
        if (shown.sizes().isEmpty()) {
            gc.setForeground(look.colour(Palette.QUIET));
            gc.drawText("No sheet is open", MARGIN, MARGIN, true);
        }
        List<Integer> wanted = new ArrayList<>();
        int y = MARGIN - getVerticalBar().getSelection();
        List<PageSize> sizes = shown.sizes();
        for (int i = 0; i < sizes.size(); i++) {
            int h = height(sizes.get(i));
            if (y + h > 0 && y < area.height) {
                thumbnail(gc, i + 1, sizes.get(i), new Rectangle(MARGIN, y, area.width - 2 * MARGIN, h - CAPTION
                        - MARGIN));
                wanted.add(i + 1);
            }
            y += h;
        }
        tiles.want(wanted, List.of());
    }

    private void thumbnail(GC gc, int page, PageSize size, Rectangle r) {
        boolean current = session != null && session.currentPage() == page;
        gc.setBackground(look.colour(Palette.WHITE));
        gc.fillRectangle(r);
        PageFrame frame = new PageFrame(page, r.x, r.y, r.width / size.width(), size.width(), size.height());
        gc.setClipping(r);
        session.selectedNet().ifPresent(n -> nets.small(gc, frame, n));
        TileStore.Tile tile = tiles.overview(page);
        if (tile != null && tile.image() != null && !tile.image().isDisposed()) {
            Image image = tile.image();
            Rectangle b = image.getBounds();
            gc.drawImage(image, 0, 0, b.width, b.height, r.x, r.y, r.width, (int) (r.width * size.height()
                    / size.width()));
        }
        gc.setClipping((Rectangle) null);
        gc.setForeground(look.colour(current ? Palette.BLUE : Palette.SHADOW));
        gc.setLineWidth(current ? 2 : 1);
        gc.drawRectangle(r.x - 1, r.y - 1, r.width + 1, r.height + 1);
        gc.setLineWidth(1);
        gc.setFont(look.font(-1, true));
        gc.setForeground(look.colour(current ? Palette.BLUE : Palette.TEXT));
        String title = "Sheet " + page;
        gc.drawText(title, r.x, r.y + r.height + 4, true);
        gc.setFont(look.font(-1, false));
        gc.setForeground(look.colour(Palette.QUIET));
        gc.drawText(marks(page), r.x, r.y + r.height + 20, true);
    }

    private String marks(int page) {
        JobState state = session.facts().map(f -> f.state()).orElse(null);
        if (state == null) {
            return "";
        }
        long readings = state.readings().stream().filter(m -> m.page() == page).count();
        long notes = state.notes().stream().filter(m -> m.page() == page).count();
        long labels = state.labels().stream().filter(m -> m.page() == page).count();
        List<String> words = new ArrayList<>();
        add(words, readings, "reading");
        add(words, notes, "note");
        add(words, labels, "name");
        return String.join(", ", words);
    }

    private static void add(List<String> words, long n, String what) {
        if (n > 0) {
            words.add(Footer.count((int) n, what));
        }
    }

    private void click(Event e) {
        setFocus();
        int y = MARGIN - getVerticalBar().getSelection();
        for (int i = 0; i < shown.sizes().size(); i++) {
            int h = height(shown.sizes().get(i));
            if (e.y >= y && e.y < y + h && session != null) {
                session.showPage(i + 1);
                return;
            }
            y += h;
        }
    }

    private void key(Event e) {
        if (session == null) {
            return;
        }
        if (e.keyCode == SWT.ARROW_DOWN || e.keyCode == SWT.PAGE_DOWN) {
            session.showPage(session.currentPage() + 1);
        } else if (e.keyCode == SWT.ARROW_UP || e.keyCode == SWT.PAGE_UP) {
            session.showPage(session.currentPage() - 1);
        }
    }
}
