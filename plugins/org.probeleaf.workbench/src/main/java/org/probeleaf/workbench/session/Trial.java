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

import org.probeleaf.job.Boards;
import org.probeleaf.job.SheetReading;
import org.probeleaf.recognition.correction.Corrected;
import org.probeleaf.recognition.correction.Correction;
import org.probeleaf.recognition.correction.Outcome;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.trace.board.BoardState;
import org.probeleaf.trace.board.ChangeOutcome;

/**
 * What a deed would do.
 *
 * @param holds   whether it can be done
 * @param already whether it is so already
 * @param why     what is to be said of it, one sentence without its full stop; empty where there is nothing to say
 * @param netlist what would be connected
 * @param changed the nets that would be others
 */
public record Trial(boolean holds, boolean already, String why, Netlist netlist, List<Net> changed) {

    private static final int MOST_NAMED = 4;

    public Trial {
        changed = List.copyOf(changed);
    }

    static Trial of(SheetReading reading, Correction correction) {
        Corrected corrected = reading.tried(correction);
        Outcome outcome = corrected.last();
        return new Trial(outcome.holds(), outcome.state() == Outcome.State.ALREADY, outcome.why(), corrected.netlist(),
                changed(reading.netlist(), corrected.netlist()));
    }

    static Trial of(Boards boards, Deed.OnBoard deed) {
        BoardState tried = boards.tried(deed.board(), deed.change());
        ChangeOutcome outcome = tried.outcomes().get(tried.outcomes().size() - 1);
        return new Trial(outcome.done(), false, outcome.text(), tried.netlist(),
                changed(boards.state(deed.board()).netlist(), tried.netlist()));
    }

    /** Whether it would change anything. */
    public boolean works() {
        return holds && !already;
    }

    private static List<Net> changed(Netlist from, Netlist to) {
        Set<Net> before = new HashSet<>(from.nets());
        Map<String, Long> pinsBefore = pins(from);
        Map<String, Long> pinsAfter = pins(to);
        return to.nets().stream().filter(n -> !before.contains(n)
                || !Objects.equals(pinsBefore.get(n.id()), pinsAfter.get(n.id()))).toList();
    }

    private static Map<String, Long> pins(Netlist netlist) {
        return netlist.parts().stream().flatMap(p -> p.pins().stream()).filter(p -> p.net() != null)
                .collect(Collectors.groupingBy(Pin::net, Collectors.counting()));
    }

    /** In a few words for a person. */
    public String words() {
        if (!works()) {
            return why.isEmpty() ? "" : why.substring(0, 1).toUpperCase(Locale.ROOT) + why.substring(1) + ".";
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
