// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

import org.probeleaf.drawing.PageSize;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/**
 * The pages of a job on one plane: one below another, each centred, or one alone. Pages are 1-based.
 *
 * @param boxes the place of each page in document points; empty for one that is not shown
 */
public record PageStack(List<Box> boxes) {

    /** Space between two pages, in points. */
    public static final double GAP = 28;

    public PageStack {
        boxes = java.util.Collections.unmodifiableList(new ArrayList<>(boxes));
    }

    /** No page. */
    public static PageStack none() {
        return new PageStack(List.of());
    }

    /** All pages, one below another. */
    public static PageStack all(List<PageSize> sizes) {
        double widest = sizes.stream().mapToDouble(PageSize::width).max().orElse(0);
        List<Box> boxes = new ArrayList<>();
        double y = 0;
        for (PageSize s : sizes) {
            double x = (widest - s.width()) / 2;
            boxes.add(new Box(x, y, x + s.width(), y + s.height()));
            y += s.height() + GAP;
        }
        return new PageStack(boxes);
    }

    /** One page alone, at the origin. */
    public static PageStack single(List<PageSize> sizes, int page) {
        List<Box> boxes = new ArrayList<>();
        for (int i = 0; i < sizes.size(); i++) {
            boxes.add(i == page - 1 ? new Box(0, 0, sizes.get(i).width(), sizes.get(i).height()) : null);
        }
        return new PageStack(boxes);
    }

    /** Whether a page is laid out. */
    public boolean shows(int page) {
        return page >= 1 && page <= boxes.size() && boxes.get(page - 1) != null;
    }

    /** The place of a page that is shown, in document points. */
    public Box box(int page) {
        return boxes.get(page - 1);
    }

    /** Round all pages shown; an empty box where there is none. */
    public Box bounds() {
        return boxes.stream().filter(b -> b != null).reduce(Box::union).orElse(new Box(0, 0, 0, 0));
    }

    /** The page at a document point, or the nearest one. */
    public OptionalInt nearest(Point document) {
        int best = 0;
        double least = Double.MAX_VALUE;
        for (int i = 0; i < boxes.size(); i++) {
            double d = boxes.get(i) == null ? Double.MAX_VALUE : boxes.get(i).distance(document);
            if (d < least) {
                least = d;
                best = i + 1;
            }
        }
        return best == 0 ? OptionalInt.empty() : OptionalInt.of(best);
    }

    /** Pages that touch a piece of the document, rising. */
    public List<Integer> touching(Box document) {
        List<Integer> pages = new ArrayList<>();
        for (int i = 0; i < boxes.size(); i++) {
            if (boxes.get(i) != null && boxes.get(i).intersects(document)) {
                pages.add(i + 1);
            }
        }
        return pages;
    }

    /** Page to document. */
    public Point toDocument(int page, Point onPage) {
        return onPage.plus(box(page).x0(), box(page).y0());
    }

    /** Document to page. */
    public Point toPage(int page, Point document) {
        return document.plus(-box(page).x0(), -box(page).y0());
    }
}
