// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.answer;

import java.io.PrintStream;
import java.util.List;
import java.util.stream.Collectors;

import org.probeleaf.schematic.partbook.PinDirection;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.trace.NetTrace;
import org.probeleaf.trace.SignalPath;
import org.probeleaf.trace.TracedPin;

/** The answer of {@code trace} for people. */
public final class TraceText {

    private TraceText() {
    }

    /** The net, then its pins: what drives it, what listens, what does both, the rest. */
    public static void write(PrintStream out, NetTrace trace) {
        String id = trace.net().name() == null ? "" : " (" + trace.net().id() + ")";
        out.println(trace.net().title() + id + " on " + Words.sheets(trace.net().pages()) + ", "
                + Words.count(trace.pins().size(), "pin") + " in all:");
        for (PinDirection direction : List.of(PinDirection.OUT, PinDirection.IN, PinDirection.BIDIR,
                PinDirection.PASSIVE, PinDirection.POWER, PinDirection.UNKNOWN)) {
            List<TracedPin> pins = trace.going(direction);
            if (!pins.isEmpty()) {
                out.println("  " + head(direction));
                pins.forEach(p -> out.println(line(p)));
            }
        }
        if (trace.drivers().isEmpty()) {
            out.println("  No pin is known to drive it.");
        }
    }

    /** The ways to another place. */
    public static void writePaths(PrintStream out, Place from, Place to, List<SignalPath> paths) {
        if (paths.isEmpty()) {
            out.println("No way leads from " + from.text() + " to " + to.text()
                    + " through passive parts, transistors, or gates in their direction.");
            return;
        }
        out.println(Words.count(paths.size(), "way") + " from " + from.text() + " to " + to.text() + ":");
        for (SignalPath path : paths) {
            out.println("  " + path.places().stream().map(Place::text).collect(Collectors.joining(" > ")));
        }
    }

    private static String line(TracedPin p) {
        String value = p.part().value() == null ? "" : p.part().value();
        String at = p.pin().at() == null ? "not drawn" : "sheet " + p.pin().page();
        return "    " + Words.padded(p.place().text(), 10) + " " + Words.padded(p.name() == null ? "" : p.name(), 10)
                + " " + Words.padded(value, 12) + " " + at;
    }

    private static String head(PinDirection direction) {
        return switch (direction) {
            case OUT -> "drives it";
            case IN -> "listens to it";
            case BIDIR -> "works both ways";
            case PASSIVE -> "passive";
            case POWER -> "supply pins";
            case UNKNOWN -> "direction not known";
        };
    }
}
