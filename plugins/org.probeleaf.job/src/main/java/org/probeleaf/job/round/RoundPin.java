// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.round;

import org.probeleaf.job.mark.ReadingMark;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.partbook.PinDirection;
import org.probeleaf.schematic.place.Place;

/**
 * One pin of a probe round.
 *
 * @param place     the pin as a place
 * @param pin       the pin on the board
 * @param name      as printed, else as the part book has it, or null
 * @param direction which way it works
 * @param net       its net, or null
 * @param lifted    whether it is off its pad
 * @param should    what it should look like, in words; empty where nothing can be said
 * @param expected  the same as an expectation is typed ({@code "5V\u00b15%"}, {@code "74LS"}); empty where there is none
 * @param latest    the last reading at it, or null
 */
public record RoundPin(Place place, Pin pin, String name, PinDirection direction, Net net, boolean lifted, String should,
        String expected, ReadingMark latest) {
}
