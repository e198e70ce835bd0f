// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing.internal;

import java.awt.Rectangle;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
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
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceRGB;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDTransparencyGroup;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.pdmodel.graphics.state.PDGraphicsState;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;
import org.probeleaf.drawing.primitive.Fill;
import org.probeleaf.drawing.primitive.LetterForm;
import org.probeleaf.drawing.primitive.Picture;
import org.probeleaf.drawing.primitive.Stroke;
import org.probeleaf.drawing.primitive.Text;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Repeats;

/**
 * Runs a page's content stream and keeps what it draws as primitives in displayed page coordinates. Nested forms are
 * entered, what lies on a layer that is off or outside the clip is left out, annotations are not part of the sheet.
 */
final class PageExtractor extends PDFGraphicsStreamEngine implements ContentSink {

    /** Operators of ISO 32000-1 annex A that change nothing about lines and text. */
    private static final int LONGEST_OPERATOR = 3;
    private static final Set<String> KNOWN_BUT_UNUSED = Set.of("MP", "DP", "i", "ri", "d0", "d1", "BI", "ID", "EI",
            "sh", "BMC", "EMC", "BDC", "gs", "M", "j");

    private final PDPage page;
    private final AffineTransform display;
    private final LayerState layers;
    private final ExtractionLimits limits;
    private final UnnamedLetters letters;
    private final ClipStack clips;
    private final PathPainter painter;
    private final TextAssembler text = new TextAssembler();
    private final List<Picture> pictures = new ArrayList<>();
    private final Colours colours = new Colours();
    /** Contents of the page and of the forms in it that the library is about to come to. */
    private final Deque<byte[]> contents = new ArrayDeque<>();
    private final Deque<Boolean> hiddenSequences = new ArrayDeque<>();
    private int hiddenDepth;
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
        super(new RunStream.Page(page));
        this.limits = new ExtractionLimits(stop);
        this.letters = new UnnamedLetters(limits);
        this.clips = new ClipStack(clipOf(page, display));
        this.display = display;
        this.painter = new PathPainter(this::getGraphicsState, display, clips, limits);
        this.layers = layers;
        this.page = page;
    }

    void run() throws IOException {
        contents.push(RunStream.bytes(page.getContents()));
        processPage(getPage());
    }

    List<Stroke> strokes() {
        return painter.strokes();
    }

    List<Fill> fills() {
        return painter.fills();
    }

    List<Text> texts() {
        Repeats repeats = new Repeats();
        return text.finish().stream().filter(t -> !repeats.tooMany(List.of(t.origin()), t.text().hashCode())).toList();
    }

    /** Letters in the texts that are known by their looks only. */
    List<LetterForm> forms() {
        return letters.forms();
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
        if (operator.getName().equals(RunStream.INSTRUCTION)) {
            new ContentRunner(painter, this).run(contents.pop());
        } else {
            super.processOperator(operator, operands);
        }
    }

    @Override
    public void counted() {
        limits.operator();
    }

    @Override
    public void missing() {
        complete = false;
    }

    @Override
    public void lineWidth(double width) {
        getGraphicsState().setLineWidth((float) width);
    }

    @Override
    public void lineCap(int cap) {
        getGraphicsState().setLineCap(cap);
    }

    @Override
    public void colour(boolean stroking, double red, double green, double blue) {
        PDColor colour = new PDColor(new float[] {(float) red, (float) green, (float) blue}, PDDeviceRGB.INSTANCE);
        if (stroking) {
            getGraphicsState().setStrokingColorSpace(PDDeviceRGB.INSTANCE);
            getGraphicsState().setStrokingColor(colour);
        } else {
            getGraphicsState().setNonStrokingColorSpace(PDDeviceRGB.INSTANCE);
            getGraphicsState().setNonStrokingColor(colour);
        }
    }

    @Override
    public void restoreIfSaved() {
        if (getGraphicsStackSize() > 1) {
            restoreGraphicsState();
        } else {
            complete = false;
        }
    }

    @Override
    public void inlinePicture(COSDictionary entries) {
        picture(entries.getInt(COSName.W, COSName.WIDTH, 0), entries.getInt(COSName.H, COSName.HEIGHT, 0));
    }

    @Override
    public void other(String operator, List<COSBase> operands) throws IOException {
        switch (operator) {
            case "BX" -> optionalDepth++;
            case "EX" -> optionalDepth = Math.max(0, optionalDepth - 1);
            default -> {
                if (operator.length() > LONGEST_OPERATOR) {
                    // The library would keep it for ever.
                    complete &= optionalDepth > 0;
                } else {
                    processOperator(Operator.getOperator(operator), operands);
                    painter.moved();
                }
            }
        }
    }

    // The library's own way of making paths is never taken: see ContentRunner.

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        throw new IllegalStateException();
    }

    @Override
    public void moveTo(float x, float y) {
        throw new IllegalStateException();
    }

    @Override
    public void lineTo(float x, float y) {
        throw new IllegalStateException();
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        throw new IllegalStateException();
    }

    @Override
    public Point2D getCurrentPoint() {
        throw new IllegalStateException();
    }

    @Override
    public void closePath() {
        throw new IllegalStateException();
    }

    @Override
    public void clip(int windingRule) {
        throw new IllegalStateException();
    }

    @Override
    public void endPath() {
        throw new IllegalStateException();
    }

    @Override
    public void strokePath() {
        throw new IllegalStateException();
    }

    @Override
    public void fillPath(int windingRule) {
        throw new IllegalStateException();
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
        throw new IllegalStateException();
    }

    @Override
    public void shadingFill(COSName shadingName) {
        // A shading is shade, not a line of the drawing.
    }

    @Override
    public void drawImage(PDImage image) {
        picture(image.getWidth(), image.getHeight());
    }

    private void picture(int pixelsWide, int pixelsHigh) {
        if (hiddenDepth > 0) {
            return;
        }
        AffineTransform at = getGraphicsState().getCurrentTransformationMatrix().createAffineTransform();
        at.preConcatenate(display);
        Rectangle2D b = at.createTransformedShape(new Rectangle(0, 0, 1, 1)).getBounds2D();
        pictures.add(new Picture(Box.of(b.getMinX(), b.getMinY(), b.getMaxX(), b.getMaxY()), pixelsWide,
                pixelsHigh));
    }

    @Override
    public void showForm(PDFormXObject form) throws IOException {
        if (!layers.isOff(form.getOptionalContent())) {
            int outer = contents.size();
            int depth = enter(form);
            try {
                super.showForm(new RunStream.Form(form));
            } finally {
                leave(depth, outer);
            }
        }
    }

    @Override
    public void showTransparencyGroup(PDTransparencyGroup form) throws IOException {
        if (!layers.isOff(form.getOptionalContent())) {
            int outer = contents.size();
            int depth = enter(form);
            try {
                super.showTransparencyGroup(new RunStream.Group(form));
            } finally {
                leave(depth, outer);
            }
        }
    }

    /** What a form draws shows within its box only (ISO 32000-1 clause 8.10.1). */
    private int enter(PDFormXObject form) throws IOException {
        limits.form();
        contents.push(RunStream.bytes(form.getContents()));
        painter.moved();
        int depth = clips.enter();
        if (form.getBBox() != null) {
            Matrix matrix = Matrix.concatenate(getGraphicsState().getCurrentTransformationMatrix(), form.getMatrix());
            clips.intersect(box(display.createTransformedShape(form.getBBox().transform(matrix)).getBounds2D()));
        }
        return depth;
    }

    private void leave(int depth, int outer) {
        // The library does not come to the content of an empty form.
        while (contents.size() > outer) {
            contents.pop();
        }
        clips.leave(depth);
        painter.moved();
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
        painter.moved();
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
        painter.hide(hiddenDepth > 0);
    }

    @Override
    public void endMarkedContentSequence() {
        if (!hiddenSequences.isEmpty() && hiddenSequences.pop()) {
            hiddenDepth--;
            painter.hide(hiddenDepth > 0);
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
        String unicode = letters.text(font, code);
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
                ? "" : font.getName(), colours.rgb(getGraphicsState().getNonStrokingColor()), isVisible(x, y), shows));
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

    private static Box clipOf(PDPage page, AffineTransform display) {
        return box(display.createTransformedShape(page.getCropBox().toGeneralPath()).getBounds2D());
    }

    private static Box box(Rectangle2D r) {
        return new Box(r.getMinX(), r.getMinY(), r.getMaxX(), r.getMaxY());
    }
}
