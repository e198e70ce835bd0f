// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.probeleaf.example.tl8.ink.Typeface;
import org.probeleaf.example.tl8.symbol.Passives;

class DrawingRulesTest {
    private final Page page = new Page(1, 100, 100);

    @Test
    void faults_cleanDrawing_none() {
        page.part("R1", "1k", Passives.resistor(), 20, 20);
        page.part("R2", "1k", Passives.resistor(), 50, 20);
        page.wire(30, 20).toX(50).done();
        page.label("OUT", 36, 20);
        assertEquals(List.of(), faults());
    }

    @Test
    void faults_wireThatEndsInNothing_named() {
        page.part("R1", "1k", Passives.resistor(), 20, 20);
        page.wire(30, 20).toX(50).done();
        checkOneFault("a wire ends in nothing");
    }

    @Test
    void faults_wireOverASymbol_named() {
        page.part("R1", "1k", Passives.resistor(), 20, 20);
        page.wire(25, 10).toY(40).done();
        page.label("OVER", 25, 35);
        checkOneFault("a wire runs over R1");
    }

    @Test
    void faults_wireAlongAWire_named() {
        page.wire(20, 20).toX(40).done();
        page.wire(39, 20).toX(50).done();
        page.label("TWICE", 24, 20);
        page.label("TWICE", 42, 20);
        checkOneFault("a wire runs along a wire");
    }

    @Test
    void faults_twoNamesOnOneNet_named() {
        page.part("R1", "1k", Passives.resistor(), 20, 20);
        page.wire(30, 20).toX(50).done();
        page.label("IN", 33, 20);
        page.label("OUT", 40, 20);
        checkOneFault("one net bears several names");
    }

    @Test
    void faults_lettersOnALine_named() {
        page.part("R1", "1k", Passives.resistor(), 20, 20);
        page.note("across", 18, 20.4, 6);
        checkOneFault("\"across\" touches a line");
    }

    @Test
    void faults_nameBesideItsWire_named() {
        page.part("R1", "1k", Passives.resistor(), 20, 20);
        page.label("LOST", 60, 60);
        checkOneFault("the name LOST is on no wire");
    }

    private List<String> faults() {
        return DrawingRules.faults(List.of(page), Typeface.load());
    }

    private void checkOneFault(String words) {
        List<String> faults = faults();
        assertTrue(faults.stream().anyMatch(f -> f.contains(words)), () -> "not found in " + faults);
        assertTrue(faults.stream().allMatch(f -> f.contains(words)), () -> "more than that in " + faults);
    }
}
