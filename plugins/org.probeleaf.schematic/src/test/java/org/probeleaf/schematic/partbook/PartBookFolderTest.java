// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.partbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PartBookFolderTest {

    private static final String LATCH = """
            part TL8-GLUE 4 Address latch of the tide logger
              spelt TL8-GLUE* 4711*
              1 in A
              2 out Y
              3 ground GND
              4 power VCC
              unit A BUF 1 > 2
            """;

    @TempDir
    Path temp;

    private PartBookFolder folder() {
        return PartBookFolder.at(temp.resolve("parts"));
    }

    private List<String> files() throws IOException {
        if (!Files.exists(folder().path())) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(folder().path())) {
            return all.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    private Path put(String name, String text) throws IOException {
        Files.createDirectories(folder().path());
        return Files.writeString(folder().path().resolve(name), text);
    }

    @Test
    void book_ofAFolderThatIsNotThere_isTheStandardOne() throws IOException {
        assertEquals(PartBook.standard().types(), folder().book().types());
        assertEquals(List.of(), files());
    }

    @Test
    void keep_aNewType_isFoundByItsSpellings() throws IOException {
        folder().keep(LATCH);
        assertEquals(List.of("TL8-GLUE.txt"), files());
        PartBook book = folder().book();
        assertEquals("TL8-GLUE", book.find("4711B").orElseThrow().name());
        assertEquals("7400", book.find("SN74HCT00N").orElseThrow().name());
        assertEquals(LATCH, book.text("TL8-GLUE").orElseThrow());
    }

    @Test
    void keep_aTypeOfTheStandardBook_hidesIt() throws IOException {
        String own = PartBook.standard().text("7400").orElseThrow().replace("1 in 1A", "1 in LEFT");
        folder().keep(own);
        PartBook book = folder().book();
        assertEquals("LEFT", book.find("74LS00").orElseThrow().pinNumbered("1").orElseThrow().name());
        assertEquals(PartBook.standard().types().size(), book.types().size());
        folder().drop("7400");
        assertEquals(List.of(), files());
        assertEquals("1A", folder().book().find("74LS00").orElseThrow().pinNumbered("1").orElseThrow().name());
    }

    @Test
    void keep_aTypeInAFileOfMany_leavesTheRestAsItIsWritten() throws IOException {
        Path file = put("mine.txt", "# my parts\n\n" + LATCH + "\n# about the other\npart Z9 1 One pin\n  spelt Z9\n  1 in A\n");
        folder().keep(LATCH.replace("2 out Y", "2 tri Q"));
        assertEquals("# my parts\n\n" + LATCH.replace("2 out Y", "2 tri Q")
                + "\n# about the other\npart Z9 1 One pin\n  spelt Z9\n  1 in A\n", Files.readString(file));
        folder().drop("TL8-GLUE");
        assertEquals("# my parts\n\n# about the other\npart Z9 1 One pin\n  spelt Z9\n  1 in A\n", Files.readString(file));
    }

    @Test
    void keep_nameThatNoFileCanBear_isKeptUnderAnother() throws IOException {
        folder().keep("part A/B:C 1 Odd\n  spelt ABC\n  1 in A\n");
        assertEquals(List.of("A_B_C.txt"), files());
        folder().keep("part A:B/C 1 Odd\n  spelt ABD\n  1 in A\n");
        assertEquals(2, files().size());
        assertEquals("A/B:C", folder().book().find("abc").orElseThrow().name());
    }

    @Test
    void keep_twoPartsOrNone_isRefusedAndWritesNothing() {
        IOException two = assertThrows(IOException.class, () -> folder().keep(LATCH + LATCH.replace("TL8-GLUE", "B")));
        assertTrue(two.getMessage().contains("one at a time"), two.getMessage());
        assertThrows(IOException.class, () -> folder().keep("class ZZ ic\n"));
        IOException wrong = assertThrows(IOException.class, () -> folder().keep(LATCH.replace("1 in A", "1 inn A")));
        assertTrue(wrong.getMessage().contains("line 3") && wrong.getMessage().contains("inn"), wrong.getMessage());
        assertFalse(Files.exists(folder().path()));
    }

    @Test
    void book_wrongFile_namesFileAndLine() throws IOException {
        put("bad.txt", "part X 2 Two\n  spelt X\n  1 in A\n");
        IOException e = assertThrows(IOException.class, () -> folder().book());
        assertTrue(e.getMessage().contains("bad.txt") && e.getMessage().contains("1 of 2 pins"), e.getMessage());
        Files.write(folder().path().resolve("bad.txt"), "part M\u00fc".getBytes(StandardCharsets.ISO_8859_1));
        IOException latin = assertThrows(IOException.class, () -> folder().book());
        assertTrue(latin.getMessage().contains("bad.txt") && latin.getMessage().contains("UTF-8"), latin.getMessage());
    }

    @Test
    void book_sameTypeInTwoFiles_namesBoth() throws IOException {
        put("a.txt", LATCH);
        put("b.txt", LATCH);
        IOException e = assertThrows(IOException.class, () -> folder().book());
        assertTrue(e.getMessage().contains("a.txt") && e.getMessage().contains("b.txt"), e.getMessage());
    }

    @Test
    void book_besideTheWeightsOfFaults_doesNotReadThem() throws IOException {
        put("priors.txt", "part connector 20\n");
        assertEquals(PartBook.standard().types(), folder().book().types());
    }

    @Test
    void book_ownClass_countsBeforeTheStandardOne() throws IOException {
        put("classes.txt", "class TC capacitor\n");
        assertEquals(PartClass.CAPACITOR, folder().book().classOf("TC3"));
        assertEquals(PartClass.AMBIGUOUS, PartBook.standard().classOf("TC3"));
        assertEquals(PartClass.RESISTOR, folder().book().classOf("R3"));
    }

    @Test
    void usual_followsTheSystemAndTheVariable() {
        Path home = Path.of("home");
        Path last = Path.of("probeleaf", "parts");
        assertEquals(home.resolve(".config").resolve(last), PartBookFolder.usual(Map.of(), home, "Linux").path());
        assertEquals(Path.of("cfg").resolve(last),
                PartBookFolder.usual(Map.of("XDG_CONFIG_HOME", "cfg"), home, "Linux").path());
        assertEquals(Path.of("data").resolve(last),
                PartBookFolder.usual(Map.of("APPDATA", "data"), home, "Windows 11").path());
        assertEquals(home.resolve("Library").resolve("Application Support").resolve(last),
                PartBookFolder.usual(Map.of(), home, "Mac OS X").path());
        assertEquals(Path.of("mine"), PartBookFolder.usual(Map.of("PROBELEAF_PARTS", "mine"), home, "Linux").path());
    }
}
