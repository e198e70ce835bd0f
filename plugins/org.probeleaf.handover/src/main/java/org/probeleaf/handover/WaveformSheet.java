// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.probeleaf.handover.internal.pdf.Signature;
import org.probeleaf.handover.internal.wave.WavePages;
import org.probeleaf.job.details.JobDetails;

/** A document with the waveforms of a job: plots that stay sharp at any size, what was found, and the figures. */
public final class WaveformSheet {

    /** Its name in the folder of the hand-over. */
    public static final String NAME = "waveforms.pdf";

    private WaveformSheet() {
    }

    /**
     * Writes it; a file of that name is replaced.
     *
     * @param details head of the job
     * @param options with the waveforms
     * @param outDir  a folder, made where it is missing
     * @return the file; empty where there are no waveforms
     * @throws IOException where it cannot be written
     */
    public static Optional<Path> write(JobDetails details, MarkedSheetOptions options, Path outDir) throws IOException {
        if (options.waves().isEmpty()) {
            return Optional.empty();
        }
        Files.createDirectories(outDir);
        Path file = outDir.resolve(NAME);
        Path part = outDir.resolve(NAME + ".part");
        try (PDDocument document = new PDDocument()) {
            document.getDocumentInformation().setTitle("Waveforms");
            document.getDocumentInformation().setAuthor(options.author());
            new WavePages(document, new Signature(options.author(), options.when(), options.zone()))
                    .put(details, options.waves());
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes);
            Files.write(part, bytes.toByteArray());
        }
        Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
        return Optional.of(file);
    }
}
