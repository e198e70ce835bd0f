// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import javax.imageio.ImageIO;

import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfReader;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class MarkedSheetTest {

    @TempDir
    Path folder;

    static Stream<Sheets.Form> forms() {
        return Stream.of(new Sheets.Form(0, 0, null, false), new Sheets.Form(90, 0, null, false),
                new Sheets.Form(180, 20, null, true), new Sheets.Form(270, 20, null, false),
                new Sheets.Form(0, 30, null, true), new Sheets.Form(0, 0, "kelp", false),
                new Sheets.Form(90, 10, "kelp", true));
    }

    @ParameterizedTest
    @MethodSource("forms")
    void write_annotationsHidden_samePixels(Sheets.Form form) throws IOException {
        byte[] original = Sheets.make(form);
        byte[] marked = Marked.mark(original, form.password(), folder);
        Pdfs.assertSamePixels(original, marked, form.password(), 1);
    }

    @ParameterizedTest
    @MethodSource("forms")
    void write_anySheet_contentStreamsUntouched(Sheets.Form form) throws IOException {
        byte[] original = Sheets.make(form);
        byte[] marked = Marked.mark(original, form.password(), folder);
        Pdfs.assertSameContent(original, marked, form.password());
    }

    @Test
    void write_soundSheet_originalBytesAreTheBeginning() throws IOException {
        byte[] original = Sheets.make(new Sheets.Form(0, 0, null, false));
        byte[] marked = Marked.mark(original, null, folder);
        assertArrayEquals(original, Arrays.copyOf(marked, original.length));
        assertTrue(marked.length > original.length);
    }

    /** Without a password: OpenPDF has no cipher of its own. */
    static Stream<Sheets.Form> openForms() {
        return forms().filter(f -> f.password() == null);
    }

    /** Listed by OpenPDF, which shares no code with the library that wrote them. */
    @ParameterizedTest
    @MethodSource("openForms")
    void write_listedByAnotherLibrary_everyAnnotationIsThere(Sheets.Form form) throws IOException {
        PdfReader reader = new PdfReader(Marked.mark(Sheets.make(form), null, folder));
        List<PdfDictionary> all = Pdfs.annotations(reader, 1);
        List<String> subjects = all.stream().map(a -> Pdfs.text(a, new PdfName("Subj"))).sorted().toList();
        assertEquals(List.of("Legend", "Net name", "Note", "Note", "Reading", "Reading", "Reading", "Reading",
                "Traced net"), subjects);
        Set<String> names = new HashSet<>();
        for (PdfDictionary a : all) {
            assertEquals("M. Kestrel", Pdfs.text(a, PdfName.T));
            assertEquals("D:20260301093000Z", Pdfs.text(a, PdfName.M).replace("+00'00'", "Z"));
            assertFalse(Pdfs.text(a, PdfName.CONTENTS).isBlank());
            assertTrue(names.add(Pdfs.text(a, PdfName.NM)));
            assertEquals(4, a.getAsNumber(PdfName.F).intValue());
            assertNotNull(a.getAsDict(PdfName.AP).getAsStream(PdfName.N));
            assertNotNull(a.getAsDict(new PdfName("OC")).getAsString(PdfName.NAME));
        }
        reader.close();
    }

    @Test
    void write_textOutsideLatin_keptInFull() throws IOException {
        PdfReader reader = new PdfReader(Marked.mark(Sheets.make(new Sheets.Form(0, 0, null, false)), null, folder));
        List<String> contents = Pdfs.annotations(reader, 1).stream().map(a -> Pdfs.text(a, PdfName.CONTENTS)).toList();
        assertTrue(contents.contains("1@120,150: Leg 21 lifted \u2013 \u03a9 \u00b1 \u00b5 \u0416"),
                contents.toString());
        assertTrue(contents.stream().anyMatch(c -> c.contains("3.3 k\u03a9") && c.contains("not as expected")),
                contents.toString());
        assertTrue(contents.stream().anyMatch(c -> c.contains("Mains voltage: ")
                && c.contains("local electrical codes")),
                contents.toString());
        reader.close();
    }

    @Test
    void write_markedSheet_inkOfMarksShows() throws IOException {
        byte[] original = Sheets.make(new Sheets.Form(0, 0, null, false));
        byte[] marked = Marked.mark(original, null, folder);
        try (PDDocument a = Loader.loadPDF(original); PDDocument b = Loader.loadPDF(marked)) {
            assertNotEquals(Arrays.hashCode(Pdfs.pixels(Pdfs.render(a, 0, true))),
                    Arrays.hashCode(Pdfs.pixels(Pdfs.render(b, 0, true))));
        }
    }

    @Test
    void write_lockedSheet_staysLockedWithTheMarksIn() throws IOException {
        byte[] marked = Marked.mark(Sheets.make(new Sheets.Form(0, 0, "kelp", false)), "kelp", folder);
        assertThrows(InvalidPasswordException.class,
                () -> Loader.loadPDF(marked).close());
        try (PDDocument document = Loader.loadPDF(marked, "kelp")) {
            List<String> contents = document.getPage(0).getAnnotations().stream().map(a -> a.getContents()).toList();
            assertEquals(9, contents.size());
            assertTrue(contents.contains("Net /RD: 1 pin, page 1"), contents.toString());
        }
    }

    @Test
    void write_sameJobTwice_sameAnnotationNames() throws IOException {
        byte[] sheet = Sheets.make(new Sheets.Form(0, 0, null, false));
        PdfReader reader = new PdfReader(Marked.mark(sheet, null, folder));
        assertTrue(Pdfs.annotations(reader, 1).stream().map(a -> Pdfs.text(a, PdfName.NM))
                .anyMatch("probeleaf-legend-1"::equals));
        reader.close();
        assertEquals(List.of("board-marked.pdf"), names());
        Marked.mark(sheet, null, folder);
        assertEquals(List.of("board-marked.pdf"), names());
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"png", "jpg"})
    void write_imageSheet_pagesShowThePictureUnderMarks(String type) throws IOException {
        BufferedImage image = new BufferedImage(900, 600, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < 900; x++) {
            for (int y = 0; y < 600; y++) {
                image.setRGB(x, y, x == 300 ? 0 : 0xFFFFFF);
            }
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, type, out);
        byte[] marked = Marked.mark(out.toByteArray(), null, folder);
        try (PDDocument document = Loader.loadPDF(marked)) {
            assertEquals(1, document.getNumberOfPages());
            assertEquals(9, document.getPage(0).getAnnotations().size());
            BufferedImage shown = Pdfs.render(document, 0, false);
            int dark = shown.getRGB(shown.getWidth() / 3, shown.getHeight() / 2) & 255;
            int light = shown.getRGB(shown.getWidth() / 2, shown.getHeight() / 2) & 255;
            assertTrue(dark < light, dark + " " + light);
        }
    }

    @Test
    void write_sheetThatHadToBeRepaired_marksAreIn() throws IOException {
        byte[] whole = Sheets.make(new Sheets.Form(0, 0, null, false));
        String text = new String(whole, StandardCharsets.ISO_8859_1).replaceFirst("startxref\\s+\\d+", "startxref\n7");
        byte[] bent = text.getBytes(StandardCharsets.ISO_8859_1);
        byte[] marked = Marked.mark(bent, null, folder);
        assertFalse(new String(marked, StandardCharsets.ISO_8859_1).contains("startxref\n7"), "written anew");
        Pdfs.assertSameContent(bent, marked, null);
        Pdfs.assertSamePixels(bent, marked, null, 1);
        PdfReader reader = new PdfReader(marked);
        assertEquals(9, Pdfs.annotations(reader, 1).size());
        reader.close();
    }

    @Test
    void write_sheetWithLayers_itsOwnStayAsTheyAre() throws IOException {
        byte[] original;
        try (PDDocument document = Loader.loadPDF(Sheets.make(new Sheets.Form(0, 0, null, false)))) {
            PDOptionalContentProperties layers = new PDOptionalContentProperties();
            layers.addGroup(new PDOptionalContentGroup("Copper"));
            layers.setGroupEnabled("Copper", false);
            document.getDocumentCatalog().setOCProperties(layers);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            original = out.toByteArray();
        }
        byte[] marked = Marked.mark(original, null, folder);
        try (PDDocument document = Loader.loadPDF(marked)) {
            PDOptionalContentProperties layers = document.getDocumentCatalog().getOCProperties();
            assertEquals("Copper", layers.getGroupNames()[0]);
            assertEquals(Set.of("Copper", "Marks: traced nets", "Marks: net names", "Marks: readings",
                    "Marks: notes", "Marks: legend"), Set.of(layers.getGroupNames()));
            assertFalse(layers.isGroupEnabled("Copper"));
            assertTrue(layers.isGroupEnabled("Marks: readings"));
        }
    }

    /** Real sheets of several drawing programs, where the reference folder is at hand. */
    @Test
    void write_realSheets_untouchedUnderneath() throws IOException {
        Path cases = Path.of(System.getProperty("probeleaf.shared", ""), "eval", "cases");
        Assumptions.assumeTrue(Files.isDirectory(cases), "skipped: no reference sheets at " + cases);
        List<Path> sheets;
        try (Stream<Path> files = Files.walk(cases, 2)) {
            sheets = files.filter(f -> f.endsWith("sheet.pdf")).sorted().toList();
        }
        for (Path sheet : sheets) {
            byte[] original = Files.readAllBytes(sheet);
            byte[] marked = Marked.markFirstPage(original, folder);
            Pdfs.assertSameContent(original, marked, null);
            Pdfs.assertSamePixels(original, marked, null, 1);
            PdfReader reader = new PdfReader(marked);
            assertTrue(Pdfs.annotations(reader, 1).size() >= 9, sheet.toString());
            reader.close();
        }
    }
}
