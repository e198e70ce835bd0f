// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.partbook;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A section of a type of part whose pins work together: a gate, a flip-flop, one line of a buffer.
 *
 * @param name     the book's name for it; drawings may letter sections differently, so match them by pins
 * @param function what it does ({@code "NAND"}, {@code "DFF"})
 * @param inputs   numbers of the pins that its outputs follow
 * @param outputs  numbers of the pins it drives; of a transceiver, those of the other side
 * @param controls numbers of its other pins, by what they do ({@code "oe_n"})
 */
public record UnitType(String name, String function, List<String> inputs, List<String> outputs,
        Map<String, List<String>> controls) {

    public UnitType {
        inputs = List.copyOf(inputs);
        outputs = List.copyOf(outputs);
        controls = Map.copyOf(controls);
    }

    /** Whether a signal on one pin, an input or a control, works on another, an output. */
    public boolean passes(String from, String to) {
        boolean bothWays = "XCVR".equals(function);
        return outputs.contains(to) && reach().anyMatch(from::equals)
                || bothWays && inputs.contains(to) && outputs.contains(from);
    }

    private Stream<String> reach() {
        return Stream.concat(inputs.stream(), controls.entrySet().stream().filter(c -> !c.getKey().equals("rc"))
                .flatMap(c -> c.getValue().stream()));
    }
}
