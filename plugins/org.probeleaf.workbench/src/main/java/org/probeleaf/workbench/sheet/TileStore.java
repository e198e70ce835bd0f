// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageDataProvider;
import org.eclipse.swt.widgets.Display;
import org.probeleaf.drawing.PagePicture;
import org.probeleaf.drawing.Raster;
import org.probeleaf.drawing.SheetException;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.workbench.geometry.InkMap;
import org.probeleaf.workbench.geometry.TileKey;
import org.probeleaf.workbench.session.Sheets;

/**
 * Renders tiles in two threads of its own and keeps them within a bound. The display thread says what it wants to see,
 * most wanted first; what is no longer wanted is not begun. Each page has one small overview as well, which is never
 * let go while its page is near, so that there is always something to show.
 */
final class TileStore {

    private static final long MOST_BYTES = 160L << 20;
    private static final double OVERVIEW_SIDE = 1400;
    private static final int OVERVIEWS_KEPT = 24;

    /**
     * A rendered piece.
     *
     * @param image its ink, or null where it is blank
     * @param scale device pixels per point
     */
    record Tile(Image image, double scale) {
    }

    private final Display display;
    private final int deviceZoom;
    private final Runnable ready;
    private final Map<TileKey, Tile> tiles = new LinkedHashMap<>(64, 0.75f, true);
    private final Map<Integer, Tile> overviews = new LinkedHashMap<>(16, 0.75f, true);
    private final Map<Integer, InkMap> inks = new HashMap<>();
    private final Map<Integer, String> failures = new HashMap<>();
    private final Set<Object> underway = new HashSet<>();
    private final List<Object> wanted = new ArrayList<>();
    private Sheets source = Sheets.none();
    private long bytes;
    private boolean disposed;
    private boolean told;

    /**
     * @param deviceZoom per cent: device pixels per hundred logical ones
     * @param ready      called on the display thread when something new can be shown
     */
    TileStore(Display display, int deviceZoom, Runnable ready) {
        this.display = display;
        this.deviceZoom = deviceZoom;
        this.ready = ready;
        for (int i = 0; i < 2; i++) {
            Thread t = new Thread(this::work, "sheet tiles " + (i + 1));
            t.setDaemon(true);
            t.setPriority(Thread.NORM_PRIORITY - 1);
            t.start();
        }
    }

    /** Takes pages from elsewhere; what was rendered before is let go. */
    synchronized void setSource(Sheets sheets) {
        source = sheets;
        wanted.clear();
        failures.clear();
        inks.clear();
        tiles.values().forEach(TileStore::free);
        tiles.clear();
        overviews.values().forEach(TileStore::free);
        overviews.clear();
        bytes = 0;
    }

    /** A tile, or null where it is not there yet. */
    synchronized Tile tile(TileKey key) {
        return tiles.get(key);
    }

    /** The overview of a page, or null where it is not there yet. */
    synchronized Tile overview(int page) {
        return overviews.get(page);
    }

    /** Where ink lies on a page, or null where it is not known yet. */
    synchronized InkMap ink(int page) {
        return inks.get(page);
    }

    /** Why a page cannot be drawn, or null. */
    synchronized String failure(int page) {
        return failures.get(page);
    }

    /** The scales at which tiles of a page are there. */
    synchronized Set<Double> scales(int page) {
        Set<Double> scales = new HashSet<>();
        tiles.keySet().forEach(k -> {
            if (k.page() == page) {
                scales.add(k.scale());
            }
        });
        return scales;
    }

    /** What should be shown, most wanted first; replaces what was wanted before. */
    synchronized void want(List<Integer> pages, List<TileKey> keys) {
        wanted.clear();
        for (int page : pages) {
            if (overviews.get(page) == null) {
                wanted.add(page);
            }
        }
        for (TileKey key : keys) {
            if (tiles.get(key) == null) {
                wanted.add(key);
            }
        }
        notifyAll();
    }

    synchronized void dispose() {
        disposed = true;
        setSource(Sheets.none());
        notifyAll();
    }

    private void work() {
        while (true) {
            Object task;
            Sheets sheets;
            synchronized (this) {
                task = next();
                while (task == null && !disposed) {
                    try {
                        wait();
                    } catch (InterruptedException e) {
                        return;
                    }
                    task = next();
                }
                if (disposed) {
                    return;
                }
                underway.add(task);
                sheets = source;
            }
            try {
                if (task instanceof TileKey key) {
                    renderTile(sheets, key);
                } else {
                    renderOverview(sheets, (Integer) task);
                }
            } catch (SheetException | RuntimeException e) {
                fail(sheets, task instanceof TileKey key ? key.page() : (Integer) task, e);
            } finally {
                synchronized (this) {
                    underway.remove(task);
                }
            }
        }
    }

    private Object next() {
        for (Iterator<Object> i = wanted.iterator(); i.hasNext();) {
            Object task = i.next();
            int page = task instanceof TileKey key ? key.page() : (Integer) task;
            if (!underway.contains(task) && !failures.containsKey(page)) {
                i.remove();
                return task;
            }
        }
        return null;
    }

    private void renderTile(Sheets sheets, TileKey key) throws SheetException {
        Raster raster = sheets.picture(key.page()).render(key.scale(), key.region());
        Tile tile = new Tile(image(InkImage.of(raster)), key.scale());
        synchronized (this) {
            if (disposed || source != sheets) {
                free(tile);
                return;
            }
            tiles.put(key, tile);
            bytes += size(tile);
            for (Iterator<Tile> i = tiles.values().iterator(); bytes > MOST_BYTES && i.hasNext();) {
                Tile old = i.next();
                bytes -= size(old);
                free(old);
                i.remove();
            }
        }
        tell();
    }

    private void renderOverview(Sheets sheets, int page) throws SheetException {
        PagePicture picture = sheets.picture(page);
        double w = picture.size().width();
        double h = picture.size().height();
        double scale = Math.min(4, OVERVIEW_SIDE / Math.max(w, h));
        Raster raster = picture.render(scale, new Box(0, 0, w, h));
        InkMap ink = new InkMap(raster, scale);
        Tile tile = new Tile(image(InkImage.of(raster)), scale);
        synchronized (this) {
            if (disposed || source != sheets) {
                free(tile);
                return;
            }
            overviews.put(page, tile);
            inks.put(page, ink);
            if (overviews.size() > OVERVIEWS_KEPT) {
                Map.Entry<Integer, Tile> eldest = overviews.entrySet().iterator().next();
                overviews.remove(eldest.getKey());
                inks.remove(eldest.getKey());
                free(eldest.getValue());
            }
        }
        tell();
    }

    private synchronized void fail(Sheets sheets, int page, Exception e) {
        if (source == sheets && !disposed) {
            failures.put(page, e instanceof SheetException ? e.getMessage() : "This page cannot be drawn (" + e + ")");
            tell();
        }
    }

    /** The pixels are those of the screen: on a dense one they must not be taken for larger ones and stretched. */
    private Image image(ImageData data) {
        if (data == null || display.isDisposed()) {
            return null;
        }
        if (deviceZoom == 100) {
            return new Image(display, data);
        }
        return new Image(display, (ImageDataProvider) zoom -> zoom == deviceZoom ? data
                : data.scaledTo(Math.max(1, data.width * zoom / deviceZoom), Math.max(1, data.height * zoom / deviceZoom)));
    }

    /** Several tiles that get ready together are told of once. */
    private void tell() {
        synchronized (this) {
            if (told || disposed || display.isDisposed()) {
                return;
            }
            told = true;
        }
        display.asyncExec(() -> {
            synchronized (this) {
                told = false;
                if (disposed) {
                    return;
                }
            }
            ready.run();
        });
    }

    /** Images are let go on the display thread, where they may be in use. */
    private static void free(Tile tile) {
        if (tile.image() != null && !tile.image().isDisposed()) {
            org.eclipse.swt.graphics.Device device = tile.image().getDevice();
            if (device instanceof Display d && !d.isDisposed()) {
                d.asyncExec(tile.image()::dispose);
            }
        }
    }

    private static long size(Tile tile) {
        return tile.image() == null ? 64 : 4L * TileKey.SIDE * TileKey.SIDE;
    }
}
