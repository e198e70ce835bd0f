// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.expectation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.probeleaf.schematic.quantity.BenchValue;

class RailNameTest {

    /** Names as they are common on sheets. */
    @ParameterizedTest
    @CsvSource({"+5V,5", "5V,5", "+12V,12", "-12V,-12", "3V3,3.3", "+3V3,3.3", "3.3V,3.3", "+1.8V,1.8", "1V2,1.2", "-5,-5", "+5,5",
        "VCC_3V3,3.3", "VDD5V,5", "+5VA,5", "+5V_USB,5", "+24V,24", "V+5V,5"})
    void expectation_railWithAVoltage_fivePerCentEitherSide(String net, double volts) {
        Tolerance read = (Tolerance) RailName.expectation(net).orElseThrow();
        assertEquals(volts, read.nominal().value(), 1e-12);
        assertEquals(Math.abs(volts) * 0.05, read.margin(), 1e-12);
        assertEquals(read, Expectation.parse(read.text()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"GND", "VCC", "VDD", "/RD", "D5", "A15", "0V", "5", "CLK_3", "N1", "", "IO5V1X2", "V1"})
    void expectation_otherName_nothing(String net) {
        assertEquals(Optional.empty(), RailName.expectation(net));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"good 4.1V|4.1|0.41|known good 4.1V\u00b110%", "known good 4.1V\u00b10.2V|4.1|0.2|known good 4.1V\u00b10.2V",
        "Good: 500kHz +-1%|5e5|5e3|known good 500kHz\u00b11%", "good H|1|0|known good H"})
    void parse_knownGood_itsTolerance(String text, double nominal, double margin, String shown) {
        Tolerance read = (Tolerance) Expectation.parse(text);
        assertEquals(nominal, read.nominal().value(), 1e-9);
        assertEquals(margin, read.margin(), 1e-9);
        assertEquals(shown, read.text());
        assertEquals(read, Expectation.parse(shown));
        assertEquals(Outcome.GOOD, read.judge(BenchValue.parse(text.replaceFirst("(?i).*good:? ", "").replaceFirst("[\u00b1 +].*", ""))
                .quantity()).outcome());
    }
}
