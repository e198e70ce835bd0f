// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.expectation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.probeleaf.schematic.quantity.BenchValue;
import org.probeleaf.schematic.quantity.Quantity;
import org.probeleaf.schematic.quantity.QuantityKind;

class ExpectationTest {

    private static Verdict judge(String expectation, String value) {
        Expectation e = Expectation.parse(expectation);
        return e.judge(BenchValue.parse(value, e.kind()).quantity());
    }

    @ParameterizedTest
    @CsvSource({"5V±5%,5.03,GOOD", "5V±5%,5.25,GOOD", "5V±5%,4.75V,GOOD", "5V±5%,4.7,BAD", "5V+-5%,5.3,BAD",
        "5V+/-250mV,5.2,GOOD", "5V±0.1,5.2,BAD", "-5V±10%,-5.4,GOOD", "-5V±10%,-5.6,BAD", "3k3±100,3.39k,GOOD",
        "3k3±5%,4k7,BAD", "4.75..5.25V,5,GOOD", "4.75V..5.25V,5.3V,BAD", "1k..2k,1.5k,GOOD", "0..2k,1.5k,GOOD",
        "1MHz..2MHz,1.5M,GOOD", "5V±5%,3.3kHz,UNSURE", "5V±5%,open,UNSURE", "H,L,BAD", "H,high,GOOD",
        "open,short,BAD", "5V±5%,12Vac,UNSURE", "5±0.1,5.05V,GOOD"})
    void judge_value_outcome(String expectation, String value, Outcome outcome) {
        assertEquals(outcome, judge(expectation, value).outcome(), expectation + " " + value);
    }

    /**
     * Zones of a TTL-level input net: up to V_OL low, to V_IL weak low, to V_IH neither, to V_OH weak high, above high.
     * Limits of 74LS from its data sheets (V_IL 0.8, V_IH 2.0, V_OL 0.5 at 8 mA, V_OH 2.7), of 74HC at 4.5 V from
     * JESD7A (1.35, 3.15), of the 4000B series at 5 V from JESD13-B (1.5, 3.5).
     */
    @ParameterizedTest
    @CsvSource({"74LS,0.2,GOOD", "74LS,0.7,UNSURE", "74LS,1.4,BAD", "74LS,2.2,UNSURE", "74LS,3.4,GOOD",
        "74LS,5.4,GOOD", "74LS,6.2,BAD", "74LS,-0.8,BAD", "ls,H,GOOD", "TTL,2.4,GOOD", "74HC@4.5V,1.3,UNSURE",
        "74HC@4.5V,1.4,BAD", "74HC@4.5V,4.45,GOOD", "hc,4.95,GOOD", "4000B,3.4,BAD", "4000B,3.6,UNSURE",
        "74LS,1kHz,UNSURE"})
    void judge_logicFamily_zones(String family, String value, Outcome outcome) {
        assertEquals(outcome, judge(family, value).outcome(), family + " " + value);
    }

    @Test
    void judge_bad_reasonNamesValueAndLimit() {
        assertEquals("4.2 V is below 4.75 V", judge("5V±5%", "4.2").reason());
        assertEquals("1.4 V is neither low nor high for 74LS (between 800 mV and 2 V)",
                judge("74LS", "1.4").reason());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "5V", "five", "5V±", "±5%", "..5", "2V..1V", "1..2k", "5V±3Hz", "H±5%", "5V±5% ok",
        "74XYZ", "1V..2Hz", "H..L"})
    void parse_noExpectation_refusedWithASentence(String text) {
        IllegalArgumentException e = assertThrows(IllegalArgumentException.class, () -> Expectation.parse(text));
        assertTrue(e.getMessage().length() > 20, e.getMessage());
    }

    @Test
    void text_ofEachSort_readsBackTheSame() {
        for (String text : new String[] {"5V±5%", "4.75V..5.25V", "74LS", "74HC@4.5V", "H"}) {
            Expectation e = Expectation.parse(text);
            assertEquals(e, Expectation.parse(e.text()));
        }
    }

    @Test
    void known_everyFamily_levelsInOrder() {
        for (LogicFamily f : LogicFamily.known()) {
            assertTrue(f.volMax() <= f.vilMax() && f.vilMax() < f.vihMin() && f.vihMin() <= f.vohMin()
                    && f.vohMin() < f.supply(), f.name());
            assertEquals(f, LogicFamily.named(f.name()).orElseThrow());
        }
        assertEquals(Quantity.of(QuantityKind.NUMBER, 5),
                ((Tolerance) Expectation.parse("5±0.1")).nominal());
    }
}
