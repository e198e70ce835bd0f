// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.junit.jupiter.api.Test;

class BenchValueTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "5.03|NUMBER|5.03|''",
        "5,03|NUMBER|5.03|''",
        "-5|NUMBER|-5|''",
        "−5|NUMBER|-5|''",
        ".5|NUMBER|0.5|''",
        "1e-3|NUMBER|0.001|''",
        "1.2M|NUMBER|1.2e6|''",
        "100n|NUMBER|1e-7|''",
        "2.2meg|NUMBER|2.2e6|''",
        "2.2 meg|NUMBER|2.2e6|''",
        "4.7 k|NUMBER|4700|''",
        "11.8V|VOLTAGE_DC|11.8|''",
        "11.8 v|VOLTAGE_DC|11.8|''",
        "12mV|VOLTAGE_DC|0.012|''",
        "2.2V flat|VOLTAGE_DC|2.2|flat",
        "2.2V, flat|VOLTAGE_DC|2.2|flat",
        "5V 3 times|VOLTAGE_DC|5|3 times",
        "5.03 a bit noisy|NUMBER|5.03|a bit noisy",
        "12Vac|VOLTAGE_AC|12|''",
        "12 V AC|VOLTAGE_AC|12|''",
        "230V~|VOLTAGE_AC|230|''",
        "12V DC|VOLTAGE_DC|12|''",
        "2.4Vpp|VOLTAGE_PP|2.4|''",
        "2.4 V p-p|VOLTAGE_PP|2.4|''",
        "300 mVrms|VOLTAGE_AC|0.3|''",
        "0V6|VOLTAGE_DC|0.6|''",
        "3V3 rail|VOLTAGE_DC|3.3|rail",
        "1A5|CURRENT|1.5|''",
        "20mA|CURRENT|0.02|''",
        "1.5 MHz|FREQUENCY|1.5e6|''",
        "1.5mhz|FREQUENCY|1.5e6|''",
        "3k3Hz|FREQUENCY|3300|''",
        "470 ohm|RESISTANCE|470|''",
        "470R|RESISTANCE|470|''",
        "10kΩ|RESISTANCE|10000|''",
        "1.2 Mohm|RESISTANCE|1.2e6|''",
        "100 nF|CAPACITANCE|1e-7|''",
        "4.7µF|CAPACITANCE|4.7e-6|''",
        "4.7μF|CAPACITANCE|4.7e-6|''",
        "47 mfd|CAPACITANCE|47e-6|''",
        "12 us|TIME|12e-6|''",
        "45°C|TEMPERATURE|45|''",
        "45 C|TEMPERATURE|45|''",
        "212°F|TEMPERATURE|100|''",
        "H|LOGIC|1|''",
        "L|LOGIC|0|''",
        "high pulsing|LOGIC|1|pulsing",
        "low|LOGIC|0|''",
        "open|CONTINUITY|0|''",
        "short to GND|CONTINUITY|1|to GND",
        "cont|CONTINUITY|1|''",
        "OL|CONTINUITY|0|''"})
    void parse_benchText_valueKindAndRemark(String text, QuantityKind kind, double value, String remark) {
        BenchValue read = BenchValue.parse(text);
        assertEquals(kind, read.quantity().kind(), text);
        assertEquals(value, read.quantity().value(), Math.abs(value) * 1e-15, text);
        assertEquals(remark, read.remark());
    }

    /** Common practice of meters, logic probes and bench notes; no standard says how people write these. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "0.6 diode|DIODE_DROP|0.6|''",
        "0.6V diode D3|DIODE_DROP|0.6|D3",
        "583 diode|DIODE_DROP|0.583|''",
        "diode 0.583|DIODE_DROP|0.583|''",
        "Vf: 1.8|DIODE_DROP|1.8|''",
        "0.583 Vf|DIODE_DROP|0.583|''",
        "11.4V diode anode|VOLTAGE_DC|11.4|diode anode",
        "ESR 0.8|ESR|0.8|''",
        "0.8 ohm ESR|ESR|0.8|''",
        "1R2 ESR warm|ESR|1.2|warm",
        "4700µF ESR 0.05|CAPACITANCE|0.0047|ESR 0.05",
        "1.7Vpk|VOLTAGE_PEAK|1.7|''",
        "2.4 V peak|VOLTAGE_PEAK|2.4|''",
        "30 mV pk-pk|VOLTAGE_PP|0.03|''",
        "2 V peak to peak|VOLTAGE_PP|2|''",
        "10k ohm|RESISTANCE|10000|''",
        "10k a bit off|NUMBER|10000|a bit off",
        "45 degrees|TEMPERATURE|45|''",
        "toggling|ACTIVITY|1|''",
        "pulsing at 2 Hz|ACTIVITY|1|at 2 Hz",
        "square wave|ACTIVITY|1|''",
        "no signal|ACTIVITY|0|''",
        "dead|ACTIVITY|0|''",
        "stuck high|LOGIC|1|stuck",
        "stuck at low warm|LOGIC|0|stuck warm",
        "no beep|CONTINUITY|0|''",
        "short circuit to case|CONTINUITY|1|to case",
        "∞|CONTINUITY|0|''",
        "0L|CONTINUITY|0|''",
        ".OL|CONTINUITY|0|''",
        "0.L|CONTINUITY|0|''",
        "5V?|VOLTAGE_DC|5|?",
        "5.03V.|VOLTAGE_DC|5.03|''",
        "50% duty|NUMBER|50|% duty",
        ">20M|NUMBER|2e7|''",
        "~2.5V|VOLTAGE_DC|2.5|''",
        "2V8|VOLTAGE_DC|2.8|''",
        "23.5C|TEMPERATURE|23.5|''"})
    void parse_notationOfMetersAndProbes_valueKindAndRemark(String text, QuantityKind kind, double value, String remark) {
        parse_benchText_valueKindAndRemark(text, kind, value, remark);
    }

    /** Letter codes of IEC 60062:2016, clause 4 (RKM), with the values that the code defines. */
    @ParameterizedTest
    @CsvSource({"R47,0.47", "4R7,4.7", "470R,470", "4K7,4700", "47K3,47300", "4M7,4.7e6", "4k7,4700", "0R1,0.1",
        "1R0,1", "1M0,1e6", "10L0,0.01", "4K7J,4700", "100RF,100", "R22M,0.22"})
    void parse_resistanceLetterCode_ohms(String code, double ohms) {
        Quantity read = BenchValue.parse(code).quantity();
        assertEquals(QuantityKind.RESISTANCE, read.kind());
        assertEquals(ohms, read.value(), ohms * 1e-15);
    }

    /** Letter codes of IEC 60062:2016 for capacitances. */
    @ParameterizedTest
    @CsvSource({"p47,4.7e-13", "4p7,4.7e-12", "2n2,2.2e-9", "4u7,4.7e-6", "4µ7,4.7e-6"})
    void parse_capacitanceLetterCode_farads(String code, double farads) {
        Quantity read = BenchValue.parse(code).quantity();
        assertEquals(QuantityKind.CAPACITANCE, read.kind());
        assertEquals(farads, read.value(), farads * 1e-15);
    }

    @Test
    void parse_toleranceLetter_standsInTheRemark() {
        assertEquals("±5%", BenchValue.parse("4K7J").remark());
        assertEquals("±20% old", BenchValue.parse("R22M old").remark());
    }

    @ParameterizedTest
    @CsvSource({"1.2M,FREQUENCY,1.2e6", "5.03,VOLTAGE_DC,5.03", "5.03 V,VOLTAGE_AC,5.03", "3k3,FREQUENCY,3300",
        "100n,CAPACITANCE,1e-7", "1,LOGIC,1", "22,TEMPERATURE,22", "10m,CURRENT,0.01"})
    void parse_kindKnown_bareNumberIsOfThatKind(String text, QuantityKind kind, double value) {
        Quantity read = BenchValue.parse(text, kind).quantity();
        assertEquals(kind, read.kind());
        assertEquals(value, read.value(), Math.abs(value) * 1e-15);
    }

    @ParameterizedTest
    @CsvSource({"3.3kHz,VOLTAGE_DC,FREQUENCY", "H,VOLTAGE_DC,LOGIC", "4R7,VOLTAGE_DC,RESISTANCE",
        "12Vac,VOLTAGE_DC,VOLTAGE_AC", "5V,RESISTANCE,VOLTAGE_DC"})
    void parse_textSaysAnotherKind_textCounts(String text, QuantityKind expected, QuantityKind said) {
        assertEquals(said, BenchValue.parse(text, expected).quantity().kind());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "  ", "volts", "V5x", "5.0.3", "1,000.5", "5 3", "5xyz", "--5", "4·7", "1e999", "hello",
        "5V3x", "5,5,5", "5V7,3", "hi-z", "ESR", "diode", "no idea", "stuck", "4.7-5.1V"})
    void parse_noValue_refusedWithASentence(String text) {
        IllegalArgumentException e = assertThrows(IllegalArgumentException.class, () -> BenchValue.parse(text));
        assertTrue(e.getMessage().length() > 20, e.getMessage());
    }

    @ParameterizedTest
    @CsvSource({"5,LOGIC", "0.3,CONTINUITY"})
    void parse_numberForAState_refused(String text, QuantityKind kind) {
        assertThrows(IllegalArgumentException.class, () -> BenchValue.parse(text, kind));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"VOLTAGE_DC|11.8|11.8 V", "VOLTAGE_DC|-0.012|-12 mV", "RESISTANCE|3300|3.3 kΩ",
        "CAPACITANCE|1e-7|100 nF", "CAPACITANCE|0.0047|4700 µF", "FREQUENCY|1.5e6|1.5 MHz", "NUMBER|1.2e6|1.2M",
        "NUMBER|5030|5030", "LOGIC|1|high", "CONTINUITY|0|open", "TEMPERATURE|21.5|21.5 °C", "VOLTAGE_AC|230|230 V AC",
        "VOLTAGE_PP|2.4|2.4 Vpp", "VOLTAGE_DC|0|0 V", "RESISTANCE|999.9|999.9 Ω", "CURRENT|0.0000123|12.3 µA"})
    void text_value_asPeopleWriteIt(QuantityKind kind, double value, String text) {
        assertEquals(text, Quantity.of(kind, value).text());
    }
}
