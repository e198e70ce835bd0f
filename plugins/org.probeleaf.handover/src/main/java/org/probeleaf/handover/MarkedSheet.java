// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.probeleaf.drawing.SheetException;
import org.probeleaf.drawing.SheetFile;
import org.probeleaf.handover.internal.pdf.PdfSaver;
import org.probeleaf.handover.internal.pdf.SheetDocument;
import org.probeleaf.handover.internal.pdf.SheetMarker;
import org.probeleaf.handover.internal.pdf.Signature;
import org.probeleaf.job.Job;
import org.probeleaf.job.JobSheet;
import org.probeleaf.job.JobState;

/**
 * The marked-up sheet: the customer's own pages, untouched, with what was found as PDF annotations on top (ISO 32000).
 * Every reader shows, lists and prints them; each sort lies in a layer of its own. Nets with a label or a reading are
 * emphasised by a broad see-through band; labels stand on their wires; readings and notes are cards with a leader, put
 * where they cover no ink if that can be helped; a legend says what is what.
 */
public final class MarkedSheet {

    private MarkedSheet() {
    }

    /**
     * Writes the marked-up sheets of an open job; passwords of protected sheets come from the job.
     *
     * @param job     open, to read or to write
     * @param options how to mark up
     * @param outDir  a folder, made where it is missing
     * @return the files, one for each sheet file, in order
     * @throws IOException as {@link #write(JobState, List, MarkedSheetOptions, Path)}
     */
    public static List<Path> write(Job job, MarkedSheetOptions options, Path outDir) throws IOException {
        JobState state = job.state();
        List<byte[]> sheets = new ArrayList<>();
        List<String> passwords = new ArrayList<>();
        for (JobSheet sheet : state.sheets()) {
            sheets.add(job.sheetBytes(sheet.index()));
            passwords.add(job.sheetPassword(sheet.index()));
        }
        return write(state, sheets, options.withPasswords(passwords), outDir);
    }

    /**
     * Writes the marked-up sheets of a job.
     *
     * @param state   the job
     * @param sheets  the bytes of its sheet files, in order
     * @param options how to mark up
     * @param outDir  a folder, made where it is missing; files of the same names in it are replaced
     * @return the files ({@code board-marked.pdf} for {@code board.pdf}), one for each sheet file, in order
     * @throws SheetException where a sheet cannot be read
     * @throws IOException    where a file cannot be written
     */
    public static List<Path> write(JobState state, List<byte[]> sheets, MarkedSheetOptions options, Path outDir)
            throws IOException {
        Files.createDirectories(outDir);
        SheetMarker marker = new SheetMarker(state, options.nets(), options.waves(),
                new Signature(options.author(), options.when(), options.zone()));
        Set<String> names = new HashSet<>();
        List<Path> files = new ArrayList<>();
        for (JobSheet sheet : state.sheets()) {
            byte[] marked = mark(marker, sheet, sheets.get(sheet.index()), options.password(sheet.index()));
            Path file = outDir.resolve(name(sheet.fileName(), names));
            Path part = outDir.resolve(file.getFileName() + ".part");
            Files.write(part, marked);
            Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
            files.add(file);
        }
        return files;
    }

    private static byte[] mark(SheetMarker marker, JobSheet sheet, byte[] bytes, String password) throws IOException {
        try (SheetFile file = SheetFile.open(bytes, sheet.fileName(), password);
                PDDocument document = SheetDocument.open(file, bytes, password)) {
            marker.mark(document, sheet, file);
            return PdfSaver.save(document, bytes, password);
        }
    }

    private static String name(String fileName, Set<String> taken) {
        String base = fileName.replaceFirst("\\.[^.]{1,4}$", "");
        String name = base + "-marked.pdf";
        for (int i = 2; !taken.add(name.toLowerCase(Locale.ROOT)); i++) {
            name = base + "-" + i + "-marked.pdf";
        }
        return name;
    }
}
