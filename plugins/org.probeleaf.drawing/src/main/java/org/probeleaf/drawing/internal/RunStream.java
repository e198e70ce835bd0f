// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing.internal;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

import org.apache.pdfbox.io.RandomAccessRead;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDTransparencyGroup;

/**
 * Pages and forms that hand the library a single made-up instruction instead of their content. The library sets up
 * all that goes with a page or form, comes to that instruction, and the true content is run by {@link ContentRunner}.
 */
final class RunStream {

    /** The made-up instruction; content that really holds it is not read by the library and cannot be mistaken. */
    static final String INSTRUCTION = "ProbeleafContent";

    /** Unpacked content beyond this is no sheet. */
    private static final int MOST_BYTES = 160_000_000;

    private RunStream() {
    }

    private static RandomAccessRead instruction() {
        return new RandomAccessReadBuffer((INSTRUCTION + "\n").getBytes(StandardCharsets.ISO_8859_1));
    }

    /** The unpacked content of a page or form. */
    static byte[] bytes(InputStream content) throws IOException {
        try (content) {
            byte[] bytes = content.readNBytes(MOST_BYTES + 1);
            if (bytes.length > MOST_BYTES) {
                throw new TooMuchException("more than " + MOST_BYTES + " bytes of drawing instructions");
            }
            return bytes;
        }
    }

    /** A page. */
    static final class Page extends PDPage {
        private final PDPage page;

        Page(PDPage page) {
            super(page.getCOSObject());
            this.page = page;
        }

        @Override
        public PDResources getResources() {
            return page.getResources();
        }

        @Override
        public RandomAccessRead getContentsForRandomAccess() {
            return instruction();
        }

        @Override
        public RandomAccessRead getContentsForStreamParsing() {
            return instruction();
        }
    }

    /** A form. */
    static final class Form extends PDFormXObject {
        private final PDFormXObject form;

        Form(PDFormXObject form) {
            super(form.getCOSObject());
            this.form = form;
        }

        @Override
        public PDResources getResources() {
            return form.getResources();
        }

        @Override
        public RandomAccessRead getContentsForRandomAccess() {
            return instruction();
        }
    }

    /** A transparency group. */
    static final class Group extends PDTransparencyGroup {
        private final PDTransparencyGroup group;

        Group(PDTransparencyGroup group) {
            super(group.getStream());
            this.group = group;
        }

        @Override
        public PDResources getResources() {
            return group.getResources();
        }

        @Override
        public RandomAccessRead getContentsForRandomAccess() {
            return instruction();
        }
    }
}
