// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.drive;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.partbook.LevelBook;
import org.probeleaf.schematic.partbook.LogicLevels;
import org.probeleaf.schematic.partbook.PinDirection;
import org.probeleaf.trace.TracedPin;
import org.probeleaf.trace.follow.NetKind;
import org.probeleaf.trace.follow.SignalNetwork;

/**
 * What a pin's part takes for low and high.
 *
 * @param pin    the pin
 * @param levels of its family or chip
 */
public record PinLevels(TracedPin pin, LogicLevels levels) {

    /** The levels of a pin's part at its supply, as far as its drawn supply pins tell it. */
    public static Optional<LogicLevels> of(SignalNetwork network, TracedPin pin, LevelBook book) {
        double supply = Double.NaN;
        for (Pin p : pin.part().pins()) {
            if (p.net() != null && network.kind(p.net()) == NetKind.SUPPLY
                    && network.book().direction(pin.part(), p) == PinDirection.POWER) {
                supply = Pull.volts(network.net(p.net()).name());
            }
        }
        return book.of(pin.part().value(), supply, network.book());
    }

    /** The inputs on a net whose levels are known, in the order of the net's pins. */
    public static List<PinLevels> inputsOn(SignalNetwork network, String netId, LevelBook book) {
        List<PinLevels> inputs = new ArrayList<>();
        for (TracedPin pin : network.signals().pinsOn(netId)) {
            if (pin.direction() == PinDirection.IN || pin.direction() == PinDirection.BIDIR) {
                of(network, pin, book).ifPresent(l -> inputs.add(new PinLevels(pin, l)));
            }
        }
        return inputs;
    }
}
