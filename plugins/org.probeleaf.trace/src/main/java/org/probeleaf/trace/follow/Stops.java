// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.follow;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.partbook.PartClass;
import org.probeleaf.schematic.partbook.PartType;
import org.probeleaf.schematic.partbook.PinDirection;
import org.probeleaf.schematic.partbook.PinRole;
import org.probeleaf.trace.TracedPin;

/** Says why a signal ends at a net or at a pin. */
final class Stops {

    /** From how many parts that drive it by turns a net counts as a bus. */
    private static final int BUS = 3;
    private static final Set<PartClass> PAIRED = EnumSet.of(PartClass.RESISTOR, PartClass.CAPACITOR, PartClass.INDUCTOR,
            PartClass.LINK, PartClass.PROTECTION, PartClass.NETWORK, PartClass.FILTER, PartClass.SWITCH,
            PartClass.RELAY, PartClass.DIODE, PartClass.INDICATOR, PartClass.TRANSISTOR, PartClass.AMBIGUOUS);
    private static final Set<PartClass> USERS = EnumSet.of(PartClass.TRANSDUCER, PartClass.ELECTROMECHANICAL,
            PartClass.SOURCE, PartClass.CRYSTAL, PartClass.TRANSFORMER, PartClass.MECHANICAL);

    private final SignalNetwork network;
    private final FollowOptions options;

    Stops(SignalNetwork network, FollowOptions options) {
        this.network = network;
        this.options = options;
    }

    Stop supply(Net net, NetKind kind) {
        return kind == NetKind.GROUND ? Stop.ofNet(StopKind.GROUND, net.title() + " is ground")
                : Stop.ofNet(StopKind.SUPPLY, net.title() + " is a supply");
    }

    /** Why nothing is followed from a net as a whole, or null. */
    Stop whole(Net net, List<TracedPin> pins, List<Step> ways) {
        long sharing = pins.stream().filter(this::byTurns).map(p -> p.part().ref()).distinct().count();
        if (sharing >= BUS) {
            return new Stop(StopKind.BUS, null, (int) sharing, net.title() + " is a bus that " + sharing
                    + " parts drive by turns");
        }
        if (ways.size() > options.fanOut()) {
            return new Stop(StopKind.FAN_OUT, null, ways.size(), net.title() + " goes on to " + ways.size()
                    + " places, more than the " + options.fanOut() + " that are followed");
        }
        return null;
    }

    private boolean byTurns(TracedPin pin) {
        return pin.direction() == PinDirection.BIDIR || network.book().pin(pin.part(), pin.pin())
                .filter(t -> t.role() == PinRole.THREE_STATE).isPresent();
    }

    /** Why the signal ends at those pins of a net through which it is not followed. */
    List<Stop> atPins(List<TracedPin> pins, TracedPin arrival) {
        List<Stop> ends = new ArrayList<>();
        for (TracedPin pin : pins) {
            if (arrival == null || pin.pin() != arrival.pin()) {
                Stop stop = at(pin);
                if (stop != null) {
                    ends.add(stop);
                }
            }
        }
        return ends;
    }

    private Stop at(TracedPin pin) {
        List<Step> ways = waysAt(pin);
        if (ways.stream().anyMatch(w -> options.takes(w.kind()))) {
            return null;
        }
        if (!ways.isEmpty()) {
            return notTaken(pin, ways);
        }
        PartClass kind = network.conduction().kind(pin.part());
        if (kind == PartClass.CONNECTOR) {
            return Stop.ofPin(StopKind.CONNECTOR, pin, "leaves the sheet at " + PartWords.shortPin(pin) + " of connector "
                    + PartWords.part(pin.part()));
        }
        if (kind == PartClass.TESTPOINT || pin.direction() == PinDirection.POWER || against(pin)) {
            return null;
        }
        Optional<PartType> type = network.conduction().type(pin.part());
        if (type.isPresent()) {
            return chip(pin, type.get());
        }
        return unlike(pin, kind);
    }

    private List<Step> waysAt(TracedPin pin) {
        boolean down = options.flow() == Flow.DOWNSTREAM;
        String net = pin.pin().net();
        return (down ? network.waysFrom(net) : network.waysTo(net)).stream()
                .filter(w -> (down ? w.in() : w.out()).pin() == pin.pin()).toList();
    }

    /** Whether the signal does not work at the pin at all: an output of another driver downstream, a load upstream. */
    private boolean against(TracedPin pin) {
        return pin.direction() == (options.flow() == Flow.DOWNSTREAM ? PinDirection.OUT : PinDirection.IN);
    }

    private Stop notTaken(TracedPin pin, List<Step> ways) {
        if (ways.stream().allMatch(w -> w.kind() == StepKind.ENABLE) && options.gates()) {
            if (options.flow() == Flow.UPSTREAM) {
                return null;
            }
            String outs = ways.stream().map(w -> w.out().pin().label()).distinct().collect(Collectors.joining(", "));
            return Stop.ofPin(StopKind.ENABLE, pin, PartWords.pin(pin) + " of " + PartWords.part(pin.part())
                    + " only switches outputs " + outs);
        }
        boolean passive = ways.get(0).kind().passive();
        return Stop.ofPin(StopKind.NOT_ASKED, pin, PartWords.part(pin.part()) + " at " + PartWords.pin(pin)
                + (passive ? "; series parts are not followed" : "; gates are not followed"));
    }

    private Stop chip(TracedPin pin, PartType type) {
        if (type.units().isEmpty()) {
            boolean down = options.flow() == Flow.DOWNSTREAM;
            return Stop.ofPin(StopKind.FUNCTION, pin, PartWords.part(pin.part()) + ", a " + type.title() + ", "
                    + (down ? "takes it in at " : "gives it out at ") + PartWords.pin(pin));
        }
        return Stop.ofPin(StopKind.OPEN, pin, "what " + PartWords.pin(pin) + " of " + PartWords.part(pin.part())
                + " works with is on no net");
    }

    private Stop unlike(TracedPin pin, PartClass kind) {
        Part part = pin.part();
        if (USERS.contains(kind)) {
            return Stop.ofPin(StopKind.USED, pin, "ends in " + PartWords.kind(kind) + " " + PartWords.part(part));
        }
        if (!PAIRED.contains(kind)) {
            return Stop.ofPin(StopKind.FUNCTION, pin, "what " + PartWords.part(part) + " does at " + PartWords.pin(pin)
                    + " is not in the part book");
        }
        boolean open = part.pins().size() <= 2 && part.pins().stream().anyMatch(p -> p.net() == null);
        if (open) {
            return Stop.ofPin(StopKind.OPEN, pin, "the other end of " + PartWords.part(part) + " is on no net");
        }
        return part.pins().size() <= 3 ? null : Stop.ofPin(StopKind.PAIRS, pin, "which pins of " + PartWords.part(part)
                + " belong to " + PartWords.shortPin(pin) + " is not known");
    }
}
