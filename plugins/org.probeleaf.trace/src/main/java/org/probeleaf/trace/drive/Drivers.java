// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.drive;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.partbook.PartType;
import org.probeleaf.schematic.partbook.PinType;
import org.probeleaf.schematic.partbook.UnitType;
import org.probeleaf.trace.TracedPin;
import org.probeleaf.trace.follow.NetKind;
import org.probeleaf.trace.follow.OutputState;
import org.probeleaf.trace.follow.SignalNetwork;
import org.probeleaf.trace.follow.Step;
import org.probeleaf.trace.follow.StepKind;
import org.probeleaf.trace.follow.TransistorPins;

/**
 * What drives a net. A pin that works both ways counts as one that can let go; so does a transistor from the net to
 * ground as an open collector.
 *
 * @param kind   what they are together
 * @param pins   the pins that drive the net, always or by turns, in the order of {@link TracedPin#BY_PLACE}
 * @param pulls  the resistors that pull the net to a supply or to ground
 * @param reason the same in plain words, for the technician
 */
public record Drivers(DriverKind kind, List<TracedPin> pins, List<Pull> pulls, String reason) {

    public Drivers {
        pins = List.copyOf(pins);
        pulls = List.copyOf(pulls);
    }

    /** What drives a net; none known for an id that is not known. */
    public static Drivers of(SignalNetwork network, String netId) {
        Map<OutputState, List<TracedPin>> byState = new EnumMap<>(OutputState.class);
        for (TracedPin pin : network.signals().pinsOn(netId)) {
            OutputState state = network.output(pin);
            if (state != OutputState.NONE && state != OutputState.NEVER) {
                byState.computeIfAbsent(state, s -> new ArrayList<>()).add(pin);
            }
        }
        network.waysTo(netId).stream().filter(s -> pullsDown(network, s)).map(Step::out).distinct()
                .forEach(p -> byState.computeIfAbsent(OutputState.PULLS_DOWN, s -> new ArrayList<>()).add(p));
        List<TracedPin> all = byState.values().stream().flatMap(List::stream).sorted(TracedPin.BY_PLACE).toList();
        List<Pull> pulls = Pull.on(network, netId);
        DriverKind kind = kind(byState, network.book());
        return new Drivers(kind, all, pulls, reason(kind, all, pulls));
    }

    private static DriverKind kind(Map<OutputState, List<TracedPin>> byState, PartBook book) {
        List<TracedPin> always = byState.getOrDefault(OutputState.ALWAYS, List.of());
        boolean others = byState.size() > (always.isEmpty() ? 0 : 1);
        if (!always.isEmpty()) {
            return others || always.size() > 1 && !sayTheSame(always, book) ? DriverKind.CONTENTION : DriverKind.PUSH_PULL;
        }
        return byState.containsKey(OutputState.BY_TURNS) ? DriverKind.THREE_STATE
                : byState.containsKey(OutputState.PULLS_DOWN) ? DriverKind.OPEN_COLLECTOR : DriverKind.NONE_KNOWN;
    }

    private static String reason(DriverKind kind, List<TracedPin> pins, List<Pull> pulls) {
        String pulled = pulls.isEmpty() ? "" : "; " + pulls.stream().map(Pull::text).collect(Collectors.joining(", "));
        String names = pins.stream().map(p -> p.place().text()).collect(Collectors.joining(", "));
        return switch (kind) {
            case NONE_KNOWN -> "no pin is known to drive it" + pulled;
            case PUSH_PULL -> "driven by " + names + (names.contains(",") ? ", which always say the same" : "") + pulled;
            case THREE_STATE -> (pins.size() == 1 ? "driven by " + names + ", three-state, which can let go of it"
                    : "driven by turns, three-state: " + names) + pulled;
            case OPEN_COLLECTOR -> "pulled down by " + names + ", open collector" + (pulls.stream().anyMatch(Pull::up)
                    ? pulled : pulled + "; nothing on the sheet pulls it up");
            case CONTENTION -> "several outputs drive it at once: " + names
                    + "; check the sheet, or look for a level between low and high" + pulled;
        };
    }

    /** Whether the outputs belong to sections of one function with their inputs on the same nets. */
    private static boolean sayTheSame(List<TracedPin> outputs, PartBook book) {
        Set<List<Object>> kinds = new HashSet<>();
        for (TracedPin out : outputs) {
            Optional<PinType> pin = book.pin(out.part(), out.pin());
            Optional<UnitType> unit = book.find(out.part().value()).map(PartType::units).orElse(List.of()).stream()
                    .filter(u -> pin.isPresent() && u.outputs().contains(pin.get().number())).findFirst();
            if (unit.isEmpty()) {
                return false;
            }
            Set<String> inputs = new HashSet<>();
            unit.get().inputs().forEach(n -> inputs.add(netAt(out.part(), n, book)));
            kinds.add(List.of(unit.get().function(), inputs));
        }
        return kinds.size() == 1;
    }

    /** The net at a pin of the given number in the book; a text that is no net where there is none. */
    private static String netAt(Part part, String number, PartBook book) {
        return part.pins().stream().filter(p -> book.pin(part, p).filter(t -> t.number().equals(number)).isPresent())
                .map(Pin::net).filter(n -> n != null).findFirst().orElse(part.ref() + " " + number);
    }

    /** Whether a transistor leads from the net to ground. */
    private static boolean pullsDown(SignalNetwork network, Step step) {
        if (step.kind() != StepKind.TRANSISTOR) {
            return false;
        }
        TransistorPins pins = TransistorPins.of(step.part()).orElse(null);
        return pins != null && step.out().pin() == pins.collector() && step.in().pin() == pins.base()
                && pins.emitter() != null && pins.emitter().net() != null
                && network.kind(pins.emitter().net()) == NetKind.GROUND;
    }
}
