// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;

import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfReader;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.probeleaf.job.Job;
import org.probeleaf.job.change.AddLabel;
import org.probeleaf.job.change.AddNote;
import org.probeleaf.job.change.AddReading;
import org.probeleaf.job.details.JobDetails;
import org.probeleaf.job.expectation.Expectation;
import org.probeleaf.job.mark.Anchor;
import org.probeleaf.job.mark.LabelMark;
import org.probeleaf.job.mark.NoteMark;
import org.probeleaf.job.mark.ReadingMark;
import org.probeleaf.schematic.json.NetlistJson;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.place.Place;

/** The tide logger's two sheets, from the job file to the marked-up PDF. */
class ExampleSheetTest {

    private static final Path EXAMPLE = Path.of("..", "..", "examples", "tern-tl8");

    @TempDir
    Path folder;

    @Test
    void write_example_bothPagesMarkedAndUntouchedUnderneath() throws Exception {
        Path sheet = EXAMPLE.resolve("tern-tl8.pdf");
        Path marked;
        try (Job job = Job.create(folder.resolve("case.probeleaf"), List.of(sheet), JobDetails.blank())) {
            try (InputStream in = Files.newInputStream(EXAMPLE.resolve("tern-tl8.json"))) {
                job.setNetlist(NetlistJson.read(in));
            }
            mark(job);
            marked = MarkedSheet.write(job, Marked.options(null), folder).get(0);
        }
        assertEquals("tern-tl8-marked.pdf", marked.getFileName().toString());
        byte[] original = Files.readAllBytes(sheet);
        byte[] bytes = Files.readAllBytes(marked);
        Pdfs.assertSameContent(original, bytes, null);
        Pdfs.assertSamePixels(original, bytes, null, 2);
        PdfReader reader = new PdfReader(bytes);
        List<List<String>> contents = IntStream.of(1, 2).mapToObj(p -> Pdfs.annotations(reader, p).stream()
                .map(a -> Pdfs.text(a, PdfName.CONTENTS)).toList()).toList();
        reader.close();
        for (List<String> page : contents) {
            assertTrue(page.contains("Net /RD: 7 pins, pages 1, 2"), page.toString());
            assertTrue(page.contains("Net name, given by the technician: read strobe"), page.toString());
        }
        assertTrue(contents.get(1).stream().anyMatch(c -> c.startsWith("IC14.3: 5.03 V")), contents.get(1).toString());
        assertTrue(contents.get(0).contains("IC5: pin 8 never goes low"), contents.get(0).toString());
    }

    private static void mark(Job job) throws Exception {
        job.apply(new AddLabel(LabelMark.of(Place.parse("IC1.21"), at(job, "IC1.21"), "read strobe", Marked.WHEN)));
        job.apply(new AddNote(NoteMark.of(Place.parse("IC5"), at(job, "IC5"), "pin 8 never goes low", Marked.WHEN)));
        job.apply(new AddReading(ReadingMark.of(Place.parse("IC14.3"), at(job, "IC14.3"), "5.03V", "",
                Expectation.parse("5V±5%"), Marked.WHEN)));
    }

    private static Anchor at(Job job, String place) {
        Netlist netlist = job.state().netlist();
        return Anchor.of(Place.parse(place), netlist).orElseThrow();
    }
}
