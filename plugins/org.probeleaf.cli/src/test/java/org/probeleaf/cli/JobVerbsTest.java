// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import org.probeleaf.job.Job;

class JobVerbsTest {

    @TempDir
    private Path folder;
    private Path job;

    @BeforeEach
    void makeJob() {
        job = folder.resolve("j.probeleaf");
        String out = Shell.run("job", "new", job, Shell.EXAMPLE, "--unit", "Tide logger", "--customer", "Harbour office",
                "--complaint", "no tide", "--hazard", "mains,heat").done().out();
        assertTrue(out.contains("Made " + job), out);
        assertTrue(out.contains("CAUTION  Mains voltage."), out);
    }

    @Test
    void jobNew_fileThatIsThere_isKept() throws IOException {
        byte[] before = Files.readAllBytes(job);
        Shell.run("job", "new", job, Shell.EXAMPLE).failed(1, "j.probeleaf", "is there already");
        assertEquals(before.length, Files.readAllBytes(job).length);
        Shell.run("job", "new", folder.resolve("k.probeleaf"), Shell.EXAMPLE, "--hazard", "dragons")
                .failed(2, "dragons", "mains");
    }

    @Test
    void marks_ofEveryKind_areShownAndUndone() throws IOException {
        assertTrue(Shell.run("label", job, "IC1.21", "read strobe").done().out().contains("read strobe"));
        Shell.run("note", job, "IC5", "in a socket").done();
        String verdict = Shell.run("reading", job, "1@120.5,300", "4.2V", "--expect", "5V±5%", "--note", "sags").done()
                .out();
        assertTrue(verdict.contains("bad"), verdict);
        Shell.run("reading", job, "IC1.11", "-5").done();

        Map<String, Object> state = Shell.run("job", "show", job, "--json", "-").done().json();
        assertEquals("Tide logger", state.get("unit"));
        assertEquals(List.of("mains", "heat"), state.get("hazards"));
        assertEquals("read strobe", first(state, "labels").get("text"));
        assertEquals("in a socket", first(state, "notes").get("text"));
        assertEquals(4.2, first(state, "readings").get("value"));
        assertEquals("bad", ((Map<?, ?>) first(state, "readings").get("verdict")).get("outcome"));
        assertEquals(4, ((List<?>) state.get("log")).size());

        assertTrue(Shell.run("undo", job).done().out().contains("reading -5 at IC1.11"));
        assertTrue(Shell.run("redo", job).done().out().contains("reading -5 at IC1.11"));
        assertTrue(Shell.run("redo", job).done().out().contains("nothing to redo"));
        for (int i = 0; i < 4; i++) {
            Shell.run("undo", job).done();
        }
        assertTrue(Shell.run("undo", job).done().out().contains("nothing to undo"));
        Map<String, Object> empty = Shell.run("job", "show", job, "--json", "-").done().json();
        assertEquals(List.of(), empty.get("labels"));
        assertEquals(List.of(), empty.get("readings"));
        assertTrue(Shell.run("job", "check", job).done().out().contains("sound"));
    }

    @Test
    void reading_withAWordInPlaceOfAnExpectation_isThatVerdict() throws IOException {
        String out = Shell.run("reading", job, "IC5.8", "bad").done().out();
        assertTrue(out.contains("IC5.8 (sheet 1)  bad; bad (said to be bad)"), out);
        Shell.run("reading", job, "IC5.9", "3.4V good", "--expect", "74LS").done();
        Shell.run("handover", job, "--out", folder.resolve("out"), "--sheet-only").done();
        Map<String, Object> state = Shell.run("job", "show", job, "--json", "-").done().json();
        assertEquals("bad", ((Map<?, ?>) first(state, "readings").get("verdict")).get("outcome"));
        assertTrue(Shell.run("job", "show", job).done().out().contains("said to be bad"));
    }

    @Test
    void capture_saidHowToRead_isKeptSoAndTellsWhatWasAssumed() throws IOException {
        Path file = Files.writeString(folder.resolve("gate.txt"), "0,5;1\n0,7;3\n0,9;5\n1,1;7\n");
        String out = Shell.run("capture", job, "IC5.8", file, "--interval", "2us", "--time-column", "0", "--scale", "0.01",
                "--name", "gate", "--name", "RD 1").done().out();
        assertTrue(out.contains("Pinned gate.txt to IC5.8 on sheet 1.") && out.contains("gate, RD 1"), out);
        assertTrue(out.contains("Columns separated by semicolons, decimal comma"), out);
        try (Job open = Job.openToRead(job)) {
            assertEquals("time=0 interval=2.0E-6 scale=0.01 name=gate name=RD%201", open.state().captures().get(0).readAs());
        }
    }

    @Test
    void capture_thatCannotBeRead_isOneLineAndNotPinned() throws IOException {
        Path bad = Files.writeString(folder.resolve("bad.csv"), "t,A\n0,1\n1,2\n2,3\n3,4x7\n4,5\n");
        Shell.run("capture", job, "IC5.8", bad).failed(3, "bad.csv: row 5: column 2: \"4x7\" stands where a number");
        Shell.run("capture", job, "IC5.8", Files.write(folder.resolve("b.wav"), new byte[] {'R', 'I', 'F', 'F', 0}))
                .failed(3, "b.wav: the file ends inside its head");
        Shell.run("capture", job, "IC5.8", bad, "--first-row", "0").failed(2, "--first-row: rows are counted from 1");
        assertEquals(List.of(), Shell.run("job", "show", job, "--json", "-").done().json().get("captures"));
    }

    @Test
    void capture_isKeptByteForByteAndShown() throws IOException {
        Path file = Files.writeString(folder.resolve("strobe.csv"), "t,v\n0,0.2\n1e-6,3.4\n");
        assertTrue(Shell.run("capture", job, "IC5.8", file, "--note", "while it reads").done().out()
                .contains("Pinned strobe.csv to IC5.8 on sheet 1."));
        Map<?, ?> capture = first(Shell.run("job", "show", job, "--json", "-").done().json(), "captures");
        assertEquals("strobe.csv", capture.get("file"));
        assertEquals("while it reads", capture.get("note"));
        assertEquals((int) Files.size(file), capture.get("size"));
        assertTrue(Shell.run("job", "show", job).done().out().contains("strobe.csv  while it reads"));
        assertTrue(Shell.run("job", "check", job).done().out().contains("sound"));
        Shell.run("capture", job, "IC5.8", folder.resolve("none.csv")).failed(3, "none.csv", "no such file");
        Shell.run("capture", job, "IC5.8", folder).failed(3, "is a folder");
        Shell.run("capture", job, "IC5.88", file).failed(2, "IC5");
    }

    @Test
    void label_ofTheTechnician_namesTheNetInATrace() throws IOException {
        Shell.run("label", job, "IC1.21", "read strobe").done();
        Map<String, Object> answer = Shell.run("trace", job, "--from", "net:read strobe", "--json", "-").done().json();
        assertTrue(answer.get("pins").toString().contains("ref=IC3"), answer.toString());
        Shell.run("note", job, "net:read strobe", "by its label").done();
    }

    @Test
    void nets_ofAJob_isItsNetlist() throws IOException {
        assertEquals(Shell.run("nets", Shell.EXAMPLE, "--json", "-").done().json().get("nets"),
                Shell.run("nets", job, "--json", "-").done().json().get("nets"));
    }

    @Test
    void marks_atPlacesThatAreNone_areRefused() throws IOException {
        Shell.run("label", job, "IC77.1", "x").failed(2, "IC77");
        Shell.run("note", job, "net:NOPE", "x").failed(2, "NOPE");
        Shell.run("note", job, "3@10,10", "x").failed(2, "page 3");
        Shell.run("reading", job, "IC1.11", "lots").failed(2, "lots");
        Shell.run("reading", job, "IC1.11", "5V", "--expect", "some").failed(2, "some");
        Shell.run("label", job, "IC1.11", " ").failed(2);
        assertEquals(List.of(), Shell.run("job", "show", job, "--json", "-").done().json().get("log"));
    }

    @Test
    void writer_whileAnotherHasTheJob_isRefusedAndAReaderIsNot() throws IOException {
        try (Job held = Job.open(job)) {
            Shell.run("note", job, "IC5", "x").failed(4, "j.probeleaf");
            Shell.run("undo", job).failed(4, "j.probeleaf");
            assertTrue(Shell.run("job", "show", job).done().out().contains("Tide logger"));
            assertEquals(List.of(), held.state().notes());
        }
        Shell.run("note", job, "IC5", "x").done();
    }

    @Test
    void check_damagedJob_endsWithFour() throws IOException {
        byte[] bytes = Files.readAllBytes(job);
        for (int i = 5000; i < bytes.length; i += 997) {
            bytes[i] ^= 0x5A;
        }
        Files.write(job, bytes);
        Shell.Result result = Shell.run("job", "check", job);
        assertEquals(4, result.code(), result.toString());
        assertTrue(result.err().contains("j.probeleaf"), result.err());
    }

    @Test
    void handover_sheetOnly_writesTheMarkedSheet() throws IOException {
        Shell.run("label", job, "IC1.21", "read strobe").done();
        Path out = folder.resolve("out");
        Map<String, Object> answer = Shell.run("handover", job, "--out", out, "--sheet-only", "--json", "-").done()
                .json();
        assertEquals(List.of(out.resolve("tern-tl8-marked.pdf").toString()), answer.get("files"));
        assertEquals(List.of(), answer.get("open_changes"));
        assertTrue(Files.size(out.resolve("tern-tl8-marked.pdf")) > Files.size(Shell.EXAMPLE));
    }

    @Test
    void demo_withoutWindow_leavesAJobAndAMarkedSheet() throws IOException {
        Path out = folder.resolve("demo");
        String said = Shell.run("demo", "--no-window", "--out", out).done().out();
        assertTrue(said.contains(out.resolve("tern-tl8-marked.pdf").toString()), said);
        assertTrue(Files.isRegularFile(out.resolve("tern-tl8-marked.pdf")));
        Shell.run("job", "check", out.resolve("tern-tl8.probeleaf")).done();
        Shell.run("demo", "--no-window", "--out", out).done();
        assertTrue(Files.isRegularFile(out.resolve("tern-tl8-2.probeleaf")));
    }

    private static Map<?, ?> first(Map<String, Object> state, String key) {
        return (Map<?, ?>) ((List<?>) state.get(key)).get(0);
    }
}
