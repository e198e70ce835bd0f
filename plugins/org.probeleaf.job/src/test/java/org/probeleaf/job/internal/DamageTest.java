// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.Statement;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.probeleaf.job.Job;
import org.probeleaf.job.JobException;
import org.probeleaf.job.JobException.Problem;
import org.probeleaf.job.TestSheets;
import org.probeleaf.job.change.AddNote;
import org.probeleaf.job.details.JobDetails;
import org.probeleaf.job.mark.Anchor;
import org.probeleaf.job.mark.NoteMark;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.place.Place;

class DamageTest {

    @TempDir
    Path folder;
    private Path file;

    @BeforeEach
    void makeJob() throws Exception {
        file = folder.resolve("case.probeleaf");
        try (Job job = Job.create(file, List.of(TestSheets.plain(folder, "board.pdf", 40)), JobDetails.blank())) {
            job.apply(new AddNote(NoteMark.of(Place.parse("IC1"), new Anchor(1, new Point(1, 2)), "dry joint",
                    Instant.parse("2026-03-01T09:30:00Z"))));
        }
    }

    private void sql(String sql) throws Exception {
        try (Connection c = Database.toWrite(file); Statement s = c.createStatement()) {
            s.execute(sql);
        }
    }

    private String checkedLine() throws Exception {
        try (Job job = Job.openToRead(file)) {
            List<String> wrong = job.check();
            assertFalse(wrong.isEmpty());
            return wrong.get(0);
        }
    }

    private Problem openProblem() {
        JobException e = assertThrows(JobException.class, () -> Job.open(file));
        assertTrue(e.getMessage().startsWith(file.toString()), e.getMessage());
        assertThrows(JobException.class, () -> Job.openToRead(file));
        return e.problem();
    }

    @Test
    void check_sheetAltered_saysWhich() throws Exception {
        sql("UPDATE sheet SET bytes = zeroblob(length(bytes))");
        assertEquals("sheet board.pdf: its bytes are not those that were put in", checkedLine());
    }

    @Test
    void sheetBytes_sheetAltered_refused() throws Exception {
        sql("UPDATE sheet SET bytes = zeroblob(length(bytes))");
        try (Job job = Job.openToRead(file)) {
            JobException e = assertThrows(JobException.class, () -> job.sheetBytes(0));
            assertEquals(Problem.DAMAGED, e.problem());
        }
    }

    @Test
    void check_pageOverwritten_found() throws Exception {
        try (RandomAccessFile raw = new RandomAccessFile(file.toFile(), "rw")) {
            raw.seek(raw.length() - 5000);
            raw.write(new byte[4000]);
        }
        String line;
        try {
            line = checkedLine();
        } catch (JobException e) {
            line = e.getMessage();
        }
        assertFalse(line.isBlank());
    }

    @Test
    void open_changeNoLongerReadable_damaged() throws Exception {
        sql("UPDATE change SET body = '{}'");
        assertEquals(Problem.DAMAGED, openProblem());
    }

    @Test
    void open_tableGone_damaged() throws Exception {
        sql("DROP TABLE change");
        assertEquals(Problem.DAMAGED, openProblem());
    }

    @Test
    void open_cutShort_damaged() throws Exception {
        byte[] whole = Files.readAllBytes(file);
        Files.write(file, Arrays.copyOf(whole, whole.length / 2));
        assertEquals(Problem.DAMAGED, openProblem());
    }

    @Test
    void open_headerOverwritten_noJob() throws Exception {
        try (RandomAccessFile raw = new RandomAccessFile(file.toFile(), "rw")) {
            raw.write(new byte[200]);
        }
        assertEquals(Problem.NOT_A_JOB, openProblem());
    }

    @Test
    void open_otherSqliteFile_noJob() throws Exception {
        sql("PRAGMA application_id = 1");
        assertEquals(Problem.NOT_A_JOB, openProblem());
    }
}
