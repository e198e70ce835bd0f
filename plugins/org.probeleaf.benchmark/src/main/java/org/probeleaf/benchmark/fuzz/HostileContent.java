// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.fuzz;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Random;

import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

/** Forms that draw forms: deep, over and over, or themselves. */
final class HostileContent {

    private static final COSName FORM = COSName.getPDFName("Again");

    private HostileContent() {
    }

    /** Adds to a page a form that draws others of its kind. */
    static void nestForms(PDDocument document, PDPage page, Random random) throws IOException {
        int depth = 1 + random.nextInt(120);
        // Two calls in each form of a chain of n make two to the n drawings.
        int calls = 1 + random.nextInt(3);
        boolean loop = random.nextInt(3) == 0;
        COSStream inner = form("0 0 m 50 50 l S 10 10 20 20 re f\n", null);
        COSStream first = null;
        for (int i = 0; i < depth; i++) {
            inner = form("q 1 0 0 1 1 1 cm /Again Do Q\n".repeat(calls) + "0 0 m 9 9 l S\n", inner);
            first = first == null ? inner : first;
        }
        if (loop && first != null) {
            first.setItem(COSName.RESOURCES, resources(inner));
        }
        COSDictionary own = page.getResources() == null ? new COSDictionary()
                : new COSDictionary(page.getResources().getCOSObject());
        COSDictionary objects = new COSDictionary();
        if (own.getDictionaryObject(COSName.XOBJECT) instanceof COSDictionary had) {
            objects.addAll(had);
        }
        objects.setItem(FORM, inner);
        own.setItem(COSName.XOBJECT, objects);
        page.getCOSObject().setItem(COSName.RESOURCES, own);
        byte[] content;
        try (var in = page.getContents()) {
            content = in.readAllBytes();
        }
        COSStream stream = new COSStream();
        try (OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
            out.write("q /Again Do Q\n".getBytes(StandardCharsets.ISO_8859_1));
            out.write(content);
        }
        page.getCOSObject().setItem(COSName.CONTENTS, stream);
    }

    private static COSStream form(String content, COSStream inner) throws IOException {
        COSStream form = new COSStream();
        try (OutputStream out = form.createOutputStream()) {
            out.write(content.getBytes(StandardCharsets.ISO_8859_1));
        }
        form.setItem(COSName.TYPE, COSName.XOBJECT);
        form.setItem(COSName.SUBTYPE, COSName.FORM);
        COSArray box = new COSArray();
        for (float f : new float[] {-1000, -1000, 5000, 5000}) {
            box.add(new COSFloat(f));
        }
        form.setItem(COSName.BBOX, box);
        if (inner != null) {
            form.setItem(COSName.RESOURCES, resources(inner));
        }
        return form;
    }

    private static COSDictionary resources(COSStream form) {
        COSDictionary objects = new COSDictionary();
        objects.setItem(FORM, form);
        COSDictionary resources = new COSDictionary();
        resources.setItem(COSName.XOBJECT, objects);
        return resources;
    }
}
