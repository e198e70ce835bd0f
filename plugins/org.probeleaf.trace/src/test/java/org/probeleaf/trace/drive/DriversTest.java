// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.drive;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.trace.Boards;
import org.probeleaf.trace.follow.SignalNetwork;

class DriversTest {

    /** Parts with bars between; the net asked about is N1. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "IC1 74LS04 1=N2 2=N1 | IC2 74LS00 1=N1; PUSH_PULL; driven by IC1.2",
        "IC1 74LS244 18=N1 1=N3 | IC2 74LS244 16=N1 1=N4; THREE_STATE; driven by turns, three-state: IC1.18, IC2.16",
        "IC1 74LS374 2=N1 1=GND; PUSH_PULL; driven by IC1.2",
        "IC1 74LS374 2=N1 1=+5V; NONE_KNOWN; no pin is known to drive it",
        "IC1 Z80A 14=N1 | IC2 6116 9=N1; THREE_STATE; driven by turns, three-state: IC1.14, IC2.9",
        "IC1 74LS05 2=N1 | IC1B 74LS05 4=N1 | R1 4k7 1=N1 2=+5V; OPEN_COLLECTOR; 'pulled down by IC1.2, IC1B.4, "
                + "open collector; R1 (4.7 k\u03a9) pulls it up to +5V'",
        "IC1 74LS05 2=N1; OPEN_COLLECTOR; 'pulled down by IC1.2, open collector; nothing on the sheet pulls it up'",
        "Q1 BC548 :B=N2 :C=N1 :E=GND | R1 1k 1=+5V 2=N1; OPEN_COLLECTOR; 'pulled down by Q1.C, open collector; "
                + "R1 (1 k\u03a9) pulls it up to +5V'",
        "IC1 74LS04 1=N2 2=N1 | IC2 74LS04 1=N3 2=N1; CONTENTION; 'several outputs drive it at once: IC1.2, IC2.2; "
                + "check the sheet, or look for a level between low and high'",
        "IC1 74LS04 1=N2 2=N1 | IC2 74LS244 18=N1 1=N3; CONTENTION; 'several outputs drive it at once: IC1.2, IC2.18; "
                + "check the sheet, or look for a level between low and high'",
        "IC1 74LS04 1=N2 2=N1 3=N2 4=N1; PUSH_PULL; 'driven by IC1.2, IC1.4, which always say the same'",
        "J1 - 1=N1 | R1 10k 1=N1 2=GND; NONE_KNOWN; 'no pin is known to drive it; R1 (10 k\u03a9) pulls it down to GND'"})
    void of_outputsOnANet_namesWhatTheyAre(String parts, DriverKind kind, String reason) {
        SignalNetwork network = SignalNetwork.of(Boards.of(parts.split(" \\| ")), PartBook.standard());
        Drivers drivers = Drivers.of(network, "N1");
        assertEquals(kind, drivers.kind());
        assertEquals(reason, drivers.reason());
    }
}
