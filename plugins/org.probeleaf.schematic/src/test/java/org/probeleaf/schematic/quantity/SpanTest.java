// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Arbitrary;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SpanTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "4.7-5.1V|VOLTAGE_DC|4.7|5.1|''",
        "4.7V-5.1V|VOLTAGE_DC|4.7|5.1|''",
        "4.7V - 5.1|VOLTAGE_DC|4.7|5.1|''",
        "4.7..5.1V unsteady|VOLTAGE_DC|4.7|5.1|unsteady",
        "4.7 to 5.1 V|VOLTAGE_DC|4.7|5.1|''",
        "4.7\u20135.1V|VOLTAGE_DC|4.7|5.1|''",
        "~4.7-5.1V|VOLTAGE_DC|4.7|5.1|''",
        "5.1-4.7 V|VOLTAGE_DC|4.7|5.1|''",
        "-5.1..-4.9V|VOLTAGE_DC|-5.1|-4.9|''",
        "-5--4|NUMBER|-5|-4|''",
        "100-240V AC|VOLTAGE_AC|100|240|''",
        "20-30 mVpp|VOLTAGE_PP|0.02|0.03|''",
        "49-51Hz|FREQUENCY|49|51|''",
        "3V3-3V6|VOLTAGE_DC|3.3|3.6|''",
        "1k-1k2|RESISTANCE|1000|1200|''"})
    void of_twoEnds_bothWithTheUnit(String text, QuantityKind kind, double low, double high, String remark) {
        Span span = Span.of(text).orElseThrow();
        assertEquals(kind, span.low().kind());
        assertEquals(kind, span.high().kind());
        assertEquals(low, span.low().value(), Math.abs(low) * 1e-12);
        assertEquals(high, span.high().value(), Math.abs(high) * 1e-12);
        assertEquals(remark, span.remark());
    }

    @ParameterizedTest
    @ValueSource(strings = {"5V", "-5V", "1e-3", "5V 3-4 times", "470R-5%", "2.4 V p-p", "H", "12V to GND", "5V to 3mA",
        "2026-11-27", "", "hi-z", "short to 5V", "4..5..6"})
    void of_anythingElse_nothing(String text) {
        assertEquals(Optional.empty(), Span.of(text));
    }

    @Property
    void text_anySpan_readsBackTheSame(@ForAll("spans") Span span) {
        assertEquals(Optional.of(span), Span.of(span.text()));
    }

    @Provide
    Arbitrary<Span> spans() {
        Arbitrary<Double> ends = Arbitraries.doubles().between(-1e5, 1e5).ofScale(4);
        Arbitrary<QuantityKind> kinds = Arbitraries.of(QuantityKind.VOLTAGE_DC, QuantityKind.VOLTAGE_AC, QuantityKind.FREQUENCY,
                QuantityKind.RESISTANCE, QuantityKind.CURRENT, QuantityKind.TEMPERATURE);
        return kinds.flatMap(kind -> ends.flatMap(a -> ends.map(b -> new Span(Quantity.of(kind, Math.min(a, b)),
                Quantity.of(kind, Math.max(a, b)), ""))));
    }
}
