// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover.internal.pdf;

import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.util.Matrix;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/**
 * The way between a page as displayed (points from its top left, downwards, crop box and /Rotate applied) and the
 * page's own user space (from its bottom left, upwards, unturned).
 */
final class PageFrame {

    private final PDRectangle crop;
    private final int rotation;

    PageFrame(PDPage page) {
        this.crop = page.getCropBox();
        this.rotation = Math.floorMod(page.getRotation(), 360);
    }

    double width() {
        return rotation % 180 == 0 ? crop.getWidth() : crop.getHeight();
    }

    double height() {
        return rotation % 180 == 0 ? crop.getHeight() : crop.getWidth();
    }

    /** A displayed point in user space, x and y. */
    float[] toUser(Point p) {
        double w = crop.getWidth();
        double h = crop.getHeight();
        double[] at = switch (rotation) {
            case 90 -> new double[] {p.y(), p.x()};
            case 180 -> new double[] {w - p.x(), p.y()};
            case 270 -> new double[] {w - p.y(), h - p.x()};
            default -> new double[] {p.x(), h - p.y()};
        };
        return new float[] {(float) (crop.getLowerLeftX() + at[0]), (float) (crop.getLowerLeftY() + at[1])};
    }

    PDRectangle toUser(Box box) {
        float[] a = toUser(new Point(box.x0(), box.y0()));
        float[] b = toUser(new Point(box.x1(), box.y1()));
        PDRectangle r = new PDRectangle();
        r.setLowerLeftX(Math.min(a[0], b[0]));
        r.setLowerLeftY(Math.min(a[1], b[1]));
        r.setUpperRightX(Math.max(a[0], b[0]));
        r.setUpperRightY(Math.max(a[1], b[1]));
        return r;
    }

    /** Turns an appearance that is upright as displayed so that it is after the page is turned. */
    Matrix upright() {
        return Matrix.getRotateInstance(Math.toRadians(rotation), 0, 0);
    }
}
