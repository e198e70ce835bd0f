// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.follow;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.partbook.PartClass;
import org.probeleaf.schematic.partbook.PartType;
import org.probeleaf.schematic.partbook.PinDirection;
import org.probeleaf.schematic.partbook.PinType;
import org.probeleaf.trace.TracedPin;

/** Says why a signal ends at a net or at a pin. */
final class Stops {

    /** From how many parts that drive it by turns a net counts as a bus. */
    private static final int BUS = 3;
    private static final int PAIR = 2;
    private static final int THREE = 3;
    private static final Set<PartClass> PAIRED = EnumSet.of(PartClass.RESISTOR, PartClass.CAPACITOR, PartClass.INDUCTOR,
            PartClass.LINK, PartClass.PROTECTION, PartClass.NETWORK, PartClass.FILTER, PartClass.SWITCH,
            PartClass.RELAY, PartClass.DIODE, PartClass.INDICATOR, PartClass.TRANSISTOR, PartClass.AMBIGUOUS);
    private static final Set<PartClass> USERS = EnumSet.of(PartClass.TRANSDUCER, PartClass.ELECTROMECHANICAL,
            PartClass.SOURCE, PartClass.CRYSTAL, PartClass.TRANSFORMER, PartClass.MECHANICAL);

    private final SignalNetwork network;
    private final FollowOptions options;
    private final boolean down;

    Stops(SignalNetwork network, FollowOptions options) {
        this.network = network;
        this.options = options;
        this.down = options.flow() == Flow.DOWNSTREAM;
    }

    static Stop supply(Net net, NetKind kind) {
        return kind == NetKind.GROUND ? Stop.ofNet(StopKind.GROUND, net.title() + " is ground")
                : Stop.ofNet(StopKind.SUPPLY, net.title() + " is a supply");
    }

    /** That an output drives the net which a way through a passive part leads to, or null. */
    Stop driven(Step by) {
        List<TracedPin> drivers = network.alwaysDriving(by.toNet());
        if (!down || !by.kind().passive() || drivers.isEmpty()) {
            return null;
        }
        TracedPin driver = drivers.get(0);
        return Stop.ofPin(StopKind.DRIVEN, driver, "ends where " + PartWords.pin(driver) + " of "
                + PartWords.part(driver.part()) + " drives " + network.net(by.toNet()).title());
    }

    /**
     * Why nothing is followed from a net as a whole, or null.
     *
     * @param ways how it would go on
     */
    Stop whole(Net net, List<TracedPin> pins, List<Step> ways) {
        long sharing = pins.stream().filter(p -> network.output(p) == OutputState.BY_TURNS).map(p -> p.part().ref())
                .distinct().count();
        if (sharing >= BUS) {
            return new Stop(StopKind.BUS, null, (int) sharing, net.title() + " is a bus that " + sharing
                    + " parts drive by turns");
        }
        int places = (int) ways.stream().filter(s -> !network.kind(down ? s.toNet() : s.fromNet()).isSupply()).count();
        return places <= options.fanOut() ? null : new Stop(StopKind.FAN_OUT, null, places, net.title() + " goes on to "
                + places + " places, more than the " + options.fanOut() + " that are followed");
    }

    /**
     * Why the signal ends at those pins of a net through which it is not followed.
     *
     * @param ways   all ways at the net in the direction of following
     * @param except pins that need no word: where the signal came in, or where it was asked about
     */
    List<Stop> atPins(List<TracedPin> pins, List<Step> ways, Set<Pin> except) {
        Map<Pin, List<Step>> byPin = new IdentityHashMap<>();
        ways.forEach(w -> byPin.computeIfAbsent((down ? w.in() : w.out()).pin(), p -> new ArrayList<>()).add(w));
        List<Stop> ends = new ArrayList<>();
        for (TracedPin pin : pins) {
            List<Step> here = byPin.getOrDefault(pin.pin(), List.of());
            boolean followed = here.stream().anyMatch(w -> options.takes(w.kind()));
            Stop stop = followed || except.contains(pin.pin()) ? null : here.isEmpty() ? noWay(pin) : notTaken(pin, here);
            if (stop != null) {
                ends.add(stop);
            }
        }
        return ends;
    }

    private Stop notTaken(TracedPin pin, List<Step> ways) {
        if (options.gates() && ways.stream().allMatch(w -> w.kind() == StepKind.ENABLE)) {
            return down ? switched(pin, ways) : null;
        }
        return Stop.ofPin(StopKind.NOT_ASKED, pin, PartWords.part(pin.part()) + " at " + PartWords.pin(pin)
                + (ways.get(0).kind().passive() ? ": series parts are not followed" : ": gates are not followed"));
    }

    private static Stop switched(TracedPin pin, List<Step> ways) {
        List<String> outs = ways.stream().map(w -> w.out().pin().label()).distinct().toList();
        boolean turns = ways.stream().anyMatch(w -> w.reason().contains("(direction)"));
        return Stop.ofPin(StopKind.ENABLE, pin, PartWords.pin(pin) + " of " + PartWords.part(pin.part())
                + (turns ? " turns its direction" : " only switches " + (outs.size() > 1 ? "outputs " : "output ")
                + outs.stream().collect(Collectors.joining(", ")) + " on and off"));
    }

    private Stop noWay(TracedPin pin) {
        PartClass kind = network.conduction().kind(pin.part());
        if (kind == PartClass.CONNECTOR) {
            return Stop.ofPin(StopKind.CONNECTOR, pin, (down ? "leaves the sheet at " : "comes onto the sheet at ")
                    + PartWords.pin(pin) + " of connector " + PartWords.part(pin.part()));
        }
        boolean other = pin.direction() == (down ? PinDirection.OUT : PinDirection.IN);
        if (kind == PartClass.TESTPOINT || pin.direction() == PinDirection.POWER || other) {
            return null;
        }
        Optional<PartType> type = network.conduction().type(pin.part());
        return type.isPresent() ? chip(pin, type.get()) : other(pin, kind);
    }

    private Stop chip(TracedPin pin, PartType type) {
        String part = PartWords.part(pin.part());
        if (type.units().isEmpty()) {
            return Stop.ofPin(StopKind.FUNCTION, pin, part + ", a " + type.title() + ", "
                    + (down ? "takes it in at " : "gives it out at ") + PartWords.pin(pin));
        }
        String number = network.book().pin(pin.part(), pin.pin()).map(PinType::number).orElse("");
        List<TracedPin> outs = type.units().stream().filter(u -> u.inputs().contains(number))
                .flatMap(u -> network.pinsOf(pin.part()).stream().filter(p -> network.book().pin(p.part(), p.pin())
                        .filter(t -> u.outputs().contains(t.number())).isPresent())).toList();
        if (!outs.isEmpty() && outs.stream().allMatch(p -> network.output(p) == OutputState.NEVER)) {
            return Stop.ofPin(StopKind.DISABLED, pin, PartWords.pin(outs.get(0)) + " of " + part
                    + " is switched off for good: its enable is on a supply");
        }
        boolean onItself = outs.stream().anyMatch(p -> p.pin().net().equals(pin.pin().net()));
        return onItself ? null : Stop.ofPin(StopKind.OPEN, pin, "what " + PartWords.pin(pin) + " of " + part + (down ? " works on"
                : " follows") + " is on no net");
    }

    private Stop other(TracedPin pin, PartClass kind) {
        Part part = pin.part();
        String name = PartWords.part(part);
        if (USERS.contains(kind)) {
            return Stop.ofPin(StopKind.USED, pin, (down ? "ends in " : "comes from ") + PartWords.kind(kind) + " " + name);
        }
        if (!PAIRED.contains(kind)) {
            return Stop.ofPin(StopKind.FUNCTION, pin, "what " + name + " does at " + PartWords.pin(pin)
                    + " is not in the part book");
        }
        List<Pin> others = part.pins().stream().filter(p -> p != pin.pin()).toList();
        if (others.isEmpty() || others.size() < PAIR && others.get(0).net() == null) {
            return Stop.ofPin(StopKind.OPEN, pin, "the other end of " + name + " is on no net");
        }
        if (others.size() < PAIR && !others.get(0).net().equals(pin.pin().net())) {
            return Stop.ofPin(StopKind.AGAINST, pin, name + " conducts the other way only, "
                    + (down ? "from " : "to ") + network.net(others.get(0).net()).title());
        }
        return part.pins().size() <= THREE ? null : Stop.ofPin(StopKind.PAIRS, pin, "which pin of " + name
                + " goes with " + PartWords.shortPin(pin) + " is not known");
    }
}
