// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.time.Instant;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.probeleaf.job.change.JudgeCaptureBy;
import org.probeleaf.job.change.RemoveCapture;
import org.probeleaf.job.details.JobDetails;
import org.probeleaf.job.mark.Anchor;
import org.probeleaf.job.mark.CaptureMark;
import org.probeleaf.schematic.checksum.Sha256;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.place.Place;

/** Captures in the job file: the bytes as they came, through undo, closing and checking. */
class JobCaptureTest {

    private static final Instant WHEN = Instant.parse("2026-03-01T09:30:00Z");
    private static final byte[] BYTES = {0, 1, 2, (byte) 0xff, 13, 10, 0};

    @TempDir
    Path folder;
    private Path file;

    @BeforeEach
    void make() throws Exception {
        file = folder.resolve("c.probeleaf");
        Job.create(file, List.of(TestSheets.plain(folder, "board.pdf", 1)), JobDetails.blank()).close();
    }

    private static CaptureMark mark(String name, byte[] bytes) {
        return CaptureMark.of(Place.parse("IC5.8"), new Anchor(1, new Point(1, 2)), name, Sha256.of(bytes),
                bytes.length, "", "", WHEN);
    }

    @Test
    void addCapture_isThereByteForByteAfterClosingUndoAndRedo() throws Exception {
        try (Job job = Job.open(file)) {
            job.addCapture(mark("strobe.csv", BYTES), BYTES);
            assertEquals("capture strobe.csv at IC5.8", job.state().undoName());
            job.undo();
            assertEquals(List.of(), job.state().captures());
            job.redo();
        }
        try (Job job = Job.openToRead(file)) {
            CaptureMark kept = job.state().captures().get(0);
            assertEquals("strobe.csv", kept.fileName());
            assertArrayEquals(BYTES, job.captureBytes(kept));
            assertEquals(List.of(), job.check());
        }
    }

    @Test
    void judgeCaptureBy_isKeptThroughClosingAndUndo() throws Exception {
        CaptureMark mark = mark("strobe.csv", BYTES);
        try (Job job = Job.open(file)) {
            job.addCapture(mark, BYTES);
            job.apply(new JudgeCaptureBy(mark.id(), " 74LS ", WHEN));
            assertEquals("74LS for capture strobe.csv at IC5.8", job.state().undoName());
        }
        try (Job job = Job.open(file)) {
            assertEquals("74LS", job.state().captures().get(0).judgedBy());
            job.undo();
            assertEquals("", job.state().captures().get(0).judgedBy());
            job.redo();
            job.apply(new JudgeCaptureBy(mark.id(), "", WHEN));
            assertEquals("", job.state().captures().get(0).judgedBy());
        }
    }

    @Test
    void addCapture_sameFileTwice_isKeptOnce() throws Exception {
        try (Job job = Job.open(file)) {
            job.addCapture(mark("a.csv", BYTES), BYTES);
            job.addCapture(mark("b.csv", BYTES), BYTES);
            job.apply(new RemoveCapture(job.state().captures().get(0).id(), WHEN));
            assertArrayEquals(BYTES, job.captureBytes(job.state().captures().get(0)));
        }
        assertEquals(1, count());
    }

    @Test
    void addCapture_checksumOfAnotherFile_isRefused() throws Exception {
        try (Job job = Job.open(file)) {
            assertThrows(IllegalArgumentException.class, () -> job.addCapture(mark("a.csv", BYTES), new byte[3]));
            assertEquals(List.of(), job.state().captures());
        }
        assertEquals(0, count());
    }

    @Test
    void captureBytes_changedInTheFile_areNeverHandedOn() throws Exception {
        try (Job job = Job.open(file)) {
            job.addCapture(mark("a.csv", BYTES), BYTES);
        }
        try (Connection c = DriverManager.getConnection("jdbc:sqlite:" + file); Statement s = c.createStatement()) {
            s.executeUpdate("UPDATE capture SET bytes = x'00'");
        }
        try (Job job = Job.openToRead(file)) {
            JobException e = assertThrows(JobException.class, () -> job.captureBytes(job.state().captures().get(0)));
            assertEquals(JobException.Problem.DAMAGED, e.problem());
            assertTrue(job.check().get(0).contains("a.csv"), job.check().toString());
        }
    }

    private int count() throws Exception {
        try (Connection c = DriverManager.getConnection("jdbc:sqlite:" + file); Statement s = c.createStatement();
                var r = s.executeQuery("SELECT count(*) FROM capture")) {
            return r.getInt(1);
        }
    }
}
