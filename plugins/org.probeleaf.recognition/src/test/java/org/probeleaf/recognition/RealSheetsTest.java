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
 * that lies beside them. The floors hold what has been reached.
 */
class RealSheetsTest {

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
            try (OutputStream out = Files.newOutputStream(readings.resolve(folder.getFileName() + ".json"))) {
                NetlistJson.write(netlist, out);
            }
        }

        Map<String, double[]> scores = score(evaluation);

        assertEquals(cases.size(), scores.size(), "every document is readable for the scorer");
        double parts = scores.values().stream().mapToDouble(s -> s[0]).average().orElse(0);
        double bcubed = scores.values().stream().mapToDouble(s -> s[2]).average().orElse(0);
        double exact = scores.values().stream().mapToDouble(s -> s[1]).average().orElse(0);
        double least = scores.values().stream().mapToDouble(s -> s[1]).min().orElse(0);
        assertTrue(parts >= 0.985, "mean F1 of parts " + parts);
        assertTrue(exact >= 0.95, "mean share of nets read exactly " + exact);
        assertTrue(bcubed >= 0.975, "mean BCubed F1 of pins " + bcubed);
        assertTrue(least >= 0.85, "the least share of nets read exactly " + least);
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
