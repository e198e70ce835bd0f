// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.probeleaf.job.Job;
import org.probeleaf.job.details.JobDetails;

class JobFilesTest {

    @TempDir
    Path folder;

    private Path sheet(String name, int pages) throws IOException {
        Path file = folder.resolve(name);
        try (PDDocument document = new PDDocument()) {
            for (int i = 0; i < pages; i++) {
                document.addPage(new PDPage());
            }
            document.save(file.toFile());
        }
        return file;
    }

    @Test
    void forSheet_noJobYet_isBesideTheSheet() throws IOException {
        Path sheet = sheet("board.v2.pdf", 1);
        assertEquals(folder.resolve("board.v2.probeleaf"), JobFiles.forSheet(sheet, Files.readAllBytes(sheet)));
    }

    @Test
    void forSheet_jobOfThisSheet_isTakenAgain() throws IOException {
        Path sheet = sheet("board.pdf", 1);
        Job.create(folder.resolve("board.probeleaf"), List.of(sheet), JobDetails.blank()).close();
        assertEquals(folder.resolve("board.probeleaf"), JobFiles.forSheet(sheet, Files.readAllBytes(sheet)));
    }

    @Test
    void forSheet_jobOfAnotherSheet_isLeftAlone() throws IOException {
        Path other = sheet("board.pdf", 2);
        Job.create(folder.resolve("board.probeleaf"), List.of(other), JobDetails.blank()).close();
        Path sheet = sheet("board.pdf", 1);
        assertEquals(folder.resolve("board 2.probeleaf"), JobFiles.forSheet(sheet, Files.readAllBytes(sheet)));
    }

    @Test
    void isJob_byEnding_lettersOfAnyCase() {
        assertTrue(JobFiles.isJob(Path.of("a.Probeleaf")));
        assertFalse(JobFiles.isJob(Path.of("a.pdf")));
    }
}
