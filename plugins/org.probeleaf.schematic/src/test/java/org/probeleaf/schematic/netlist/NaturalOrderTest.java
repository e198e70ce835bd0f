// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.netlist;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NaturalOrderTest {

    @ParameterizedTest
    @CsvSource({"R2, R10, -1", "R10, R10, 0", "R10, R9, 1", "IC1A, IC1B, -1", "ic2, IC10, -1", "IC2, ic2, -1", "R, R1, -1",
        "A1B2, A1B10, -1", "007, 7, -1", "1234567890123456789012, 1234567890123456789013, -1", "R1, , -1", ", R1, 1"})
    void compare_designators_areInTheOrderOfPeople(String a, String b, int sign) {
        assertEquals(sign, Integer.signum(NaturalOrder.INSTANCE.compare(a, b)));
        assertEquals(-sign, Integer.signum(NaturalOrder.INSTANCE.compare(b, a)));
    }

    @Property
    void compare_anyTexts_areInOneOrder(@ForAll @Chars({'R', 'r', 'C', '1', '2', '0', '-'}) @StringLength(max = 6) String a,
            @ForAll @Chars({'R', 'r', 'C', '1', '2', '0', '-'}) @StringLength(max = 6) String b,
            @ForAll @Chars({'R', 'r', 'C', '1', '2', '0', '-'}) @StringLength(max = 6) String c) {
        List<String> sorted = List.of(a, b, c).stream().sorted(NaturalOrder.INSTANCE).toList();
        assertEquals(true, NaturalOrder.INSTANCE.compare(sorted.get(0), sorted.get(2)) <= 0);
        assertEquals(a.equals(b), NaturalOrder.INSTANCE.compare(a, b) == 0);
    }
}
