// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover;

import java.io.ByteArrayOutputStream;
import java.io.IOException;

import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;

/** Sheets made on the spot: an L-shaped wire and a word, on pages turned, cropped and locked. */
final class Sheets {

    /**
     * How a page is turned, where its crop box starts, whether it needs a password.
     *
     * @param rotation degrees
     * @param crop     how far the crop box stands in, points
     * @param password or null
     * @param packed   whether objects lie packed in object streams
     */
    record Form(int rotation, int crop, String password, boolean packed) {
    }

    private Sheets() {
    }

    static byte[] make(Form form) throws IOException {
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage(new PDRectangle(500, 360));
            page.setRotation(form.rotation());
            page.setCropBox(new PDRectangle(form.crop(), form.crop(), 500 - 2 * form.crop(), 360 - 2 * form.crop()));
            page.getCOSObject().setFloat(COSName.getPDFName("UserUnit"), form.crop() == 20 ? 2 : 1);
            document.addPage(page);
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                content.moveTo(60, 80);
                content.lineTo(300, 80);
                content.lineTo(300, 260);
                content.stroke();
                content.beginText();
                content.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA), 10);
                content.newLineAtOffset(70, 84);
                content.showText("/RD");
                content.endText();
            }
            if (form.password() != null) {
                document.protect(new StandardProtectionPolicy(form.password() + "-owner", form.password(),
                        new AccessPermission()));
            }
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out, form.packed() ? CompressParameters.DEFAULT_COMPRESSION
                    : CompressParameters.NO_COMPRESSION);
            return out.toByteArray();
        }
    }
}
