// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.probeleaf.job.expectation.Expectation;
import org.probeleaf.job.expectation.Outcome;
import org.probeleaf.job.mark.Anchor;
import org.probeleaf.job.mark.NoteMark;
import org.probeleaf.job.mark.ReadingMark;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.workbench.look.Palette;

class CardTextTest {

    private static final Anchor HERE = new Anchor(1, new Point(10, 20));

    @Test
    void of_badReading_saysValuePlaceRemarkAndVerdict() {
        CardText card = CardText.of(ReadingMark.of(Place.parse("IC5.9"), HERE, "2.2V flat", "",
                Expectation.parse("5V\u00b110%"), Instant.EPOCH));
        assertEquals("2.2 V", card.head());
        assertEquals(List.of("IC5.9 flat"), card.body());
        assertEquals(Outcome.BAD, card.outcome());
        assertEquals(Palette.VERMILLION, card.colour());
    }

    @Test
    void of_longNote_isWrappedAndCut() {
        CardText card = CardText.of(NoteMark.of(Place.parse("IC5"), HERE, "word ".repeat(80), Instant.EPOCH));
        assertEquals(3, card.body().size());
        assertTrue(card.body().get(2).endsWith("\u2026"), "says that there is more");
    }
}
