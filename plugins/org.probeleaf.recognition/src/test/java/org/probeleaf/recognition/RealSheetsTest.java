// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.probeleaf.drawing.SheetFile;
import org.probeleaf.drawing.primitive.Drawing;
import org.probeleaf.schematic.json.NetlistJson;
import org.probeleaf.schematic.netlist.Netlist;

/**
 * Real sheets of open-hardware boards with their true netlists, where they are at hand: read and scored by the scorer
 * that lies beside them. The floors are what a first reading must reach; they say nothing of single sheets.
 */
class RealSheetsTest {

    /** Their lettering is drawn as lines, which is not read yet. */
    private static final Set<String> WITHOUT_TEXT = Set.of("z80-video-board", "sbc-6502");

    @TempDir
    Path readings;

    @Test
    void recognise_realSheets_findsPartsAndNets() throws IOException, InterruptedException {
        Path evaluation = Path.of(System.getProperty("probeleaf.shared", "none"), "eval");
        assumeTrue(Files.isRegularFile(evaluation.resolve("score.py")), "skipped: the real sheets are not at hand");
        assumeTrue(hasPython(), "skipped: the scorer needs python3");
        List<Path> cases;
        try (Stream<Path> folders = Files.list(evaluation.resolve("cases"))) {
            cases = folders.filter(f -> Files.isRegularFile(f.resolve("sheet.pdf"))).sorted().toList();
        }
        for (Path folder : cases) {
            Netlist netlist = read(folder.resolve("sheet.pdf"));
            if (WITHOUT_TEXT.contains(folder.getFileName().toString())) {
                assertTrue(netlist.nets().size() > 20, "nets are drawn on " + folder.getFileName());
            }
            try (OutputStream out = Files.newOutputStream(readings.resolve(folder.getFileName() + ".json"))) {
                NetlistJson.write(netlist, out);
            }
        }

        Map<String, double[]> scores = score(evaluation);

        assertEquals(cases.size(), scores.size(), "every document is readable for the scorer");
        scores.keySet().removeAll(WITHOUT_TEXT);
        double parts = scores.values().stream().mapToDouble(s -> s[0]).average().orElse(0);
        double bcubed = scores.values().stream().mapToDouble(s -> s[2]).average().orElse(0);
        assertTrue(parts >= 0.95, "mean F1 of parts " + parts);
        assertTrue(bcubed >= 0.88, "mean BCubed F1 of pins " + bcubed);
    }

    private static Netlist read(Path sheet) throws IOException {
        try (SheetFile file = SheetFile.open(sheet, null)) {
            List<Drawing> pages = new ArrayList<>();
            for (int page = 1; page <= file.pageCount(); page++) {
                pages.add(file.draw(page));
            }
            return new Recogniser().recognise(file.name(), "", pages, Progress.NONE);
        }
    }

    private Map<String, double[]> score(Path evaluation) throws IOException, InterruptedException {
        Process scorer = new ProcessBuilder("python3", evaluation.resolve("score.py").toString(), "--table",
                evaluation.resolve("cases").toString(), readings.toString()).redirectErrorStream(true).start();
        String table = new String(scorer.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, scorer.waitFor(), table);
        Map<String, double[]> scores = new TreeMap<>();
        for (String line : table.lines().skip(1).toList()) {
            String[] cells = line.split("\\s+");
            if (!cells[0].equals("mean") && cells.length > 4) {
                scores.put(cells[0], new double[] {Double.parseDouble(cells[1]), Double.parseDouble(cells[2]),
                    Double.parseDouble(cells[3])});
            }
        }
        return scores;
    }

    private static boolean hasPython() throws InterruptedException {
        try {
            return new ProcessBuilder("python3", "--version").redirectErrorStream(true).start().waitFor() == 0;
        } catch (IOException e) {
            // The command is not there.
            return false;
        }
    }
}
