// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import org.probeleaf.cli.Shell.Result;

/** Inputs that cannot be read get one line that names the file, and exit code 3. */
class BadInputTest {

    @TempDir
    private Path folder;

    @Test
    void nets_missingFile_saysSo() {
        Path file = folder.resolve("absent.pdf");
        Shell.run("nets", file).failed(3, file.toString(), "no such file");
    }

    @Test
    void nets_folder_saysSo() {
        Shell.run("nets", folder).failed(3, folder.toString(), "is a folder");
    }

    @Test
    void nets_emptyFile_saysSo() throws IOException {
        Shell.run("nets", file("empty.pdf", new byte[0])).failed(3, "empty.pdf", "is empty");
    }

    @Test
    void nets_textFile_saysWhatIsTaken() throws IOException {
        Shell.run("nets", file("letter.pdf", "Dear harbour office".getBytes(StandardCharsets.UTF_8)))
                .failed(3, "letter.pdf", "neither a PDF nor a PNG, JPEG or TIFF");
    }

    @ParameterizedTest
    @ValueSource(ints = {5, 20, 300, 5000, 60_000, 110_000})
    void nets_cutShortPdf_isRefused(int length) throws IOException {
        byte[] whole = Files.readAllBytes(Shell.EXAMPLE);
        Shell.run("nets", file("short.pdf", Arrays.copyOf(whole, length))).failed(3, "short.pdf", "get it again");
    }

    @Test
    void nets_headWithNoiseBehind_isRefused() throws IOException {
        byte[] noise = new byte[4000];
        new Random(7).nextBytes(noise);
        byte[] head = "%PDF-1.7\n".getBytes(StandardCharsets.US_ASCII);
        System.arraycopy(head, 0, noise, 0, head.length);
        byte[] end = "\nstartxref\n12\n%%EOF\n".getBytes(StandardCharsets.US_ASCII);
        System.arraycopy(end, 0, noise, noise.length - end.length, end.length);
        Shell.run("nets", file("noise.pdf", noise)).failed(3, "noise.pdf", "damaged");
    }

    /** Bytes changed at random: whatever happens, it ends with 0 or 3, and with one line at most. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void nets_damagedAtRandom_opensOrSaysSo(long seed) throws IOException {
        byte[] bytes = Files.readAllBytes(Shell.EXAMPLE);
        Random random = new Random(seed);
        for (int i = 0; i < 20 * seed; i++) {
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt();
        }
        Result result = Shell.run("nets", file("damaged.pdf", bytes));
        assertTrue(result.code() == 0 && result.err().isEmpty()
                || result.code() == 3 && result.err().lines().count() == 1, result.toString());
    }

    @Test
    void nets_pagesInACircle_areRefused() throws IOException {
        String text = """
                %PDF-1.4
                1 0 obj <</Type/Catalog/Pages 2 0 R>> endobj
                2 0 obj <</Type/Pages/Count 1/Kids[3 0 R]>> endobj
                3 0 obj <</Type/Pages/Count 1/Kids[2 0 R]/Parent 2 0 R>> endobj
                trailer <</Root 1 0 R/Size 4>>
                startxref
                0
                %%EOF
                """;
        Shell.run("nets", file("circle.pdf", text.getBytes(StandardCharsets.US_ASCII))).failed(3, "circle.pdf");
    }

    @Test
    void nets_formThatDrawsItself_ends() throws IOException {
        String content = "/F Do";
        String text = """
                %PDF-1.4
                1 0 obj <</Type/Catalog/Pages 2 0 R>> endobj
                2 0 obj <</Type/Pages/Count 1/Kids[3 0 R]>> endobj
                3 0 obj <</Type/Page/Parent 2 0 R/MediaBox[0 0 200 200]/Contents 4 0 R/Resources<</XObject<</F 5 0 R>>>>>> endobj
                4 0 obj <</Length 5>> stream
                /F Do
                endstream endobj
                5 0 obj <</Type/XObject/Subtype/Form/BBox[0 0 9 9]/Length 5/Resources<</XObject<</F 5 0 R>>>>>> stream
                /F Do
                endstream endobj
                trailer <</Root 1 0 R/Size 6>>
                startxref
                0
                %%EOF
                """;
        assertTrue(text.contains(content));
        Result result = Shell.run("nets", file("self.pdf", text.getBytes(StandardCharsets.US_ASCII)));
        assertTrue(result.code() == 0 || result.code() == 3, result.toString());
    }

    @Test
    void nets_protectedPdf_asksForThePasswordAndTakesIt() throws IOException {
        Path file = file("protected.pdf", Fixtures.protectedPdf("tide"));
        Shell.run("nets", file).failed(3, "protected.pdf", "--password");
        Shell.run("nets", file, "--password", "ebb").failed(3, "protected.pdf", "password does not open it");
        Shell.run("nets", file, "--password", "tide").done();
    }

    /** Protected against changes only: it opens without being asked. */
    @Test
    void nets_pdfProtectedByItsOwnerOnly_opens() throws IOException {
        Shell.run("nets", file("owner.pdf", Fixtures.protectedPdf(""))).done();
    }

    @ParameterizedTest
    @ValueSource(strings = {"png", "jpg", "tiff"})
    void nets_picture_opensAsAScan(String format) throws IOException {
        Path file = file("sheet." + format, Fixtures.picture(format));
        String out = Shell.run("nets", file, "--json", "-").done().out();
        assertTrue(out.contains("\"kind\": \"scan\""), out);
    }

    @ParameterizedTest
    @ValueSource(strings = {"png", "jpg", "tiff"})
    void nets_cutShortPicture_isRefused(String format) throws IOException {
        byte[] whole = Fixtures.picture(format);
        Shell.run("nets", file("short." + format, Arrays.copyOf(whole, whole.length / 3)))
                .failed(3, "short." + format, "get it again");
    }

    @Test
    void nets_tiffOfSeveralPages_hasThemAll() throws IOException {
        Object sheets = Shell.run("nets", file("fax.tif", Fixtures.tiff(3)), "--json", "-").done().json().get("sheets");
        assertEquals(3, ((List<?>) sheets).size());
    }

    /** Read page by page: the pages are many, the memory of the tests is not. */
    @Test
    void nets_tenThousandPages_opens() throws IOException {
        Path file = file("long.pdf", Fixtures.pdf(10_000));
        Path json = folder.resolve("long.json");
        Shell.run("nets", file, "--json", json).done();
        assertTrue(Files.size(json) > 10_000);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "{", "[1, 2]", "{\"format\": \"other\"}",
        "{\"format\": \"probeleaf-netlist\", \"parts\": 7}"})
    void trace_documentThatIsNone_saysWhy(String text) throws IOException {
        Shell.run("trace", file("board.json", text.getBytes(StandardCharsets.UTF_8)), "--from", "IC1.1")
                .failed(3, "board.json", "probeleaf nets --json");
    }

    @ParameterizedTest
    @ValueSource(strings = {"job show", "job check", "undo"})
    void jobVerbs_fileThatIsNoJob_sayWhy(String verb) throws IOException {
        Path file = file("no.probeleaf", "SQLite it is not".getBytes(StandardCharsets.UTF_8));
        String[] words = verb.split(" ");
        Result result = words.length == 2 ? Shell.run(words[0], words[1], file) : Shell.run(words[0], file);
        result.failed(3, "no.probeleaf");
    }

    @Test
    void jobNew_sheetThatCannotBeRead_leavesNoJobBehind() throws IOException {
        Path job = folder.resolve("j.probeleaf");
        Shell.run("job", "new", job, file("empty.pdf", new byte[0])).failed(3, "empty.pdf");
        assertTrue(Files.notExists(job));
    }

    private Path file(String name, byte[] bytes) throws IOException {
        return Fixtures.file(folder, name, bytes);
    }
}
