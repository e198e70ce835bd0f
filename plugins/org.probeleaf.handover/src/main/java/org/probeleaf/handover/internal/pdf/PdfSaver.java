// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover.internal.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

/**
 * Saves a marked document. The additions are appended to the file as it came, byte for byte (an incremental update, ISO
 * 32000-1, 7.5.6). A file that a reader could only make sense of by repairing it cannot be added to like that; it is
 * written anew, its streams unopened.
 */
public final class PdfSaver {

    /** How far from the end of a file the pointer to its table of objects may stand. */
    private static final int TAIL = 2048;
    private static final Pattern START = Pattern.compile("startxref\\s+(\\d{1,15})");
    private static final Pattern TABLE = Pattern.compile("\\s*(?:xref|\\d+\\s+\\d+\\s+obj)\\b");

    private PdfSaver() {
    }

    /**
     * @param document open on the original with annotations added
     * @param original the file as it came
     * @param password that opened it, or null
     * @return the bytes of the marked file
     */
    public static byte[] save(PDDocument document, byte[] original, String password) throws IOException {
        byte[] appended = whole(original) ? append(document) : null;
        if (appended != null && sound(document, appended, password)) {
            return appended;
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        document.save(out, CompressParameters.NO_COMPRESSION);
        return out.toByteArray();
    }

    /** Whether the file says at its end where its table of objects is, and it is there. */
    private static boolean whole(byte[] original) {
        String text = new String(original, StandardCharsets.ISO_8859_1);
        Matcher start = START.matcher(text);
        long at = -1;
        for (int from = Math.max(0, text.length() - TAIL); start.find(from); from = start.end()) {
            at = Long.parseLong(start.group(1));
        }
        return at >= 0 && at < text.length() && TABLE.matcher(text).region((int) at, text.length()).lookingAt();
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
            Iterator<PDPage> pages = document.getPages().iterator();
            for (PDPage page : again.getPages()) {
                if (annotations(page) != annotations(pages.next())) {
                    return false;
                }
            }
            return true;
        } catch (IOException | RuntimeException e) {
            return false;
        }
    }

    private static int annotations(PDPage page) {
        COSArray list = page.getCOSObject().getCOSArray(COSName.ANNOTS);
        return list == null ? 0 : list.size();
    }
}
