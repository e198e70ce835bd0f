// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.round;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.probeleaf.job.ExampleJobCase;
import org.probeleaf.job.expectation.Expectation;
import org.probeleaf.job.mark.Board;
import org.probeleaf.job.mark.KeptBoardChange;
import org.probeleaf.schematic.board.BoardChange;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.place.Place;

/** A round of parts of the example, whose netlist its generator wrote. */
class ProbeRoundTest extends ExampleJobCase {

    private ProbeRound round(String ref) {
        return ProbeRound.of(job.state(), PartBook.standard(), ref).orElseThrow();
    }

    private RoundPin pin(String ref, String number) {
        return round(ref).pins().stream().filter(p -> number.equals(p.pin().number())).findFirst().orElseThrow();
    }

    @Test
    void of_aGateChip_goesRoundByNumber() {
        assertEquals(List.of("1", "2", "3", "4", "5", "6", "8", "9", "10", "11", "12", "13"),
                round("IC5").pins().stream().map(p -> p.pin().number()).toList());
        assertEquals("IC5", round("ic5").part().ref());
        assertTrue(ProbeRound.of(job.state(), PartBook.standard(), "IC99").isEmpty());
    }

    /** Levels of the 74LS series: data sheets of SN74LS32 (VIL 0.8 V, VIH 2.0 V, VOL 0.5 V, VOH 2.7 V). */
    @Test
    void should_ofLogicPins_areTheFamilysLevels() {
        assertEquals("input: low under 0.8 V, high over 2.0 V", pin("IC5", "9").should());
        assertEquals("output: low under 0.5 V, high over 2.7 V", pin("IC5", "8").should());
        assertEquals("74LS", pin("IC5", "8").expected());
    }

    @Test
    void should_ofSupplies_isTheirVoltage() {
        assertEquals("supply, 5 V", pin("IC1", "11").should());
        assertEquals("5V\u00b15%", pin("IC1", "11").expected());
        assertEquals("ground", pin("IC1", "29").should());
        for (ProbeRound r : List.of(round("IC5"), round("IC1"))) {
            r.pins().stream().filter(p -> !p.expected().isEmpty()).forEach(p -> Expectation.parse(p.expected()));
        }
    }

    @Test
    void should_ofAPinThatTheBookDoesNotKnow_saysNothing() {
        RoundPin resistor = round("R1").pins().get(0);
        assertEquals("", resistor.should());
        assertEquals("", resistor.expected());
    }

    @Test
    void lifted_pin_isSaidToBeAlone() throws IOException {
        job.changeBoard(List.of(KeptBoardChange.of(Board.THIS, new BoardChange.Lift(new Place.OfPin("IC5", "9")), true,
                "", later())));
        assertTrue(pin("IC5", "9").lifted());
        assertTrue(pin("IC5", "9").should().startsWith("lifted"));
        assertFalse(pin("IC5", "10").lifted());
        job.undo();
        assertFalse(pin("IC5", "9").lifted());
    }

    @Test
    void latest_ofSeveralReadings_isTheLastAtThePin() throws IOException {
        assertNull(pin("IC5", "9").latest());
        assertEquals("1", round("IC5").firstUnread().orElseThrow().pin().number());
        read("IC5.9", "3.9V", "74LS");
        read("IC5.9", "1.4V", "74LS");
        read("net:/RD", "4.1V", "74LS");
        assertEquals("1.4 V", pin("IC5", "9").latest().value().text());
        read("IC5.1", "0.2V", null);
        read("IC5.2", "0.2V", null);
        assertEquals("3", round("IC5").firstUnread().orElseThrow().pin().number());
    }

    private Offer offer(String place) {
        return Offer.at(job.state(), PartBook.standard(), Place.parse(place)).orElse(null);
    }

    @Test
    void offer_railThenFamily_saysWhy() {
        assertEquals(new Offer("5 V\u00b15%", "the net is named +5V"), offer("IC1.11"));
        assertEquals(new Offer("74LS", "IC5 is a 74LS32"), offer("IC5.8"));
        assertEquals(new Offer("74LS", "IC5 is a 74LS32"), offer("net:/INP"));
        assertNull(offer("net:GND"));
        assertNull(offer("IC99.1"));
    }
}
