// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.drive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

import com.fasterxml.jackson.jr.ob.JSON;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import org.probeleaf.schematic.partbook.LevelBook;
import org.probeleaf.schematic.partbook.LogicLevels;
import org.probeleaf.schematic.partbook.LogicLevels.Drive;
import org.probeleaf.schematic.partbook.PartBook;

class LogicLinkTest {

    private static final Path REFERENCE = Path.of(System.getProperty("probeleaf.shared", "none"),
            "reference/logic_levels.json");
    private static final Map<String, String> NAMES = Map.ofEntries(Map.entry("TTL_74", "74"),
            Map.entry("TTL_74LS", "74LS"), Map.entry("TTL_54LS", "54LS"), Map.entry("TTL_74S", "74S"),
            Map.entry("TTL_74F", "74F"), Map.entry("HC_2.0", "74HC@2V"), Map.entry("HC_4.5", "74HC@4.5V"),
            Map.entry("HC_5.5", "74HC@5.5V"), Map.entry("HC_6.0", "74HC@6V"), Map.entry("HCT", "74HCT"),
            Map.entry("4000B_5", "4000B"), Map.entry("4000B_10", "4000B@10V"), Map.entry("4000B_15", "4000B@15V"),
            Map.entry("LVTTL_3.3", "LVTTL"), Map.entry("LVCMOS_3.3", "LVCMOS"), Map.entry("LCX_3.0", "74LCX"),
            Map.entry("Z80_NMOS", "Z80"), Map.entry("6502_NMOS", "6502"), Map.entry("2114", "2114"),
            Map.entry("4116", "4116"));

    private final LevelBook book = LevelBook.standard();

    /**
     * Margins are differences of the guaranteed levels of the data sheets, fan-outs quotients of their currents; the
     * TTL ones (10, 20, 5, 20) stand so in data books of the 74 series.
     */
    @ParameterizedTest
    @CsvSource({"74, 74, 0.4, 0.4, 10, 10", "74, 74LS, 0.4, 0.4, 20, 40", "74LS, 74, 0.7, 0.3, 10, 5",
        "74LS, 74LS, 0.7, 0.3, 20, 20", "74LS, 74HCT, 0.7, 0.3, , ", "74LS, 74HC@4.5V, -0.45, 0.85, , ",
        "74HC@4.5V, 74LS, 1.84, 0.47, 200, 10", "74HC@4.5V, 74HC@4.5V, 1.25, 1.25, , ",
        "Z80, 74LS, 0.4, 0.4, 12, 4", "6502, 74, 0.4, 0.4, 2, 1", "LVTTL, 74HC@5.5V, -1.45, 1.25, , ",
        "4000B@15V, 4000B@15V, 3.95, 3.95, , "})
    void of_familiesOfDataSheets_givesTheirMarginsAndFanOut(String from, String to, double high, double low,
            Integer fanOutHigh, Integer fanOutLow) {
        LogicLink link = link(from, to);
        assertEquals(high, link.marginHigh());
        assertEquals(low, link.marginLow());
        if (fanOutHigh != null) {
            assertEquals(OptionalInt.of(fanOutHigh), link.fanOutHigh());
            assertEquals(OptionalInt.of(fanOutLow), link.fanOutLow());
        }
        assertEquals(high >= 0, link.works());
    }

    @Test
    void of_publishedLinks_agreesWithAllOfThem() throws IOException {
        for (Map<?, ?> r : reference("expected_link_results")) {
            LogicLink link = link(NAMES.get(r.get("from")), NAMES.get(r.get("to")));
            assertEquals(r.get("ok"), link.works(), r.toString());
            check(r.get("nm_high"), link.marginHigh(), r);
            check(r.get("nm_low"), link.marginLow(), r);
            check(r.get("fanout_high"), link.fanOutHigh().orElse(-1), r);
            check(r.get("fanout_low"), link.fanOutLow().orElse(-1), r);
            check(r.get("fanout"), link.fanOut().orElse(-1), r);
        }
    }

    @Test
    void levels_publishedTable_isOurs() throws IOException {
        for (String group : List.of("families", "chips")) {
            for (Map.Entry<?, ?> e : map(group).entrySet()) {
                if (NAMES.containsKey(e.getKey())) {
                    checkLevels(NAMES.get(e.getKey()), (Map<?, ?>) e.getValue());
                }
            }
        }
    }

    private void checkLevels(String name, Map<?, ?> r) {
        LogicLevels l = book.named(name).orElseThrow();
        Drive d = l.drive();
        check(r.get("vih_min"), l.vihMin(), name);
        check(r.get("vil_max"), l.vilMax(), name);
        check(r.get("iih"), l.iih(), name);
        check(r.get("iil"), -l.iil(), name);
        check(r.get("voh_min"), d.vohMin(), name);
        check(r.get("ioh"), -d.ioh(), name);
        check(r.get("vol_max"), d.volMax(), name);
        check(r.get("iol"), d.iol(), name);
        check(r.get("voh_min_loaded"), l.drives().get(l.drives().size() - 1).vohMin(), name);
        check(r.get("iol_loaded"), l.drives().get(l.drives().size() - 1).iol(), name);
        if (r.get("vcc") instanceof List<?> vcc && !name.equals("74HC@5.5V")) {
            check(vcc.get(0), l.supplyMin(), name);
            check(vcc.get(1), l.supply(), name);
            check(vcc.get(2), l.supplyMax(), name);
        }
    }

    @ParameterizedTest
    @CsvSource({"74LS00, 74LS", "SN74LS138N, 74LS", "7404, 74", "DM7404N, 74", "MC74HC00AN, 74HC", "74HCT245, 74HCT",
        "CD4011BE, 4000B", "HEF4069UBP, 4000B", "4040, 4000B", "Z80A-CPU, Z80", "Z84C0006PEC, ", "R6502AP, 6502",
        "W65C02S6TPG-14, ", "SN74LS245N, 74LS244", "DM74LS374, 74LS374",
        "SN7406N, 7406", "74HC244, 74HC", "74LS38, 74LS38", "7438, 7438", "2114L-2, 2114", "4116, 4116", "4164, ", "27C128, ", "74ALVC00, ", "LM358, ", "4k7, ",
        "4700, ", "BC548, "})
    void of_partsValue_isItsFamily(String value, String name) {
        assertEquals(name, book.of(value, Double.NaN, PartBook.standard()).map(LogicLevels::name).orElse(null));
    }

    @Test
    void of_supply_choosesTheFamilysLevelsThere() {
        assertEquals("74HC@6V", book.of("74HC00", 6, PartBook.standard()).orElseThrow().name());
        assertEquals("4000B@10V", book.of("CD4011BE", 10, PartBook.standard()).orElseThrow().name());
        assertEquals("74HC", book.of("74HC00", 3.3, PartBook.standard()).orElseThrow().name());
    }

    /**
     * The first from T. L. Floyd, Digital Fundamentals, example 15-6 (which prints 195 ohms); the others by the same
     * formulas with data-sheet currents: four outputs that leak 0.25 mA on three TTL inputs, two of 74LS on three.
     */
    @ParameterizedTest
    @CsvSource({"5, 2.4, 0.4, 30, 0, 0, 6.4, 194.9, Infinity", "5, 2.4, 0.4, 16, 1, 0.12, 4.8, 410.7, 2321.4",
        "5, 2.7, 0.5, 8, 0.2, 0.06, 1.2, 661.8, 8846.2"})
    void pullUp_currents_giveTheWindow(double vcc, double voh, double vol, double iol, double leak, double iih,
            double iil, double least, double greatest) {
        PullUp r = PullUp.of(vcc, voh, vol, iol / 1e3, leak / 1e3, iih / 1e3, iil / 1e3);
        assertEquals(least, r.least(), 0.05);
        assertEquals(greatest, r.greatest(), 0.05);
        assertTrue(r.possible());
    }

    /** An RC charge: 4.7 kilohms and 50 pF to 2.0 of 5 V, and from 10 to 90 %. */
    @Test
    void riseTime_pullUpOnAStrayCapacitance_isThatOfAnRc() {
        assertEquals(0.1200e-6, PullUp.riseTime(4700, 50e-12, 5, 2.0), 0.00005e-6);
        assertEquals(0.5163e-6, PullUp.riseTime10To90(4700, 50e-12), 0.00005e-6);
    }

    private LogicLink link(String from, String to) {
        return LogicLink.of(book.named(from).orElseThrow(), book.named(to).orElseThrow());
    }

    private static void check(Object expected, double actual, Object what) {
        if (expected != null) {
            assertEquals(((Number) expected).doubleValue(), actual, 1e-12, what.toString());
        }
    }

    private static Map<?, ?> map(String key) throws IOException {
        assumeTrue(Files.exists(REFERENCE), "no " + REFERENCE);
        return (Map<?, ?>) JSON.std.mapFrom(Files.newInputStream(REFERENCE)).get(key);
    }

    private static List<Map<?, ?>> reference(String key) throws IOException {
        assumeTrue(Files.exists(REFERENCE), "no " + REFERENCE);
        return ((List<?>) JSON.std.mapFrom(Files.newInputStream(REFERENCE)).get(key)).stream()
                .<Map<?, ?>>map(r -> (Map<?, ?>) r).toList();
    }
}
