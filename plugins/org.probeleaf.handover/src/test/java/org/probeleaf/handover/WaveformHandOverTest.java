// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfReader;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.probeleaf.handover.wave.WaveReader;
import org.probeleaf.job.Job;
import org.probeleaf.job.change.JudgeCaptureBy;
import org.probeleaf.job.details.Hazard;
import org.probeleaf.job.details.JobDetails;
import org.probeleaf.job.mark.Anchor;
import org.probeleaf.job.mark.CaptureMark;
import org.probeleaf.schematic.checksum.Sha256;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.json.NetlistJson;
import org.probeleaf.schematic.place.Place;

/** Captures of a job, on the marked-up sheet and on pages of their own. */
class WaveformHandOverTest {

    private static final Path EXAMPLE = Path.of("..", "..", "examples", "tern-tl8");

    @TempDir
    Path folder;

    /** 500 kHz between 1.3 and 3.4 V: no low for any TTL input. */
    private static byte[] weakLow() {
        StringBuilder text = new StringBuilder("time_s,volts\n");
        for (int i = 0; i < 400; i++) {
            text.append(String.format(Locale.ROOT, "%.9e,%.3f%n", i * 50e-9, i % 40 < 20 ? 1.3 : 3.4));
        }
        return text.toString().getBytes(StandardCharsets.US_ASCII);
    }

    private static CaptureMark pin(Job job, String name, byte[] bytes, String note) throws Exception {
        CaptureMark mark = CaptureMark.of(Place.parse("IC5.8"), new Anchor(1, new Point(985, 580)), name, Sha256.of(bytes),
                bytes.length, "", note, Marked.WHEN);
        job.addCapture(mark, bytes);
        return mark;
    }

    private Job job() throws Exception {
        Job job = Job.create(folder.resolve("case.probeleaf"), List.of(EXAMPLE.resolve("tern-tl8.pdf")),
                JobDetails.blank().withHazards(List.of(Hazard.MAINS)));
        try (InputStream in = Files.newInputStream(EXAMPLE.resolve("tern-tl8.json"))) {
            job.setNetlist(NetlistJson.read(in));
        }
        return job;
    }

    private static List<PdfDictionary> waveforms(PdfReader reader) {
        return Pdfs.annotations(reader, 1).stream().filter(a -> "Waveform".equals(Pdfs.text(a, new PdfName("Subj")))).toList();
    }

    /** Listed by OpenPDF, which shares no code with the library that wrote them. */
    @Test
    void write_captureHeldAgainstAFamily_annotationSaysWhatIsWrong() throws Exception {
        Path marked;
        try (Job job = job()) {
            CaptureMark mark = pin(job, "inp.csv", weakLow(), "before the lift");
            job.apply(new JudgeCaptureBy(mark.id(), "74LS", Marked.WHEN));
            marked = MarkedSheet.write(job, Marked.options(null).withWaves(WaveReader.standard().all(job)), folder).get(0);
        }
        byte[] bytes = Files.readAllBytes(marked);
        Pdfs.assertSameContent(Files.readAllBytes(EXAMPLE.resolve("tern-tl8.pdf")), bytes, null);
        PdfReader reader = new PdfReader(bytes);
        List<PdfDictionary> waves = waveforms(reader);
        String says = Pdfs.text(waves.get(0), PdfName.CONTENTS);
        reader.close();
        assertEquals(1, waves.size());
        assertTrue(says.startsWith("IC5.8: waveform inp.csv\n500 kHz, 1.3 V to 3.4 V\n"), says);
        assertTrue(says.contains("is no low for 74LS"), says);
        assertTrue(says.endsWith("before the lift"), says);
    }

    @Test
    void write_waveformPages_plotFiguresAndCautionAreThere() throws Exception {
        Path pages;
        try (Job job = job()) {
            CaptureMark mark = pin(job, "inp.csv", weakLow(), "before the lift");
            job.apply(new JudgeCaptureBy(mark.id(), "74LS", Marked.WHEN));
            pages = WaveformSheet.write(job.state().details(), Marked.options(null).withWaves(WaveReader.standard().all(job)),
                    folder).orElseThrow();
        }
        String text;
        try (PDDocument document = Loader.loadPDF(pages.toFile())) {
            assertEquals(1, document.getNumberOfPages());
            text = new PDFTextStripper().getText(document);
        }
        for (String expected : List.of("IC5.8, sheet 1", "weak low", "low at most", "Frequency", "500 kHz", "1.3 V", "before the lift",
                Hazard.MAINS.title(), Sha256.of(weakLow()), "held against 74LS")) {
            assertTrue(text.contains(expected), expected + " in\n" + text);
        }
    }

    @Test
    void write_captureThatCannotBeRead_saysWhyAndKeepsTheRest() throws Exception {
        byte[] broken = "no numbers in here\n".getBytes(StandardCharsets.US_ASCII);
        String text;
        try (Job job = job()) {
            pin(job, "broken.csv", broken, "");
            pin(job, "inp.csv", weakLow(), "");
            MarkedSheetOptions options = Marked.options(null).withWaves(WaveReader.standard().all(job));
            PdfReader reader = new PdfReader(Files.readAllBytes(MarkedSheet.write(job, options, folder).get(0)));
            assertEquals(2, waveforms(reader).size());
            reader.close();
            try (PDDocument document = Loader.loadPDF(WaveformSheet.write(job.state().details(), options, folder).orElseThrow()
                    .toFile())) {
                text = new PDFTextStripper().getText(document);
            }
        }
        assertTrue(text.contains("This capture cannot be read: "), text);
        assertTrue(text.contains("500 kHz"), text);
    }

    @Test
    void write_noCaptures_noPages() throws Exception {
        try (Job job = job()) {
            assertTrue(WaveformSheet.write(job.state().details(), Marked.options(null), folder).isEmpty());
        }
    }
}
