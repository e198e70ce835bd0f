// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
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

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.probeleaf.benchmark.Case;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.json.NetlistJson;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.PartUnit;
import org.probeleaf.schematic.netlist.Pin;

import com.fasterxml.jackson.jr.ob.JSON;

class JudgementTest {

    private static final String TRUTH = """
            {"nets": [
               {"name": "CLK", "pins": [["IC1", "1", "CLK"], ["IC2", "3"], ["R1", "1"]]},
               {"name": "GND", "pins": [["IC1", "2"], ["IC2", "1"]]},
               {"name": "OUT", "pins": [["IC1", "3", "Q"], ["R1", "2"]]}],
             "hidden_pins": [["IC2", "7", "GND"]], "sheet_only_refs": ["H1"]}""";

    @TempDir
    Path folder;

    @Test
    void score_everythingRight_isOneThroughout() throws IOException {
        Judgement judgement = judge(part("IC1", "1", "N1", "2", "N2", "3", "N3"), part("IC2", "3", "N1", "1", "N2"),
                part("R1", null, "N3", null, "N1"));

        assertEquals(new Score(1, 1, 1, 1, 3, 3, 3), judgement.score());
        assertEquals(Set.of("N1", "N2", "N3"), judgement.rightNets());
    }

    @Test
    void score_twoNetsReadAsOne_areBothWrongAndTellWhose() throws IOException {
        Judgement judgement = judge(part("IC1", "1", "N1", "2", "N1", "3", "N3"), part("IC2", "3", "N1", "1", "N1"),
                part("R1", null, "N3", null, "N1"));

        assertEquals(1, judgement.score().exactNets());
        assertEquals(Set.of("N3"), judgement.rightNets());
        assertEquals("CLK", judgement.owner("N1").name());
    }

    @Test
    void score_hiddenPinAndSheetOnlyPart_areNotCounted() throws IOException {
        Judgement judgement = judge(part("IC1", "1", "N1", "2", "N2", "3", "N3"),
                part("IC2", "3", "N1", "1", "N2", "7", "N3"), part("R1", null, "N3", null, "N1"),
                part("H1", "1", "N1"));

        assertEquals(new Score(1, 1, 1, 1, 3, 3, 3), judgement.score());
    }

    @Test
    void judgedNets_netOfOnePin_isJudgedOnlyWhereItBelongsWithOthers() throws IOException {
        Judgement judgement = judge(part("IC1", "1", "N1", "2", "N2", "3", "N3", "9", "N9"),
                part("IC2", "3", "N1"),
                part("R1", null, "N3", null, "N1"));

        assertEquals(Set.of("N1", "N2", "N3"), judgement.judgedNets());
    }

    @Test
    void calibration_countsByConfidence() {
        Calibration calibration = new Calibration();
        for (int i = 0; i < 10; i++) {
            calibration.add(0.96, i > 0);
        }
        calibration.add(0.3, false);

        assertEquals(0.9, calibration.sureShare(), 1e-12);
        assertEquals(List.of("confidence", "0.00", "0.95", "0.90"),
                calibration.table().lines().map(l -> l.split(" ")[0]).toList());
    }

    /** The other figures are those of the scorer that lies beside the sheets: it is asked. */
    @Test
    void score_realSheets_isWhatTheScorerBesideThemSays() throws IOException, InterruptedException {
        Path evaluation = Path.of(System.getProperty("probeleaf.shared", "none"), "eval");
        Path scorer = evaluation.resolve("score.py");
        assumeTrue(Files.isRegularFile(scorer), "skipped: the real sheets are not at hand");
        assumeTrue(hasPython(), "skipped: the scorer needs python3");
        for (Case c : Case.in(evaluation.resolve("cases"), List.of("charger", "m68k-buses", "usb-isolator",
                "stepper-interface", "target-8051"))) {
            Netlist netlist = Reading.of(c.sheet()).netlist();
            Path read = folder.resolve(c.name() + ".json");
            try (OutputStream out = Files.newOutputStream(read)) {
                NetlistJson.write(netlist, out);
            }
            Score ours = Judgement.of(netlist, Truth.read(c.truth())).score();
            Map<String, Object> theirs = ask(scorer, c.truth(), read);
            assertEquals(number(theirs, "parts"), ours.parts(), 6e-5, c.name());
            assertEquals(number(theirs, "exact"), ours.exact(), 6e-5, c.name());
            assertEquals(number(theirs, "bcubed"), ours.bcubed(), 6e-5, c.name());
            assertEquals(number(theirs, "pins"), ours.pins(), 6e-5, c.name());
            assertEquals(number(theirs, "true_nets"), ours.trueNets(), c.name());
            assertEquals(number(theirs, "exact_nets"), ours.exactNets(), c.name());
        }
    }

    private static double number(Map<String, Object> map, String key) {
        return ((Number) map.get(key)).doubleValue();
    }

    private static Map<String, Object> ask(Path scorer, Path truth, Path read) throws IOException,
            InterruptedException {
        Process process = new ProcessBuilder("python3", scorer.toString(), truth.toString(), read.toString()).start();
        String answer = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor());
        return JSON.std.mapFrom(answer);
    }

    private static boolean hasPython() throws InterruptedException {
        try {
            return new ProcessBuilder("python3", "--version").redirectErrorStream(true).start().waitFor() == 0;
        } catch (IOException e) {
            // The command is not there.
            return false;
        }
    }

    private Judgement judge(Part... parts) throws IOException {
        Truth truth = Truth.read(Files.writeString(folder.resolve("truth.json"), TRUTH));
        List<Net> nets = List.of();
        return Judgement.of(new Netlist("t.pdf", "", List.of(), List.of(parts), nets, List.of()), truth);
    }

    /** A part with pins given as number, net, number, net ... */
    private static Part part(String ref, String... numbersAndNets) {
        List<Pin> pins = new ArrayList<>();
        for (int i = 0; i < numbersAndNets.length; i += 2) {
            pins.add(Pin.drawn(numbersAndNets[i], null, null, 1, new Point(i, 0), numbersAndNets[i + 1]));
        }
        return new Part(ref, null, List.of(new PartUnit(null, 1, new Box(0, 0, 1, 1))), pins);
    }
}
