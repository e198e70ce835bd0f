// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing.internal;

import java.awt.Color;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.Optional;

import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.form.PDTransparencyGroup;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.rendering.PageDrawer;
import org.apache.pdfbox.rendering.PageDrawerParameters;
import org.probeleaf.drawing.PageSize;

/**
 * Records what PDFBox paints of a page as a {@link DisplayList}. Content whose painting depends on the scale it is
 * painted at (transparency groups, soft masks, patterns, shadings) cannot be recorded.
 */
final class PageRecorder extends PDFRenderer {

    private RecordingGraphics recording;
    private boolean scaleMatters;

    PageRecorder(PDDocument document) {
        super(document);
    }

    /**
     * Records a page.
     *
     * @param index 0-based page
     * @param size  the page's size as displayed
     * @return the recorded page, or empty where it cannot be recorded
     */
    Optional<DisplayList> record(int index, PageSize size) throws IOException {
        scaleMatters = false;
        BufferedImage none = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB);
        recording = new RecordingGraphics(none.createGraphics(), none.createGraphics());
        try {
            renderPageToGraphics(index, recording, 1);
            return scaleMatters || recording.scaleMatters() ? Optional.empty()
                    : Optional.of(new DisplayList(size, recording.ops()));
        } finally {
            recording.dispose();
            recording = null;
        }
    }

    @Override
    protected PageDrawer createPageDrawer(PageDrawerParameters parameters) throws IOException {
        return new Drawer(parameters);
    }

    private final class Drawer extends PageDrawer {

        Drawer(PageDrawerParameters parameters) throws IOException {
            super(parameters);
        }

        @Override
        public void showTransparencyGroup(PDTransparencyGroup form) throws IOException {
            scaleMatters = true;
        }

        @Override
        public void shadingFill(COSName name) throws IOException {
            scaleMatters = true;
        }

        @Override
        public void drawImage(PDImage image) throws IOException {
            if (scaleMatters || getGraphicsState().getSoftMask() != null) {
                scaleMatters = true;
                return;
            }
            BufferedImage pixels = image.isStencil()
                    ? image.getStencilImage(new Color(getGraphicsState().getNonStrokingColor().toRGB()))
                    : image.getImage();
            AffineTransform unit = getGraphicsState().getCurrentTransformationMatrix().createAffineTransform();
            setClip();
            recording.addImage(new ScaledImage(pixels), unit, getGraphicsState().getNonStrokingJavaComposite());
        }
    }
}
