// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.sheet;

import java.util.List;

import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Rectangle;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.workbench.geometry.PageFrame;
import org.probeleaf.workbench.geometry.TileKey;

/** Paints the ink of a page from its tiles, and from what is there already while they are not. */
final class PagePainter {

    private final TileStore tiles;
    private final double device;

    /** @param device device pixels per logical pixel */
    PagePainter(TileStore tiles, double device) {
        this.tiles = tiles;
        this.device = device;
    }

    /** Paints the given tiles of a page. */
    void paint(GC gc, PageFrame frame, List<TileKey> keys) {
        for (TileKey key : keys) {
            TileStore.Tile tile = tiles.tile(key);
            if (tile != null) {
                drawTile(gc, frame, key, tile.image());
            } else {
                drawMeanwhile(gc, frame, key);
            }
        }
    }

    private void drawTile(GC gc, PageFrame frame, TileKey key, Image image) {
        if (image == null || image.isDisposed()) {
            return;
        }
        int side = (int) Math.round(TileKey.SIDE / device);
        int x = frame.x() + key.col() * side;
        int y = frame.y() + key.row() * side;
        gc.drawImage(image, x, y);
    }

    /** Fills the place of a missing tile from tiles of another zoom, or from the overview. */
    private void drawMeanwhile(GC gc, PageFrame frame, TileKey missing) {
        Box place = frame.toScreen(missing.region());
        Rectangle before = gc.getClipping();
        gc.setClipping(before.intersection(rectangle(place)));
        Double other = otherScale(missing);
        if (other != null) {
            for (TileKey key : at(missing.region(), missing.page(), other)) {
                TileStore.Tile tile = tiles.tile(key);
                if (tile != null && tile.image() != null) {
                    drawScaled(gc, tile.image(), frame.toScreen(key.region()));
                }
            }
        } else {
            TileStore.Tile overview = tiles.overview(missing.page());
            if (overview != null && overview.image() != null) {
                drawScaled(gc, overview.image(), frame.outline());
            }
        }
        gc.setClipping(before);
    }

    /** The scale nearest to the wanted one whose tiles cover the whole place. */
    private Double otherScale(TileKey missing) {
        Double best = null;
        for (double scale : tiles.scales(missing.page())) {
            boolean nearer = best == null || Math.abs(Math.log(scale / missing.scale()))
                    < Math.abs(Math.log(best / missing.scale()));
            boolean coarse = scale < missing.scale() / 6 || scale > missing.scale() * 4;
            if (nearer && !coarse && at(missing.region(), missing.page(), scale).stream()
                    .allMatch(k -> tiles.tile(k) != null)) {
                best = scale;
            }
        }
        return best;
    }

    private static List<TileKey> at(Box region, int page, double scale) {
        double side = TileKey.SIDE / scale;
        List<TileKey> keys = new java.util.ArrayList<>();
        for (int row = (int) Math.floor(region.y0() / side); row * side < region.y1(); row++) {
            for (int col = (int) Math.floor(region.x0() / side); col * side < region.x1(); col++) {
                keys.add(new TileKey(page, scale, col, row));
            }
        }
        return keys;
    }

    private static void drawScaled(GC gc, Image image, Box place) {
        if (image.isDisposed()) {
            return;
        }
        Rectangle b = image.getBounds();
        Rectangle to = rectangle(place);
        if (to.width > 0 && to.height > 0) {
            gc.drawImage(image, 0, 0, b.width, b.height, to.x, to.y, to.width, to.height);
        }
    }

    static Rectangle rectangle(Box b) {
        int x = (int) Math.round(b.x0());
        int y = (int) Math.round(b.y0());
        return new Rectangle(x, y, (int) Math.round(b.x1()) - x, (int) Math.round(b.y1()) - y);
    }
}
