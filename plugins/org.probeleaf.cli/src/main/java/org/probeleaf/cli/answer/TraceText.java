// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.answer;

import java.io.PrintStream;
import java.util.List;
import java.util.stream.Collectors;

import org.probeleaf.schematic.board.BoardChange;
import org.probeleaf.schematic.partbook.PinDirection;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.schematic.quantity.Quantity;
import org.probeleaf.schematic.quantity.QuantityKind;
import org.probeleaf.trace.NetTrace;
import org.probeleaf.trace.SignalPath;
import org.probeleaf.trace.TracedPin;
import org.probeleaf.trace.drive.DriveBudget;
import org.probeleaf.trace.drive.DriverKind;
import org.probeleaf.trace.follow.CutOff;
import org.probeleaf.trace.follow.Flow;
import org.probeleaf.trace.follow.FollowOptions;
import org.probeleaf.trace.follow.Followed.Node;
import org.probeleaf.trace.follow.Stop;

/** The answer of {@code trace} for people. */
public final class TraceText {

    private static final double MICRO = 1e-6;

    private TraceText() {
    }

    /** The net with what drives it, where it goes on, and the ways to another place. */
    public static void write(PrintStream out, TraceAnswer answer) {
        net(out, answer.net());
        drive(out, answer);
        if (answer.goesOn()) {
            out.println(head(answer.followed().options()));
            tree(out, answer.followed().root(), answer.net().net().pages());
            if (answer.followed().cut()) {
                out.println("It goes on further; follow it from a place further on.");
            }
        }
        if (answer.cuts() != null) {
            cuts(out, answer.cuts());
        }
        if (answer.to() != null) {
            writePaths(out, answer);
        }
    }

    private static void cuts(PrintStream out, List<CutOff> cuts) {
        out.println(cuts.isEmpty() ? "No single pin or part cuts anything off." : "What would be cut off:");
        for (CutOff cut : cuts) {
            String head = "  " + cut.subject() + (cut.change() instanceof BoardChange.Lift ? " lifted: " : " out: ");
            Words.wrapped(out, head, cut.parts().stream().flatMap(p -> p.pins().stream()).map(p -> p.place().text())
                    .distinct().toList());
        }
    }

    /** The net, then its pins: what drives it, what listens, what does both, the rest. */
    private static void net(PrintStream out, NetTrace trace) {
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

    /** What is worth a word: drivers that are more than one plain output, and whether they carry their loads. */
    private static void drive(PrintStream out, TraceAnswer answer) {
        DriverKind kind = answer.drivers().kind();
        if (kind != DriverKind.NONE_KNOWN && kind != DriverKind.PUSH_PULL) {
            String reason = answer.drivers().reason();
            out.println("  " + Character.toUpperCase(reason.charAt(0)) + reason.substring(1) + ".");
        }
        answer.budgets().stream().filter(b -> b.levels() != null && !b.loads().isEmpty())
                .findFirst().ifPresent(b -> out.println("  " + budget(b)));
    }

    private static String budget(DriveBudget b) {
        String high = b.lets() ? "" : "high " + amperes(b.high()) + " of " + amperes(b.drive().ioh()) + ", ";
        String unknown = b.unknown().isEmpty() ? "" : "; not counted: " + b.unknown().stream()
                .map(p -> p.place().text()).collect(Collectors.joining(", "));
        String pull = b.pullUp().map(p -> p.possible() ? "; a pull-up of " + ohms(p.least()) + " to " + ohms(p.greatest())
                + " fits" : "; no pull-up fits").orElse("");
        return b.driver().place().text() + " (" + b.levels().name() + ") "
                + (b.carries().orElse(false) ? "carries" : "does not carry") + " its loads: " + high + "low "
                + amperes(b.low()) + " of " + amperes(b.drive().iol()) + unknown + pull + ".";
    }

    /** To the microampere, below that to the tenth. */
    private static String amperes(double amperes) {
        double perStep = amperes < MICRO ? 10 / MICRO : 1 / MICRO;
        return Quantity.of(QuantityKind.CURRENT, Math.round(amperes * perStep) / perStep).text();
    }

    private static String ohms(double ohms) {
        return Double.isInfinite(ohms) ? "any" : Quantity.of(QuantityKind.RESISTANCE, Math.round(ohms)).text();
    }

    private static String head(FollowOptions options) {
        String through = options.series() && options.gates() ? "series parts and gates"
                : options.series() ? "series parts" : "gates";
        return (options.flow() == Flow.UPSTREAM ? "Where it comes from, back through " : "Where it goes on, through ")
                + through + ":";
    }

    /** A net with its branches; its sheets where they are not those of the net before. */
    private static void tree(PrintStream out, Node node, List<Integer> pages) {
        String pad = "  ".repeat(node.depth() + 1);
        String end = node.stops().stream().filter(s -> node.next().isEmpty() && node.step() != null && s.at() == null)
                .map(s -> "; " + s.reason()).collect(Collectors.joining());
        boolean moves = !node.kind().isSupply() && !node.net().pages().equals(pages);
        String sheets = moves ? " (" + Words.sheets(node.net().pages()) + ")" : "";
        out.println(pad + node.net().title() + sheets + (node.step() == null ? "" : " " + node.step().reason() + end));
        for (Stop stop : node.stops()) {
            if (stop.at() != null || node.step() == null || !node.next().isEmpty()) {
                out.println(pad + "  - " + stop.reason());
            }
        }
        node.next().forEach(n -> tree(out, n, node.net().pages()));
    }

    /** The ways to another place. */
    public static void writePaths(PrintStream out, TraceAnswer answer) {
        String ends = "from " + answer.net().from().text() + " to " + answer.to().text();
        if (answer.paths().isEmpty()) {
            FollowOptions options = answer.followed().options();
            boolean all = options.series() == options.gates();
            out.println("No way leads " + ends + " through " + (all ? "passive parts, transistors, or gates in their direction"
                    : options.series() ? "passive parts" : "gates in their direction") + ".");
            return;
        }
        out.println(Words.count(answer.paths().size(), "way") + " " + ends + ":");
        for (SignalPath path : answer.paths()) {
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
