// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing.internal;

import java.awt.Rectangle;
import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;

import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType3CharProc;
import org.apache.pdfbox.pdmodel.font.PDType3Font;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDTransparencyGroup;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.pdmodel.graphics.state.PDGraphicsState;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;
import org.probeleaf.drawing.primitive.Fill;
import org.probeleaf.drawing.primitive.Picture;
import org.probeleaf.drawing.primitive.Stroke;
import org.probeleaf.drawing.primitive.Text;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/**
 * Runs a page's content stream and keeps what it draws as primitives in displayed page coordinates. Nested forms are
 * entered, what lies on a layer that is off or outside the clip is left out, annotations are not part of the sheet.
 */
final class PageExtractor extends PDFGraphicsStreamEngine {

    /** Operators of ISO 32000-1 annex A that change nothing about lines and text. */
    private static final Set<String> KNOWN_BUT_UNUSED = Set.of("MP", "DP", "i", "ri", "d0", "d1", "BI", "ID", "EI",
            "sh", "BMC", "EMC", "BDC", "gs", "M", "j");

    private final AffineTransform display;
    private final double displayScale;
    private final LayerState layers;
    private final ExtractionLimits limits;
    private final ClipStack clips;
    private final PathCollector path = new PathCollector();
    private final TextAssembler text = new TextAssembler();
    private final List<Stroke> strokes = new ArrayList<>();
    private final List<Fill> fills = new ArrayList<>();
    private final List<Picture> pictures = new ArrayList<>();
    private final Map<PDColor, Integer> colours = new HashMap<>();
    private final Deque<Boolean> hiddenSequences = new ArrayDeque<>();
    private int hiddenDepth;
    private boolean clipPending;
    private int shows;
    private boolean complete = true;
    private int optionalDepth;

    /**
     * @param page    the page
     * @param display takes the page's user space to displayed coordinates, y downwards
     * @param layers  which layers are off
     * @param stop    asked often whether to give up
     */
    PageExtractor(PDPage page, AffineTransform display, LayerState layers, BooleanSupplier stop) {
        super(page);
        this.limits = new ExtractionLimits(stop);
        this.clips = new ClipStack(clipOf(page, display));
        this.display = display;
        this.displayScale = Math.sqrt(Math.abs(display.getDeterminant()));
        this.layers = layers;
    }

    void run() throws IOException {
        processPage(getPage());
    }

    List<Stroke> strokes() {
        return strokes;
    }

    List<Fill> fills() {
        return fills;
    }

    List<Text> texts() {
        return text.finish();
    }

    List<Picture> pictures() {
        return pictures;
    }

    /** Whether all of the content was understood. */
    boolean complete() {
        return complete;
    }

    @Override
    protected void unsupportedOperator(Operator operator, List<COSBase> operands) {
        // What is no operator of ISO 32000-1 annex A is debris of a damaged stream, unless it is marked as optional.
        complete &= optionalDepth > 0 || KNOWN_BUT_UNUSED.contains(operator.getName());
    }

    @Override
    protected void operatorException(Operator operator, List<COSBase> operands, IOException e) throws IOException {
        complete = false;
        super.operatorException(operator, operands, e);
    }

    @Override
    protected void processOperator(Operator operator, List<COSBase> operands) throws IOException {
        limits.operator();
        switch (operator.getName()) {
            case "BX" -> optionalDepth++;
            case "EX" -> optionalDepth = Math.max(0, optionalDepth - 1);
            default -> super.processOperator(operator, operands);
        }
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        moveTo(p0);
        lineTo(p1);
        lineTo(p2);
        lineTo(p3);
        path.close();
    }

    @Override
    public void moveTo(float x, float y) {
        moveTo(new Point2D.Double(x, y));
    }

    @Override
    public void lineTo(float x, float y) {
        lineTo(new Point2D.Double(x, y));
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        double[] p = {x1, y1, x2, y2, x3, y3};
        display.transform(p, 0, p, 0, 3);
        path.curveTo(p[0], p[1], p[2], p[3], p[4], p[5]);
    }

    @Override
    public Point2D getCurrentPoint() {
        Point2D user = new Point2D.Double();
        try {
            display.inverseTransform(path.current(), user);
        } catch (NoninvertibleTransformException e) {
            throw new IllegalStateException("the page's display transform has no inverse", e);
        }
        return user;
    }

    @Override
    public void closePath() {
        path.close();
    }

    @Override
    public void clip(int windingRule) {
        clipPending = true;
    }

    @Override
    public void endPath() {
        if (clipPending) {
            clipPending = false;
            clips.intersect(path.bounds());
        }
        path.clear();
    }

    @Override
    public void strokePath() {
        keepStrokes();
        endPath();
    }

    @Override
    public void fillPath(int windingRule) {
        keepFills();
        endPath();
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
        keepFills();
        keepStrokes();
        endPath();
    }

    @Override
    public void shadingFill(COSName shadingName) {
        // A shading is shade, not a line of the drawing.
    }

    @Override
    public void drawImage(PDImage image) {
        if (hiddenDepth > 0) {
            return;
        }
        AffineTransform at = getGraphicsState().getCurrentTransformationMatrix().createAffineTransform();
        at.preConcatenate(display);
        Rectangle2D b = at.createTransformedShape(new Rectangle(0, 0, 1, 1)).getBounds2D();
        pictures.add(new Picture(Box.of(b.getMinX(), b.getMinY(), b.getMaxX(), b.getMaxY()), image.getWidth(),
                image.getHeight()));
    }

    @Override
    public void showForm(PDFormXObject form) throws IOException {
        if (!layers.isOff(form.getOptionalContent())) {
            int depth = enter(form);
            super.showForm(form);
            clips.leave(depth);
        }
    }

    @Override
    public void showTransparencyGroup(PDTransparencyGroup form) throws IOException {
        if (!layers.isOff(form.getOptionalContent())) {
            int depth = enter(form);
            super.showTransparencyGroup(form);
            clips.leave(depth);
        }
    }

    /** What a form draws shows within its box only (ISO 32000-1 clause 8.10.1). */
    private int enter(PDFormXObject form) {
        int depth = clips.enter();
        if (form.getBBox() != null) {
            Matrix matrix = Matrix.concatenate(getGraphicsState().getCurrentTransformationMatrix(), form.getMatrix());
            clips.intersect(box(display.createTransformedShape(form.getBBox().transform(matrix)).getBounds2D()));
        }
        return depth;
    }

    @Override
    public void saveGraphicsState() {
        super.saveGraphicsState();
        clips.save();
    }

    @Override
    public void restoreGraphicsState() {
        super.restoreGraphicsState();
        clips.restore();
    }

    @Override
    protected void processType3Stream(PDType3CharProc charProc, Matrix textRenderingMatrix) {
        // The glyph is kept as text; its outline is not a line of the drawing.
    }

    @Override
    public void beginMarkedContentSequence(COSName tag, COSDictionary properties) {
        boolean hidden = COSName.OC.equals(tag) && properties != null && layers.isOff(properties);
        hiddenSequences.push(hidden);
        hiddenDepth += hidden ? 1 : 0;
    }

    @Override
    public void endMarkedContentSequence() {
        if (!hiddenSequences.isEmpty() && hiddenSequences.pop()) {
            hiddenDepth--;
        }
    }

    @Override
    public void showTextString(byte[] string) throws IOException {
        shows++;
        super.showTextString(string);
    }

    @Override
    public void showTextStrings(COSArray array) throws IOException {
        shows++;
        super.showTextStrings(array);
    }

    @Override
    protected void showGlyph(Matrix textRenderingMatrix, PDFont font, int code, Vector displacement)
            throws IOException {
        if (hiddenDepth > 0) {
            return;
        }
        limits.points(1);
        String unicode = font.toUnicode(code);
        if (unicode == null) {
            return;
        }
        AffineTransform at = textRenderingMatrix.createAffineTransform();
        at.preConcatenate(display);
        // Glyph space to text space: a simple font's displacement is in units of the font size already.
        double advance = displacement.getX();
        double x = at.getTranslateX();
        double y = at.getTranslateY();
        double endX = x + at.getScaleX() * advance;
        double endY = y + at.getShearY() * advance;
        double angle = Math.toDegrees(Math.atan2(at.getShearY(), at.getScaleX()));
        double size = Math.hypot(at.getShearX(), at.getScaleY()) * type3Scale(font);
        text.add(new TextAssembler.Glyph(unicode, x, y, endX, endY, (angle + 360) % 360, size, font.getName() == null
                ? "" : font.getName(), rgb(getGraphicsState().getNonStrokingColor()), isVisible(x, y), shows));
    }

    private static double type3Scale(PDFont font) {
        if (!(font instanceof PDType3Font type3) || type3.getFontBBox() == null) {
            return 1;
        }
        double height = type3.getFontBBox().getHeight() * Math.abs(type3.getFontMatrix().getScaleY());
        return height > 0.2 && height < 5 ? height : 1;
    }

    private boolean isVisible(double x, double y) {
        PDGraphicsState state = getGraphicsState();
        RenderingMode mode = state.getTextState().getRenderingMode();
        boolean painted = mode.isFill() || mode.isStroke();
        double alpha = mode.isFill() ? state.getNonStrokeAlphaConstant() : state.getAlphaConstant();
        return painted && alpha > 0.01 && clips.box().grow(1).contains(x, y);
    }

    private void moveTo(Point2D p) {
        Point2D d = display.transform(p, null);
        path.moveTo(d.getX(), d.getY());
    }

    private void lineTo(Point2D p) {
        Point2D d = display.transform(p, null);
        path.lineTo(d.getX(), d.getY());
    }

    private static Box clipOf(PDPage page, AffineTransform display) {
        return box(display.createTransformedShape(page.getCropBox().toGeneralPath()).getBounds2D());
    }

    private static Box box(Rectangle2D r) {
        return new Box(r.getMinX(), r.getMinY(), r.getMaxX(), r.getMaxY());
    }

    private void keepStrokes() {
        if (hiddenDepth > 0 || path.subPaths().isEmpty()) {
            return;
        }
        limits.points(path.pointCount());
        PDGraphicsState state = getGraphicsState();
        if (state.getAlphaConstant() < 0.01) {
            return;
        }
        double width = Math.abs(transformWidth(state.getLineWidth())) * displayScale;
        int rgb = rgb(state.getStrokingColor());
        boolean dashed = state.getLineDashPattern() != null && state.getLineDashPattern().getDashArray().length > 0;
        boolean round = state.getLineCap() == 1;
        Box clip = clips.box();
        for (PathCollector.SubPath sub : path.subPaths()) {
            List<Point> points = sub.points;
            if (points.size() == 1) {
                // A zero-length line shows as a dot where its ends are round or square.
                points = List.of(points.get(0), points.get(0));
            }
            if (PathCollector.bounds(points).grow(width / 2).intersects(clip)) {
                strokes.add(new Stroke(points, sub.closed, sub.curved, width, rgb, dashed, round));
            }
        }
    }

    private void keepFills() {
        if (hiddenDepth > 0 || getGraphicsState().getNonStrokeAlphaConstant() < 0.01) {
            return;
        }
        limits.points(path.pointCount());
        int rgb = rgb(getGraphicsState().getNonStrokingColor());
        Box clip = clips.box();
        for (PathCollector.SubPath sub : path.subPaths()) {
            Box box = PathCollector.bounds(sub.points);
            if (sub.points.size() > 2 && box.intersects(clip)) {
                fills.add(new Fill(sub.points, sub.curved, rgb, box));
            }
        }
    }

    private int rgb(PDColor colour) {
        return colours.computeIfAbsent(colour, c -> {
            try {
                return c.getColorSpace() == null || c.isPattern() ? 0x808080 : c.toRGB() & 0xFFFFFF;
            } catch (IOException | RuntimeException e) {
                // A colour that cannot be worked out is still ink.
                return 0;
            }
        });
    }
}
