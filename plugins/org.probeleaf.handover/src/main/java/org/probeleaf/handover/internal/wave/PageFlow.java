// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover.internal.wave;

import java.io.Closeable;
import java.io.IOException;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.probeleaf.handover.internal.paint.Canvas;
import org.probeleaf.handover.internal.paint.Letters;
import org.probeleaf.handover.internal.paint.TypeFace;
import org.probeleaf.schematic.geometry.Point;

/** Pages of A4 that are filled from the top; a block that does not fit goes to the next one. */
final class PageFlow implements Closeable {

    static final double MARGIN = 48;
    static final double WIDTH = PDRectangle.A4.getWidth() - 2 * MARGIN;
    private static final double FOOT = 30;
    private static final double SMALL = 7.5;

    private final PDDocument document;
    private final TypeFace face;
    private final String foot;
    private Canvas canvas;
    private int pages;
    private double y;

    /** @param foot stands at the foot of each page */
    PageFlow(PDDocument document, TypeFace face, String foot) throws IOException {
        this.document = document;
        this.face = face;
        this.foot = face.clean(foot);
        turn();
    }

    private void turn() throws IOException {
        close();
        PDPage page = new PDPage(PDRectangle.A4);
        document.addPage(page);
        pages++;
        canvas = Canvas.onPage(document, page, face);
        y = MARGIN;
        double base = page.getMediaBox().getHeight() - FOOT;
        canvas.text(new Point(MARGIN, base), face.cut(foot, WIDTH - 40, SMALL), Letters.quiet(SMALL));
        String number = String.valueOf(pages);
        canvas.text(new Point(MARGIN + WIDTH - face.width(number, SMALL), base), number, Letters.quiet(SMALL));
    }

    /** Makes sure that so much height is left on the page. */
    void need(double height) throws IOException {
        if (y > MARGIN && y + height > PDRectangle.A4.getHeight() - MARGIN) {
            turn();
        }
    }

    /** The page that is being filled. */
    Canvas canvas() {
        return canvas;
    }

    /** How far down it is filled, in points from its top. */
    double y() {
        return y;
    }

    void down(double by) {
        y += by;
    }

    /** A text in lines as wide as the page, or beginning further in. */
    void text(String text, Letters letters, double indent) throws IOException {
        for (String line : face.wrap(text, WIDTH - indent, letters.size(), 40)) {
            need(letters.size() * 1.35);
            y += letters.size() * 1.35;
            canvas.text(new Point(MARGIN + indent, y - letters.size() * 0.3), line, letters);
        }
    }

    @Override
    public void close() throws IOException {
        if (canvas != null) {
            canvas.close();
        }
    }
}
