// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.mark;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.place.Place;

class ReadingMarkTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"4.00 MHz|4.00 MHz", "5.030V|5.030 V", "5,0|5.0", "11.8V|11.8 V", "3k3|3.3 kΩ",
        "0.0120V|12 mV", "H|high", "1.50k flat|1500", "-12.0V|-12.0 V", "100nF|100 nF"})
    void shown_typedDigits_kept(String typed, String shown) {
        assertEquals(shown, ReadingMark.of(Place.parse("IC1.2"), new Anchor(1, new Point(0, 0)), typed, "", null,
                Instant.EPOCH).shown());
    }
}
