// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.score;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;

/**
 * What a reading says, as far as it is counted.
 *
 * @param refs designators of the parts found
 * @param pins pins that are on a net
 */
record ReadPins(Set<String> refs, List<ReadPin> pins) {

    /**
     * A pin on a net; number and name may be null.
     *
     * @param pin as read
     */
    record ReadPin(String ref, String number, String name, String net, Pin pin) {
    }

    private record Once(String ref, String number, String net) {
    }

    /** Leaves out what the truth says is not to be counted. */
    static ReadPins of(Netlist netlist, Truth truth) {
        Set<String> refs = new LinkedHashSet<>();
        List<ReadPin> pins = new ArrayList<>();
        Set<Once> seen = new HashSet<>();
        for (Part part : netlist.parts()) {
            String printed = Spelling.ref(part.ref());
            String ref = Spelling.part(truth.spelt().getOrDefault(printed, printed), truth.refs());
            if (truth.ignored().contains(ref)) {
                continue;
            }
            refs.add(ref);
            for (Pin pin : part.pins()) {
                String read = Spelling.pin(pin.number());
                String number = truth.alias().getOrDefault(new Truth.PinKey(ref, read), read);
                boolean counted = pin.net() != null && !pin.implied()
                        && !truth.hidden().contains(new Truth.PinKey(ref, number));
                if (counted && (number == null || seen.add(new Once(ref, number, pin.net())))) {
                    pins.add(new ReadPin(ref, number, Spelling.pin(pin.name()), pin.net(), pin));
                }
            }
        }
        return new ReadPins(refs, pins);
    }
}
