// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing.internal;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

import org.apache.pdfbox.pdmodel.graphics.PDLineDashPattern;
import org.apache.pdfbox.pdmodel.graphics.state.PDGraphicsState;
import org.probeleaf.drawing.primitive.Fill;
import org.probeleaf.drawing.primitive.Stroke;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.geometry.Repeats;

/**
 * Makes paths and keeps what is painted of them as strokes and fills in displayed page coordinates. What lies outside
 * the clip is left out.
 */
final class PathPainter {

    /** Nothing on a page is as far away as this; what is comes no nearer by reckoning with larger numbers. */
    private static final double FAR = 1e7;
    private static final double INVISIBLE = 0.01;

    private final Supplier<PDGraphicsState> state;
    private final AffineTransform display;
    private final double displayScale;
    private final ClipStack clips;
    private final LineClipper clipper;
    private final ExtractionLimits limits;
    private final PathCollector path = new PathCollector();
    private final List<Stroke> strokes = new ArrayList<>();
    private final List<Fill> fills = new ArrayList<>();
    private final Repeats strokeRepeats = new Repeats();
    private final Repeats fillRepeats = new Repeats();
    private final Colours strokeColours = new Colours();
    private final Colours fillColours = new Colours();
    private final double[] at = new double[6];
    private AffineTransform toPage;
    private boolean hidden;
    private boolean clipPending;
    private PDLineDashPattern lastDash;
    private boolean lastDashed;

    /**
     * @param state   the graphics state at any time
     * @param display takes the page's user space to displayed coordinates
     */
    PathPainter(Supplier<PDGraphicsState> state, AffineTransform display, ClipStack clips, ExtractionLimits limits) {
        this.state = state;
        this.display = display;
        this.displayScale = Math.sqrt(Math.abs(display.getDeterminant()));
        this.clips = clips;
        this.clipper = new LineClipper(clips.box());
        this.limits = limits;
    }

    List<Stroke> strokes() {
        return strokes;
    }

    List<Fill> fills() {
        return fills;
    }

    /** Another transformation may hold from now on. */
    void moved() {
        toPage = null;
    }

    /** Whether what is painted from now on is shown. */
    void hide(boolean hide) {
        hidden = hide;
    }

    void moveTo(double x, double y) {
        limits.points(1);
        toPage(x, y, 0);
        path.moveTo(at[0], at[1]);
    }

    void lineTo(double x, double y) {
        limits.points(1);
        toPage(x, y, 0);
        path.lineTo(at[0], at[1]);
    }

    void curveTo(double x1, double y1, double x2, double y2, double x3, double y3) {
        limits.points(PathCollector.CURVE_PIECES);
        toPage(x1, y1, 0);
        toPage(x2, y2, 2);
        toPage(x3, y3, 4);
        path.curveTo(at[0], at[1], at[2], at[3], at[4], at[5]);
    }

    /** A curve whose first control point is where the path has come to. */
    void curveFromHere(double x2, double y2, double x3, double y3) {
        limits.points(PathCollector.CURVE_PIECES);
        toPage(x2, y2, 2);
        toPage(x3, y3, 4);
        Point2D here = path.current();
        path.curveTo(here.getX(), here.getY(), at[2], at[3], at[4], at[5]);
    }

    void rectangle(double x, double y, double width, double height) {
        moveTo(x, y);
        lineTo(x + width, y);
        lineTo(x + width, y + height);
        lineTo(x, y + height);
        path.close();
    }

    void closePath() {
        path.close();
    }

    void clip() {
        clipPending = true;
    }

    void endPath() {
        if (clipPending) {
            clipPending = false;
            clips.intersect(path.bounds());
        }
        path.clear();
    }

    void strokePath() {
        keepStrokes();
        endPath();
    }

    void fillPath() {
        keepFills();
        endPath();
    }

    void fillAndStrokePath() {
        keepFills();
        keepStrokes();
        endPath();
    }

    private void toPage(double x, double y, int index) {
        if (toPage == null) {
            toPage = state.get().getCurrentTransformationMatrix().createAffineTransform();
            toPage.preConcatenate(display);
        }
        at[index] = x;
        at[index + 1] = y;
        toPage.transform(at, index, at, index, 1);
        at[index] = Math.max(-FAR, Math.min(FAR, at[index]));
        at[index + 1] = Math.max(-FAR, Math.min(FAR, at[index + 1]));
    }

    private void keepStrokes() {
        if (hidden || path.subPaths().isEmpty()) {
            return;
        }
        PDGraphicsState now = state.get();
        if (now.getAlphaConstant() < INVISIBLE) {
            return;
        }
        double width = Math.min(FAR, width(now) * displayScale);
        int rgb = strokeColours.rgb(now.getStrokingColor());
        boolean dashed = isDashed(now.getLineDashPattern());
        boolean round = now.getLineCap() == 1;
        Box clip = clips.box();
        for (PathCollector.SubPath sub : path.subPaths()) {
            List<Point> points = sub.points;
            if (points.size() == 1) {
                // A zero-length line shows as a dot where its ends are round or square.
                points = List.of(points.get(0), points.get(0));
            }
            Box box = Box.around(points);
            if (!box.grow(width / 2).intersects(clip) || strokeRepeats.tooMany(points, rgb)) {
                continue;
            }
            if (clipper.holds(box)) {
                strokes.add(new Stroke(points, sub.closed, sub.curved, width, rgb, dashed, round));
            } else {
                clipper.clipped(points, sub.closed).forEach(part ->
                        strokes.add(new Stroke(part, false, sub.curved, width, rgb, dashed, round)));
            }
        }
    }

    /** The line width as the transformation makes it: by the square root of how it scales areas. */
    private static double width(PDGraphicsState state) {
        var matrix = state.getCurrentTransformationMatrix();
        float x = matrix.getScaleX() + matrix.getShearX();
        float y = matrix.getScaleY() + matrix.getShearY();
        return Math.abs(state.getLineWidth() * (float) Math.sqrt((x * x + y * y) * 0.5));
    }

    private boolean isDashed(PDLineDashPattern dash) {
        if (dash != lastDash) {
            lastDash = dash;
            lastDashed = dash != null && dash.getDashArray().length > 0;
        }
        return lastDashed;
    }

    private void keepFills() {
        PDGraphicsState now = state.get();
        if (hidden || now.getNonStrokeAlphaConstant() < INVISIBLE) {
            return;
        }
        int rgb = fillColours.rgb(now.getNonStrokingColor());
        Box clip = clips.box();
        for (PathCollector.SubPath sub : path.subPaths()) {
            Box box = Box.around(sub.points);
            if (sub.points.size() > 2 && box.intersects(clip) && !fillRepeats.tooMany(sub.points, rgb)) {
                fills.add(new Fill(sub.points, sub.curved, rgb, box));
            }
        }
    }
}
