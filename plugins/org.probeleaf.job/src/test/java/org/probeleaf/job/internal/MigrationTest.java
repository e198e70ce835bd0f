// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.Statement;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.probeleaf.job.Job;
import org.probeleaf.job.JobException;
import org.probeleaf.job.TestSheets;
import org.probeleaf.recognition.Progress;
import org.probeleaf.schematic.checksum.Sha256;
import org.probeleaf.schematic.partbook.PartBook;

class MigrationTest {

    @TempDir
    Path folder;
    private Path file;

    /** A file as version 1 wrote it, row by row, with one change done and one undone. */
    @BeforeEach
    void writeVersion1() throws Exception {
        file = folder.resolve("old.probeleaf");
        byte[] pdf = Files.readAllBytes(TestSheets.plain(folder, "board.pdf", 1));
        try (Connection c = Database.toWrite(file)) {
            Schema.upgrade(c, 1);
            try (Statement s = c.createStatement()) {
                s.execute("INSERT INTO head VALUES ('details', '{\"unit\":\"Tide logger\",\"customer\":\"\","
                        + "\"complaint\":\"\",\"technician\":\"\",\"hazards\":[\"mains\"]}')");
                s.execute("INSERT INTO head VALUES ('created', '2026-01-02T03:04:05Z'), ('revision', '3')");
                s.execute("INSERT INTO change (made, kind, body, words, status) VALUES ('2026-01-02T03:04:05Z',"
                        + " 'add-label', '{\"id\":\"a\",\"place\":\"net:/RD\",\"page\":1,\"at\":[10.5,20.0],"
                        + "\"when\":\"2026-01-02T03:04:05Z\",\"text\":\"/RD\"}', 'label /RD at net:/RD', 'done')");
                s.execute("INSERT INTO change (made, kind, body, words, status) VALUES ('2026-01-02T03:04:06Z',"
                        + " 'remove-label', '{\"id\":\"a\",\"when\":\"2026-01-02T03:04:06Z\"}',"
                        + " 'removal of label /RD at net:/RD', 'undone')");
            }
            try (var s = c.prepareStatement("INSERT INTO sheet VALUES (0, 'board.pdf', ?, 1, 1, NULL, ?)")) {
                s.setString(1, Sha256.of(pdf));
                s.setBytes(2, pdf);
                s.execute();
            }
        }
    }

    private long version() throws Exception {
        try (Connection c = Database.toRead(file)) {
            return Database.pragma(c, "user_version");
        }
    }

    @Test
    void open_version1_broughtUpToDateWithAllThatWasInIt() throws Exception {
        try (Job job = Job.open(file)) {
            assertEquals("/RD", job.state().labels().get(0).text());
            assertEquals("removal of label /RD at net:/RD", job.state().redoName());
            assertEquals(3, job.state().revision());
            assertNull(job.state().netlist());
            job.setNetlist(job.recognise(PartBook.standard(), Progress.NONE));
            job.redo();
            assertEquals(List.of(), job.state().labels());
            assertEquals(List.of(), job.check());
        }
        assertEquals(Schema.VERSION, version());
        try (Job job = Job.open(file)) {
            assertEquals(1, job.state().netlist().sheets().size());
        }
    }

    @Test
    void openToRead_version1_readAndLeftAsItIs() throws Exception {
        try (Job job = Job.openToRead(file)) {
            assertEquals("/RD", job.state().labels().get(0).text());
            assertEquals(List.of(), job.check());
        }
        assertEquals(1, version());
    }

    @Test
    void open_newerVersion_refusedAndLeftAsItIs() throws Exception {
        try (Connection c = Database.toWrite(file); Statement s = c.createStatement()) {
            s.execute("PRAGMA user_version = 99");
        }
        JobException e = assertThrows(JobException.class, () -> Job.open(file));
        assertEquals(JobException.Problem.NEWER_VERSION, e.problem());
        assertEquals(99, version());
    }
}
