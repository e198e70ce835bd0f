// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing.internal;

import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType3CharProc;
import org.apache.pdfbox.pdmodel.font.PDType3Font;
import org.apache.pdfbox.pdmodel.graphics.state.PDGraphicsState;
import org.apache.pdfbox.util.Matrix;
import org.probeleaf.drawing.primitive.LetterForm;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/**
 * A letter of a font of type 3, which is a small drawing (ISO 32000-1 clause 9.6.5). Pictures in it say nothing here.
 */
final class DrawnLetter implements ContentSink {

    /** Room for any letter, in font sizes. */
    private static final double ROOM = 1000;

    /** States saved within each other; a letter needs a few. */
    private static final int DEEPEST = 64;

    private final PDType3CharProc drawing;
    private final ExtractionLimits limits;
    private final Deque<PDGraphicsState> states = new ArrayDeque<>();
    private final PathPainter painter;
    private boolean pictured;

    DrawnLetter(PDType3Font font, int code, ExtractionLimits limits) {
        this.drawing = font.getCharProc(code);
        this.limits = limits;
        AffineTransform toSize = font.getFontMatrix().createAffineTransform();
        states.push(new PDGraphicsState(new PDRectangle(1, 1)));
        this.painter = new PathPainter(states::peek, toSize, new ClipStack(new Box(-ROOM, -ROOM, ROOM, ROOM)), limits);
    }

    /** Its looks; without lines where nothing is drawn; null where it is a picture or there is no such letter. */
    LetterForm form(char sign, int font) throws IOException {
        if (drawing == null) {
            return null;
        }
        new ContentRunner(painter, this).run(RunStream.bytes(drawing.getContents()));
        List<List<Point>> lines = new ArrayList<>();
        boolean filled = !painter.fills().isEmpty();
        if (filled) {
            painter.fills().forEach(f -> lines.add(f.points()));
        } else {
            painter.strokes().forEach(s -> lines.add(closed(s.points(), s.closed())));
        }
        return lines.isEmpty() && pictured ? null : new LetterForm(sign, font, lines, filled);
    }

    private static List<Point> closed(List<Point> points, boolean closed) {
        List<Point> line = new ArrayList<>(points);
        if (closed) {
            line.add(points.get(0));
        }
        return line;
    }

    @Override
    public void counted() {
        limits.operator();
    }

    @Override
    public void missing() {
        // What can be drawn of a damaged letter is enough.
    }

    @Override
    public void lineWidth(double width) {
        states.peek().setLineWidth((float) width);
    }

    @Override
    public void lineCap(int cap) {
        states.peek().setLineCap(cap);
    }

    @Override
    public void colour(boolean stroking, double red, double green, double blue) {
        // A letter's looks do not lie in its colour.
    }

    @Override
    public void saveGraphicsState() {
        if (states.size() < DEEPEST) {
            states.push(states.peek().clone());
        }
    }

    @Override
    public void restoreIfSaved() {
        if (states.size() > 1) {
            states.pop();
            painter.moved();
        }
    }

    @Override
    public void inlinePicture(COSDictionary entries) {
        pictured = true;
    }

    @Override
    public void other(String operator, List<COSBase> operands) {
        if (operator.equals("Do")) {
            pictured = true;
        } else if (operator.equals("cm") && operands.size() >= 6
                && operands.stream().limit(6).allMatch(COSNumber.class::isInstance)) {
            float[] n = new float[6];
            for (int i = 0; i < n.length; i++) {
                n[i] = ((COSNumber) operands.get(i)).floatValue();
            }
            states.peek().getCurrentTransformationMatrix().concatenate(new Matrix(n[0], n[1], n[2], n[3], n[4], n[5]));
            painter.moved();
        }
    }
}
