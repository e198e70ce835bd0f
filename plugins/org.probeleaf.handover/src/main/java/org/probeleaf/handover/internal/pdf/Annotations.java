// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover.internal.pdf;

import java.io.IOException;
import java.time.Instant;
import java.util.Date;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.TimeZone;

import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSUpdateInfo;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceRGB;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationMarkup;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceDictionary;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationFreeText;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationInk;
import org.probeleaf.handover.internal.layout.Segment;
import org.probeleaf.handover.internal.paint.Canvas;
import org.probeleaf.handover.internal.paint.Tint;
import org.probeleaf.handover.internal.paint.TypeFace;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/**
 * Puts annotations on one page (ISO 32000-1, 12.5). Each has an appearance stream, so that every reader draws it alike,
 * prints, lies in a layer, and says who made it and when.
 */
final class Annotations {

    private final PDDocument document;
    private final PDPage page;
    private final PageFrame frame;
    private final Layers layers;
    private final TypeFace face;
    private final Signature signature;

    Annotations(PDDocument document, PDPage page, PageFrame frame, Layers layers, TypeFace face,
            Signature signature) {
        this.document = document;
        this.page = page;
        this.frame = frame;
        this.layers = layers;
        this.face = face;
        this.signature = signature;
    }

    /**
     * What an annotation says of itself.
     *
     * @param layer    where it lies
     * @param name     unique on its page
     * @param subject  what it is, in a word or two
     * @param contents what it says, in full
     * @param made     when what it shows was made
     */
    record Saying(Layer layer, String name, String subject, String contents, Instant made) {
    }

    /** Something that paints. */
    @FunctionalInterface
    interface Painting {
        void paint(Canvas canvas) throws IOException;
    }

    /** When the sheet is marked up. */
    Instant now() {
        return signature.when();
    }

    /** A freehand mark along the given lines. */
    void ink(Saying saying, Box box, List<List<Point>> lines, Tint tint, Painting painting) throws IOException {
        PDAnnotationInk ink = new PDAnnotationInk();
        float[][] paths = new float[lines.size()][];
        for (int i = 0; i < paths.length; i++) {
            paths[i] = flat(lines.get(i));
        }
        ink.setInkList(paths);
        add(ink, saying, box, tint, painting);
    }

    /** A text in a box. */
    void text(Saying saying, Box box, Tint tint, Painting painting) throws IOException {
        add(freeText(), saying, box, tint, painting);
    }

    /**
     * A text in a box with a line to the place it speaks of.
     *
     * @param box    round all that is painted
     * @param inner  the text's box
     * @param leader from the place to the box
     */
    void callOut(Saying saying, Box box, Box inner, Segment leader, Tint tint, Painting painting) throws IOException {
        PDAnnotationFreeText text = freeText();
        text.setIntent(PDAnnotationFreeText.IT_FREE_TEXT_CALLOUT);
        text.setCallout(flat(List.of(leader.a(), leader.b())));
        PDRectangle outside = frame.toUser(box);
        PDRectangle inside = frame.toUser(inner);
        text.setRectDifferences(inside.getLowerLeftX() - outside.getLowerLeftX(),
                outside.getUpperRightY() - inside.getUpperRightY(), outside.getUpperRightX() - inside.getUpperRightX(),
                inside.getLowerLeftY() - outside.getLowerLeftY());
        add(text, saying, box, tint, painting);
    }

    private static PDAnnotationFreeText freeText() {
        PDAnnotationFreeText text = new PDAnnotationFreeText();
        text.setDefaultAppearance("0 g /Helv 7 Tf");
        return text;
    }

    private float[] flat(List<Point> points) {
        float[] flat = new float[points.size() * 2];
        for (int i = 0; i < points.size(); i++) {
            System.arraycopy(frame.toUser(points.get(i)), 0, flat, i * 2, 2);
        }
        return flat;
    }

    private void add(PDAnnotationMarkup annotation, Saying saying, Box box, Tint tint, Painting painting)
            throws IOException {
        annotation.setRectangle(frame.toUser(box));
        annotation.setPrinted(true);
        annotation.setAnnotationName(saying.name());
        annotation.setSubject(saying.subject());
        annotation.setContents(saying.contents());
        annotation.setTitlePopup(signature.author());
        annotation.setCreationDate(calendar(saying.made()));
        annotation.setModifiedDate(calendar(signature.when()));
        annotation.setColor(new PDColor(tint.components(), PDDeviceRGB.INSTANCE));
        annotation.setOptionalContent(layers.group(saying.layer()));
        annotation.setPage(page);
        PDAppearanceStream appearance = new PDAppearanceStream(document);
        appearance.setBBox(new PDRectangle((float) box.width(), (float) box.height()));
        appearance.setResources(new PDResources());
        appearance.setMatrix(frame.upright().createAffineTransform());
        try (Canvas canvas = new Canvas(document, appearance, box, face)) {
            painting.paint(canvas);
        }
        PDAppearanceDictionary appearances = new PDAppearanceDictionary();
        appearances.setNormalAppearance(appearance);
        annotation.setAppearance(appearances);
        append(annotation);
    }

    private GregorianCalendar calendar(Instant when) {
        GregorianCalendar calendar = new GregorianCalendar(TimeZone.getTimeZone(signature.zone()));
        calendar.setTime(Date.from(when));
        return calendar;
    }

    /** Adds to the page's own list, which stays the object that it was. */
    private void append(PDAnnotationMarkup annotation) {
        COSBase list = page.getCOSObject().getDictionaryObject(COSName.ANNOTS);
        COSArray annotations = list instanceof COSArray array ? array : new COSArray();
        if (annotations != list) {
            page.getCOSObject().setItem(COSName.ANNOTS, annotations);
        }
        annotations.add(annotation.getCOSObject());
        ((COSUpdateInfo) annotations).setNeedToBeUpdated(true);
        page.getCOSObject().setNeedToBeUpdated(true);
    }
}
