// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.session;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

import org.probeleaf.job.SheetReading;
import org.probeleaf.recognition.correction.Corrected;
import org.probeleaf.recognition.correction.Correction;
import org.probeleaf.recognition.correction.Outcome;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Pin;

/**
 * What a correction would do.
 *
 * @param correction the correction
 * @param outcome    what would become of it
 * @param netlist    the netlist with it
 * @param changed    the nets that would be others
 */
public record Trial(Correction correction, Outcome outcome, Netlist netlist, List<Net> changed) {

    private static final int MOST_NAMED = 4;

    public Trial {
        changed = List.copyOf(changed);
    }

    static Trial of(SheetReading reading, Correction correction) {
        Corrected corrected = reading.tried(correction);
        Set<Net> before = new HashSet<>(reading.netlist().nets());
        Map<String, Long> pinsBefore = pins(reading.netlist());
        Map<String, Long> pinsAfter = pins(corrected.netlist());
        List<Net> changed = corrected.netlist().nets().stream().filter(n -> !before.contains(n)
                || !Objects.equals(pinsBefore.get(n.id()), pinsAfter.get(n.id()))).toList();
        return new Trial(correction, corrected.last(), corrected.netlist(), changed);
    }

    private static Map<String, Long> pins(Netlist netlist) {
        return netlist.parts().stream().flatMap(p -> p.pins().stream()).filter(p -> p.net() != null)
                .collect(Collectors.groupingBy(Pin::net, Collectors.counting()));
    }

    /** In a few words for a person. */
    public String words() {
        String why = outcome.why().isEmpty() ? "" : outcome.why().substring(0, 1).toUpperCase(Locale.ROOT)
                + outcome.why().substring(1) + ".";
        if (!outcome.holds() || outcome.state() == Outcome.State.ALREADY) {
            return why;
        }
        Map<String, Long> pins = pins(netlist);
        String nets = changed.stream().limit(MOST_NAMED).map(n -> n.title() + " with "
                + count(pins.getOrDefault(n.id(), 0L))).collect(Collectors.joining(", "));
        return nets.isEmpty() ? "" : "Gives " + nets
                + (changed.size() > MOST_NAMED ? " and " + (changed.size() - MOST_NAMED) + " more" : "") + ".";
    }

    private static String count(long pins) {
        return pins + (pins == 1 ? " pin" : " pins");
    }
}
