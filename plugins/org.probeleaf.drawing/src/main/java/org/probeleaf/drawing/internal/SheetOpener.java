// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing.internal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.probeleaf.drawing.SheetException;
import org.probeleaf.drawing.SheetException.Problem;
import org.probeleaf.drawing.SheetFile;

/** Tells by the first bytes of a file what kind of sheet it is, whatever its name says, and opens it as that. */
public final class SheetOpener {

    /** A PDF may have something before its head (ISO 32000, implementation notes: within the first 1024 bytes). */
    private static final int HEAD_WITHIN = 1024;

    private static final int END_WITHIN = 1 << 16;

    private SheetOpener() {
    }

    /** As {@link SheetFile#open(Path, String)}. */
    public static SheetFile open(Path path, String password) throws SheetException {
        return open(read(path), path.toString(), password);
    }

    /** As {@link SheetFile#open(byte[], String, String)}. */
    public static SheetFile open(byte[] bytes, String name, String password) throws SheetException {
        if (bytes.length == 0) {
            throw new SheetException(Problem.EMPTY, name + ": the file is empty; get it again from its source", null);
        }
        if (isPdf(bytes)) {
            if (!endsWith(bytes, "%%EOF") && !endsWith(bytes, "startxref")) {
                throw cutShort(name, "PDF");
            }
            return PdfSheetFile.open(bytes, name, password);
        }
        if (isImage(bytes)) {
            if (starts(bytes, 0xFF, 0xD8, 0xFF) && !endsWith(bytes, "\u00ff\u00d9")) {
                throw cutShort(name, "picture");
            }
            return ImageSheetFile.open(bytes, name);
        }
        throw new SheetException(Problem.NOT_A_SHEET,
                name + ": is neither a PDF nor a PNG, JPEG or TIFF picture; save the sheet as one of these", null);
    }

    private static byte[] read(Path path) throws SheetException {
        if (!Files.exists(path)) {
            throw new SheetException(Problem.NOT_FOUND, path + ": there is no such file; check the name", null);
        }
        if (Files.isDirectory(path)) {
            throw new SheetException(Problem.NOT_A_SHEET, path + ": is a folder; name a PDF or image file in it", null);
        }
        if (!Files.isRegularFile(path)) {
            throw new SheetException(Problem.NOT_A_SHEET, path + ": is no regular file; name a PDF or image file",
                    null);
        }
        try {
            if (Files.size(path) > Integer.MAX_VALUE - 16) {
                throw new SheetException(Problem.TOO_LARGE,
                        path + ": is larger than 2 GiB; split it into smaller files", null);
            }
            return Files.readAllBytes(path);
        } catch (SheetException e) {
            throw e;
        } catch (AccessDeniedException e) {
            throw new SheetException(Problem.DAMAGED, path + ": may not be read; check your rights to it", e);
        } catch (IOException e) {
            throw new SheetException(Problem.DAMAGED,
                    path + ": cannot be read (" + e.getMessage() + "); check the disk it is on", e);
        }
    }

    private static boolean isPdf(byte[] bytes) {
        return new String(bytes, 0, Math.min(bytes.length, HEAD_WITHIN), StandardCharsets.ISO_8859_1)
                .contains("%PDF-");
    }

    /** Half a sheet would be read without complaint, and half its nets be missing: better not at all. */
    private static SheetException cutShort(String name, String kind) {
        return new SheetException(Problem.DAMAGED,
                name + ": the " + kind + " is cut short, its end is missing; get it again from its source", null);
    }

    /** Whether a sign stands in the last part of a file; something foreign may follow it. */
    private static boolean endsWith(byte[] bytes, String sign) {
        int from = Math.max(0, bytes.length - END_WITHIN);
        return new String(bytes, from, bytes.length - from, StandardCharsets.ISO_8859_1).contains(sign);
    }

    private static boolean isImage(byte[] b) {
        return starts(b, 0x89, 'P', 'N', 'G') || starts(b, 0xFF, 0xD8, 0xFF) || starts(b, 'I', 'I', 42, 0)
                || starts(b, 'M', 'M', 0, 42) || starts(b, 'I', 'I', 43, 0) || starts(b, 'M', 'M', 0, 43);
    }

    private static boolean starts(byte[] bytes, int... head) {
        for (int i = 0; i < head.length; i++) {
            if (bytes.length <= i || (bytes[i] & 0xFF) != head[i]) {
                return false;
            }
        }
        return true;
    }
}
