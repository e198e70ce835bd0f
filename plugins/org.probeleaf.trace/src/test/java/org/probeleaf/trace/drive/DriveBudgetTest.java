// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.drive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

import com.fasterxml.jackson.jr.ob.JSON;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import org.probeleaf.schematic.partbook.LevelBook;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.trace.Boards;
import org.probeleaf.trace.follow.SignalNetwork;

class DriveBudgetTest {

    private static final Path REFERENCE = Path.of(System.getProperty("probeleaf.shared", "none"),
            "reference/logic_levels.json");
    /** A chip of each family of the published table that the part book knows, with its pin on N1 as output and input. */
    private static final Map<String, String[]> CHIPS = Map.of("TTL_74", new String[] {"7404 2=N1", "7404 1=N1"},
            "TTL_74LS", new String[] {"74LS04 2=N1", "74LS04 1=N1"}, "HCT", new String[] {"74HCT04 2=N1", "74HCT04 1=N1"},
            "Z80_NMOS", new String[] {"Z80A 21=N1", null}, "6502_NMOS", new String[] {"6502 9=N1", null},
            "2114", new String[] {"2114 14=N1", null});

    /**
     * Fan-outs as data books of the 74 series have them: a 74 output carries 10 inputs of 74 or 20 of 74LS, a 74LS output
     * 5 of 74 or 20 of 74LS; the chips' from their data sheets. One more is too many.
     */
    @ParameterizedTest
    @CsvSource({"7404 2=N1, 7404 1=N1, 10", "7404 2=N1, 74LS04 1=N1, 20", "74LS04 2=N1, 7404 1=N1, 5",
        "74LS04 2=N1, 74LS04 1=N1, 20", "Z80A 21=N1, 74LS04 1=N1, 4", "Z80A 21=N1, 7404 1=N1, 1",
        "6502 9=N1, 7404 1=N1, 1", "6502 9=N1, 74LS04 1=N1, 4"})
    void carries_asManyAsTheFanOut_andNotOneMore(String driver, String load, int fanOut) {
        assertEquals(Optional.of(true), budget(driver, load, fanOut).carries());
        assertEquals(Optional.of(false), budget(driver, load, fanOut + 1).carries());
    }

    @Test
    void carries_publishedFanOuts_areExact() throws IOException {
        assumeTrue(Files.exists(REFERENCE), "the published table of logic levels is not here");
        List<Object> tried = new ArrayList<>();
        try (var in = Files.newInputStream(REFERENCE)) {
            for (Object row : (List<?>) JSON.std.mapFrom(in).get("expected_link_results")) {
                Map<?, ?> r = (Map<?, ?>) row;
                String[] from = CHIPS.get(r.get("from"));
                String[] to = CHIPS.get(r.get("to"));
                if (from != null && to != null && to[1] != null && r.get("fanout") instanceof Integer fanOut) {
                    assertEquals(Optional.of(true), budget(from[0], to[1], fanOut).carries(), r.toString());
                    assertEquals(Optional.of(false), budget(from[0], to[1], fanOut + 1).carries(), r.toString());
                    tried.add(r);
                }
            }
        }
        assertEquals(9, tried.size(), tried.toString());
    }

    @Test
    void of_mixedLoads_addsThemUp() {
        DriveBudget budget = budgets("IC1 74LS04 2=N1", "IC2 74LS00 1=N1", "IC3 7400 1=N1", "IC4 74HCT00 1=N1").get(0);
        assertEquals("IC1.2", budget.driver().place().text());
        assertEquals(61e-6, budget.high(), 1e-12);
        assertEquals(2.001e-3, budget.low(), 1e-12);
        assertEquals(0.4e-3 - 61e-6, budget.marginHigh(), 1e-12);
        assertEquals(8e-3 - 2.001e-3, budget.marginLow(), 1e-12);
        assertEquals(2.001 / 8, budget.use(), 1e-9);
        assertEquals(List.of(), budget.unknown());
    }

    @Test
    void of_pinsNobodyKnows_areNamed() {
        DriveBudget budget = budgets("IC1 74LS04 2=N1", "IC2 LM358 3=N1", "J1 - 1=N1", "TP1 - 1=N1", "C1 1n 1=N1 2=GND")
                .get(0);
        assertEquals("[IC2.3, J1.1]", budget.unknown().stream().map(p -> p.place().text()).toList().toString());
        assertEquals(0, budget.low());
    }

    /** 5 V less 0.5 V over 1 kilohm are 4.5 mA into a low output, and a low takes 2.7 V over 1 kilohm from a high one. */
    @ParameterizedTest
    @CsvSource({"+5V, 0, 4.5e-3", "GND, 2.7e-3, 0"})
    void of_resistorToASupply_isALoad(String supply, double high, double low) {
        DriveBudget budget = budgets("IC1 74LS04 2=N1", "R1 1k 1=N1 2=" + supply).get(0);
        assertEquals(high, budget.high(), 1e-12);
        assertEquals(low, budget.low(), 1e-12);
    }

    /** A 74LS244 that is switched off leaks 20 microamperes into the net (data sheet, from memory). */
    @Test
    void of_outputsThatAreOff_leak() {
        List<DriveBudget> budgets = budgets("IC1 74LS244 18=N1 1=N2", "IC2 74LS244 18=N1 1=N3");
        assertEquals(2, budgets.size());
        assertEquals(0.02e-3, budgets.get(0).high(), 1e-12);
    }

    /** A bus driver carries more than the gates of its family: 24 mA are 60 inputs of 74LS or 15 of 74. */
    @ParameterizedTest
    @CsvSource({"74LS244 18=N1 1=GND, 74LS04 1=N1, 60", "74LS374 2=N1 1=GND, 7404 1=N1, 15"})
    void carries_busDriver_moreThanAGate(String driver, String load, int fanOut) {
        assertEquals(Optional.of(true), budget(driver, load, fanOut).carries());
        assertEquals(Optional.of(false), budget(driver, load, fanOut + 1).carries());
    }

    @Test
    void of_severalDrivers_weakestComesFirst() {
        List<DriveBudget> budgets = budgets("IC1 74LS245 18=N1 1=N2", "IC2 Z80A 14=N1", "IC3 7400 1=N1");
        assertEquals("[IC2.14, IC1.18]", budgets.stream().map(b -> b.driver().place().text()).toList().toString());
    }

    @Test
    void of_driverOfUnknownFamily_saysSo() {
        DriveBudget budget = budgets("IC1 74LS04 1=N1", "IC2 62256 11=N1").get(0);
        assertNull(budget.levels());
        assertEquals(Optional.empty(), budget.carries());
        assertTrue(Double.isNaN(budget.marginLow()));
    }

    @Test
    void of_netWithoutADriver_isEmpty() {
        assertEquals(List.of(), budgets("IC1 74LS04 1=N1", "R1 1k 1=N1 2=+5V"));
    }

    /**
     * The classic data-book reckoning: four outputs that leak 0.25 mA on three TTL inputs, and two of 74LS (0.1 mA) on
     * three; formulas as in {@link PullUp}.
     */
    @ParameterizedTest
    @CsvSource({"7405, 4, 7404, 410.7, 2321.4", "74LS05, 2, 74LS04, 661.8, 8846.2"})
    void pullUp_openCollectors_isTheDataBooks(String output, int outputs, String input, double least, double greatest) {
        List<String> lines = new ArrayList<>();
        IntStream.range(0, outputs).forEach(i -> lines.add("IC" + (i + 1) + " " + output + " 2=N1"));
        IntStream.range(0, 3).forEach(i -> lines.add("IC" + (i + 11) + " " + input + " 1=N1"));
        lines.add("R1 1k 1=N1 2=+5V");
        DriveBudget budget = budgets(lines.toArray(String[]::new)).get(0);
        PullUp pullUp = budget.pullUp().orElseThrow();
        assertEquals(least, pullUp.least(), 0.05);
        assertEquals(greatest, pullUp.greatest(), 0.05);
        assertTrue(Double.isNaN(budget.marginHigh()));
    }

    @Test
    void pullUp_pushPull_isNone() {
        assertEquals(Optional.empty(), budgets("IC1 74LS04 2=N1", "IC2 74LS04 1=N1").get(0).pullUp());
    }

    private static DriveBudget budget(String driver, String load, int count) {
        List<String> lines = new ArrayList<>(List.of("IC100 " + driver));
        IntStream.range(0, count).forEach(i -> lines.add("IC" + i + " " + load));
        return budgets(lines.toArray(String[]::new)).get(0);
    }

    private static List<DriveBudget> budgets(String... lines) {
        return DriveBudget.of(SignalNetwork.of(Boards.of(lines), PartBook.standard()), "N1", LevelBook.standard());
    }
}
