// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover.internal.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * Saves a marked document. The additions are appended to the file as it came, byte for byte (an incremental update, ISO
 * 32000-1, 7.5.6). A file that a reader could only make sense of by repairing it cannot be added to like that; it is
 * written anew, its streams unopened.
 */
public final class PdfSaver {

    private PdfSaver() {
    }

    /**
     * @param document open on the original with annotations added
     * @param password that opened it, or null
     * @return the bytes of the marked file
     */
    public static byte[] save(PDDocument document, String password) throws IOException {
        byte[] appended = document.getDocument().getTrailer() == null
                || document.getDocument().getXrefTable().isEmpty() ? null : append(document);
        if (appended != null && sound(document, appended, password)) {
            return appended;
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        document.save(out, CompressParameters.NO_COMPRESSION);
        return out.toByteArray();
    }

    private static byte[] append(PDDocument document) {
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.saveIncremental(out);
            return out.toByteArray();
        } catch (IOException | RuntimeException e) {
            return null;
        }
    }

    /** Whether the file opens again with the annotations in it. */
    private static boolean sound(PDDocument document, byte[] bytes, String password) {
        try (PDDocument again = Loader.loadPDF(bytes, password == null ? "" : password)) {
            if (again.getNumberOfPages() != document.getNumberOfPages()) {
                return false;
            }
            for (int i = 0; i < again.getNumberOfPages(); i++) {
                if (annotations(again, i) != annotations(document, i)) {
                    return false;
                }
            }
            return true;
        } catch (IOException | RuntimeException e) {
            return false;
        }
    }

    private static int annotations(PDDocument document, int page) {
        var list = document.getPage(page).getCOSObject().getCOSArray(COSName.ANNOTS);
        return list == null ? 0 : list.size();
    }
}
