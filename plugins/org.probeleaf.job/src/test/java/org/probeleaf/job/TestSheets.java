// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job;

import java.io.IOException;
import java.nio.file.Path;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;

/** Small sheets made on the spot. */
public final class TestSheets {

    private TestSheets() {
    }

    /** A PDF of the given number of pages with a line on each. */
    public static Path plain(Path folder, String name, int pages) throws IOException {
        return save(folder, name, pages, null);
    }

    /** A PDF that opens with a password only. */
    public static Path locked(Path folder, String name, String password) throws IOException {
        return save(folder, name, 1, password);
    }

    private static Path save(Path folder, String name, int pages, String password) throws IOException {
        Path file = folder.resolve(name);
        try (PDDocument document = new PDDocument()) {
            for (int i = 0; i < pages; i++) {
                PDPage page = new PDPage(new PDRectangle(300, 200));
                document.addPage(page);
                try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                    content.moveTo(20, 20 + i);
                    content.lineTo(200, 20 + i);
                    content.stroke();
                }
            }
            if (password != null) {
                document.protect(new StandardProtectionPolicy(password + "-owner", password, new AccessPermission()));
            }
            document.save(file.toFile());
        }
        return file;
    }
}
