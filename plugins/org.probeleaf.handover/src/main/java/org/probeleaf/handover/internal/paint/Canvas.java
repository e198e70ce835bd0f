// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover.internal.paint;

import java.io.Closeable;
import java.io.IOException;
import java.util.List;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.blend.BlendMode;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/**
 * Paints into an appearance stream in the page's own frame: points from the top left of the page as displayed. The
 * stream's own frame is the annotation's box with its origin at the bottom left.
 */
public final class Canvas implements Closeable {

    /** Length of a curve's handles that makes a quarter circle. */
    private static final double QUARTER = 0.5523;

    private final PDPageContentStream out;
    private final Box box;
    private final TypeFace face;
    private double alpha = 1;

    /**
     * @param stream what to paint into; its bounding box must be as large as {@code box}
     * @param box    what the stream covers of the page
     */
    public Canvas(PDDocument document, PDAppearanceStream stream, Box box, TypeFace face) throws IOException {
        this(new PDPageContentStream(document, stream), box, face);
    }

    private Canvas(PDPageContentStream out, Box box, TypeFace face) {
        this.out = out;
        this.box = box;
        this.face = face;
    }

    /** Paints on a page of our own that is neither turned nor cropped. */
    public static Canvas onPage(PDDocument document, PDPage page, TypeFace face) throws IOException {
        PDRectangle all = page.getMediaBox();
        return new Canvas(new PDPageContentStream(document, page), new Box(0, 0, all.getWidth(), all.getHeight()), face);
    }

    /** Something that draws itself into a content stream, with its top left corner where it is told. */
    @FunctionalInterface
    public interface Drawn {
        /** Draws with y upwards; leaves the graphics state as it was. */
        void draw(PDPageContentStream content, double left, double top) throws IOException;
    }

    /** Lets something draw itself below and to the right of a point. */
    public void drawn(Point corner, Drawn drawn) throws IOException {
        drawn.draw(out, x(corner.x()), y(corner.y()));
    }

    public TypeFace face() {
        return face;
    }

    private float x(double x) {
        return (float) (x - box.x0());
    }

    private float y(double y) {
        return (float) (box.y1() - y);
    }

    /** A rounded box with an edge. */
    public void card(Box b, double radius, Tint fill, Tint edge, double edgeWidth) throws IOException {
        rounded(b, radius);
        fill(fill, 1);
        stroke(edge, edgeWidth, 1);
        out.fillAndStroke();
    }

    /** A rounded box without an edge, more or less see-through. */
    public void fill(Box b, double radius, Tint tint, double opacity) throws IOException {
        rounded(b, radius);
        fill(tint, opacity);
        out.fill();
        opaque();
    }

    /** The edge of a rounded box. */
    public void outline(Box b, double radius, Tint edge, double width) throws IOException {
        rounded(b, radius);
        stroke(edge, width, 1);
        out.stroke();
    }

    /** The left side of a rounded box, as wide as given. */
    public void stripe(Box b, double radius, double width, Tint tint) throws IOException {
        out.saveGraphicsState();
        rounded(b, radius);
        out.clip();
        out.addRect(x(b.x0()), y(b.y1()), (float) width, (float) b.height());
        fill(tint, 1);
        out.fill();
        out.restoreGraphicsState();
    }

    private void rounded(Box b, double radius) throws IOException {
        double r = Math.min(radius, Math.min(b.width(), b.height()) / 2);
        double k = r * (1 - QUARTER);
        move(b.x0() + r, b.y0());
        line(b.x1() - r, b.y0());
        curve(b.x1() - k, b.y0(), b.x1(), b.y0() + k, b.x1(), b.y0() + r);
        line(b.x1(), b.y1() - r);
        curve(b.x1(), b.y1() - k, b.x1() - k, b.y1(), b.x1() - r, b.y1());
        line(b.x0() + r, b.y1());
        curve(b.x0() + k, b.y1(), b.x0(), b.y1() - k, b.x0(), b.y1() - r);
        line(b.x0(), b.y0() + r);
        curve(b.x0(), b.y0() + k, b.x0() + k, b.y0(), b.x0() + r, b.y0());
        out.closePath();
    }

    /** A filled disc. */
    public void disc(Point c, double r, Tint tint) throws IOException {
        rounded(Box.of(c).grow(r), r);
        fill(tint, 1);
        out.fill();
    }

    /** A circle's line. */
    public void ring(Point c, double r, Tint tint, double width) throws IOException {
        rounded(Box.of(c).grow(r), r);
        stroke(tint, width, 1);
        out.stroke();
    }

    /** A filled shape. */
    public void shape(List<Point> corners, Tint tint) throws IOException {
        path(corners);
        out.closePath();
        fill(tint, 1);
        out.fill();
    }

    /** A line with round ends and corners. */
    public void line(List<Point> points, Tint tint, double width) throws IOException {
        path(points);
        stroke(tint, width, 1);
        out.setLineCapStyle(1);
        out.setLineJoinStyle(1);
        out.stroke();
    }

    /**
     * Broad lines that darken what is under them and let its ink through. All are one painting, so that they do not
     * darken each other.
     */
    public void band(List<List<Point>> lines, Tint tint, double width, double opacity) throws IOException {
        PDExtendedGraphicsState state = new PDExtendedGraphicsState();
        state.setBlendMode(BlendMode.MULTIPLY);
        state.setStrokingAlphaConstant((float) opacity);
        out.saveGraphicsState();
        out.setGraphicsStateParameters(state);
        out.setStrokingColor(tint.red(), tint.green(), tint.blue());
        out.setLineWidth((float) width);
        out.setLineCapStyle(1);
        out.setLineJoinStyle(1);
        for (List<Point> points : lines) {
            path(points);
        }
        out.stroke();
        out.restoreGraphicsState();
    }

    /**
     * A line of text.
     *
     * @param start start of the base line
     * @param text  cleaned
     */
    public void text(Point start, String text, Letters letters) throws IOException {
        if (text.isEmpty()) {
            return;
        }
        fill(letters.tint(), letters.opacity());
        out.beginText();
        out.setFont(face.font(), (float) letters.size());
        if (letters.strong()) {
            stroke(letters.tint(), letters.size() * 0.035, letters.opacity());
            out.setRenderingMode(RenderingMode.FILL_STROKE);
        } else {
            out.setRenderingMode(RenderingMode.FILL);
        }
        out.newLineAtOffset(x(start.x()), y(start.y()));
        out.showText(text);
        out.endText();
        opaque();
    }

    private void path(List<Point> points) throws IOException {
        move(points.get(0).x(), points.get(0).y());
        for (Point p : points.subList(1, points.size())) {
            line(p.x(), p.y());
        }
        if (points.size() == 1) {
            line(points.get(0).x(), points.get(0).y());
        }
    }

    private void move(double x, double y) throws IOException {
        out.moveTo(x(x), y(y));
    }

    private void line(double x, double y) throws IOException {
        out.lineTo(x(x), y(y));
    }

    private void curve(double x1, double y1, double x2, double y2, double x3, double y3) throws IOException {
        out.curveTo(x(x1), y(y1), x(x2), y(y2), x(x3), y(y3));
    }

    private void fill(Tint tint, double opacity) throws IOException {
        out.setNonStrokingColor(tint.red(), tint.green(), tint.blue());
        alpha(opacity);
    }

    private void stroke(Tint tint, double width, double opacity) throws IOException {
        out.setStrokingColor(tint.red(), tint.green(), tint.blue());
        out.setLineWidth((float) width);
        alpha(opacity);
    }

    private void alpha(double opacity) throws IOException {
        if (opacity == alpha) {
            return;
        }
        PDExtendedGraphicsState state = new PDExtendedGraphicsState();
        state.setNonStrokingAlphaConstant((float) opacity);
        state.setStrokingAlphaConstant((float) opacity);
        out.setGraphicsStateParameters(state);
        alpha = opacity;
    }

    private void opaque() throws IOException {
        alpha(1);
    }

    @Override
    public void close() throws IOException {
        out.close();
    }
}
