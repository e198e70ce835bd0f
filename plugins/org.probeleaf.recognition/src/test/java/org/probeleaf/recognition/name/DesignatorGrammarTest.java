// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.name;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Designators as ASME Y14.44-2008 forms them and practice bends them. */
class DesignatorGrammarTest {

    @ParameterizedTest
    @CsvSource({"R1,R1,", "IC3A,IC3,A", "U3:B,U3,B", "IC3/2,IC3,2", "U3.1,U3,1", "IC3-B,IC3,B", "TP12,TP12,",
            "5V_C4,5V_C4,", "VGA1,VGA1,", "R17A,R17,A", "IC1P,IC1,P"})
    void parse_designator_isTakenApart(String text, String ref, String unit) {
        DesignatorGrammar.Designator d = DesignatorGrammar.parse(text);

        assertNotNull(d, text);
        assertEquals(ref, d.ref());
        assertEquals(unit, d.unit());
    }

    @ParameterizedTest
    @ValueSource(strings = {"4K7", "2M2", "74LS32", "1N4148", "BC548", "100n", "GND", "+5V", "A-B", "D[0..7]", "12",
            "B12A1", "GPIO4", "MSS22D18"})
    void parse_valueTypeOrName_isNone(String text) {
        assertNull(DesignatorGrammar.parse(text), text);
    }

    @Test
    void parse_knownClassOfPart_isStrong() {
        assertTrue(DesignatorGrammar.parse("Q4").strong());
        assertFalse(DesignatorGrammar.parse("AUDIO1").strong());
    }
}
