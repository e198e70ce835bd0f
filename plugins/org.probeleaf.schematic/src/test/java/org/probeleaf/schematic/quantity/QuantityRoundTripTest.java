// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class QuantityRoundTripTest {

    @Property
    void text_anyQuantity_readsBackTheSame(@ForAll("quantities") Quantity quantity) {
        BenchValue read = BenchValue.parse(quantity.text());
        assertEquals(quantity, read.quantity(), quantity.text());
        assertEquals("", read.remark());
    }

    @Property
    void text_anyQuantityWithRemark_keepsBoth(@ForAll("quantities") Quantity quantity) {
        BenchValue read = BenchValue.parse(quantity.text() + " flat");
        assertEquals(quantity, read.quantity(), quantity.text());
        assertEquals("flat", read.remark());
    }

    @Property
    void parse_anyText_valueOrRefusal(@ForAll String text) {
        try {
            BenchValue read = BenchValue.parse(text);
            assertEquals(read.quantity(), BenchValue.parse(read.quantity().text()).quantity());
        } catch (IllegalArgumentException e) {
            assertEquals(false, e.getMessage().isBlank());
        }
    }

    @Provide
    Arbitrary<Quantity> quantities() {
        Arbitrary<Double> bench = Arbitraries.doubles().between(-1e6, 1e6).ofScale(4);
        Arbitrary<Double> any = Arbitraries.doubles().between(-1e300, 1e300);
        Arbitrary<Double> small = Arbitraries.doubles().between(1e-15, 1e-3).ofScale(20);
        Arbitrary<Double> measure = Arbitraries.oneOf(bench, any, small);
        return Arbitraries.of(QuantityKind.class).flatMap(kind -> kind.isState()
                ? Arbitraries.of(0.0, 1.0).map(v -> Quantity.of(kind, v))
                : measure.map(v -> Quantity.of(kind, v)));
    }
}
