// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.session;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.probeleaf.drawing.PagePicture;
import org.probeleaf.drawing.PageSize;
import org.probeleaf.drawing.SheetException;
import org.probeleaf.drawing.SheetFile;
import org.probeleaf.drawing.primitive.Text;

/**
 * The pages of the open sheet files, numbered on over the files. Any thread may call; callers wait for each other
 * where they need the same file. Pages made ready are kept for a while.
 */
public final class Sheets implements AutoCloseable {

    private static final int PICTURES_KEPT = 16;

    private final List<SheetFile> files;
    private final List<PageSize> sizes;
    private final List<int[]> places;
    private final Map<Integer, PagePicture> pictures = new LinkedHashMap<>(32, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Integer, PagePicture> eldest) {
            return size() > PICTURES_KEPT;
        }
    };

    private Sheets(List<SheetFile> files, List<PageSize> sizes, List<int[]> places) {
        this.files = List.copyOf(files);
        this.sizes = List.copyOf(sizes);
        this.places = List.copyOf(places);
    }

    /** No sheet. */
    public static Sheets none() {
        return new Sheets(List.of(), List.of(), List.of());
    }

    /**
     * The pages of some files.
     *
     * @param files open files in order; closed with this
     * @throws SheetException where a page is damaged
     */
    static Sheets of(List<SheetFile> files) throws SheetException {
        List<PageSize> sizes = new ArrayList<>();
        List<int[]> places = new ArrayList<>();
        for (int f = 0; f < files.size(); f++) {
            for (int p = 1; p <= files.get(f).pageCount(); p++) {
                sizes.add(files.get(f).pageSize(p));
                places.add(new int[] {f, p});
            }
        }
        return new Sheets(files, sizes, places);
    }

    /** The sizes of all pages, by number. */
    public List<PageSize> sizes() {
        return sizes;
    }

    /**
     * A page ready to be rendered. Takes a while the first time.
     *
     * @param page 1-based
     * @throws SheetException where the page is damaged
     */
    public PagePicture picture(int page) throws SheetException {
        synchronized (pictures) {
            PagePicture known = pictures.get(page);
            if (known != null) {
                return known;
            }
        }
        int[] place = places.get(page - 1);
        SheetFile file = files.get(place[0]);
        synchronized (file) {
            synchronized (pictures) {
                PagePicture known = pictures.get(page);
                if (known != null) {
                    return known;
                }
            }
            PagePicture picture = file.picture(place[1]);
            synchronized (pictures) {
                pictures.put(page, picture);
            }
            return picture;
        }
    }

    /**
     * The text of a page.
     *
     * @param page 1-based
     * @throws SheetException where the page is damaged
     */
    public List<Text> texts(int page) throws SheetException {
        int[] place = places.get(page - 1);
        SheetFile file = files.get(place[0]);
        synchronized (file) {
            return file.draw(place[1]).texts();
        }
    }

    @Override
    public void close() {
        for (SheetFile file : files) {
            synchronized (file) {
                file.close();
            }
        }
    }
}
