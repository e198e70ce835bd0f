// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.follow;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.partbook.PartClass;
import org.probeleaf.trace.TracedPin;

/** The ways through parts that are not chips, by the class of their designator and the names of their pins. */
final class PassiveWays {

    private static final Set<PartClass> OPEN = EnumSet.of(PartClass.AMBIGUOUS, PartClass.UNKNOWN, PartClass.TRANSFORMER);
    private static final Set<String> ANODE = Set.of("A", "ANODE", "+");
    private static final Set<String> CATHODE = Set.of("K", "C", "CATHODE", "KA", "-");
    private static final int PAIR = 2;
    private static final int THREE = 3;

    private final Part part;
    private final PartClass kind;
    private final List<TracedPin> pins;
    private final Function<TracedPin, NetKind> carries;
    private final List<Step> ways = new ArrayList<>();

    private PassiveWays(Part part, PartClass kind, List<TracedPin> pins, Function<TracedPin, NetKind> carries) {
        this.part = part;
        this.kind = kind;
        this.pins = pins;
        this.carries = carries;
    }

    /**
     * The ways through a part.
     *
     * @param part the part
     * @param kind its class
     * @param pins those of its pins that are on nets
     * @param carries what the net of a pin carries
     */
    static List<Step> of(Part part, PartClass kind, List<TracedPin> pins, Function<TracedPin, NetKind> carries) {
        PassiveWays all = new PassiveWays(part, kind, pins, carries);
        all.find();
        return all.ways;
    }

    /**
     * What a part is for tracing where its letters leave it open: the names of its pins tell, else its value; a part with
     * two pins then conducts as a part of any kind. (T is a transformer to some and a transistor to others.)
     */
    static PartClass settled(Part part, PartClass kind) {
        if (!OPEN.contains(kind)) {
            return kind;
        }
        if (TransistorPins.of(part).isPresent()) {
            return PartClass.TRANSISTOR;
        }
        if (part.pins().stream().anyMatch(p -> is(p, ANODE)) && part.pins().stream().anyMatch(p -> is(p, CATHODE))) {
            return PartClass.DIODE;
        }
        boolean hertz = part.value() != null && part.value().strip().toUpperCase(Locale.ROOT).endsWith("HZ");
        return kind != PartClass.TRANSFORMER && hertz ? PartClass.CRYSTAL
                : kind == PartClass.UNKNOWN && part.pins().size() == PAIR ? PartClass.AMBIGUOUS : kind;
    }

    private static boolean is(Pin pin, Set<String> names) {
        return Stream.of(pin.name(), pin.number()).anyMatch(t -> t != null && names.contains(t.toUpperCase(Locale.ROOT)));
    }

    private void find() {
        switch (kind) {
            case DIODE, INDICATOR -> diodes();
            case TRANSISTOR -> transistor();
            case RESISTOR, CAPACITOR, INDUCTOR, LINK, PROTECTION, NETWORK, FILTER, SWITCH, RELAY, AMBIGUOUS -> pairs();
            default -> { }
        }
    }

    private void pairs() {
        String why = kind == PartClass.AMBIGUOUS ? "what kind of part it is is not known"
                : kind == PartClass.SWITCH || kind == PartClass.RELAY ? "as its contacts stand"
                : kind == PartClass.LINK && part.pins().size() > PAIR ? "as its link is set" : "series";
        groups().forEach(g -> all(g, StepKind.SERIES, through(why)));
    }

    private List<List<TracedPin>> groups() {
        return PinGroups.of(part, kind, pins, carries);
    }

    private void diodes() {
        for (List<TracedPin> group : groups()) {
            List<TracedPin> anodes = named(group, ANODE);
            List<TracedPin> cathodes = named(group, CATHODE);
            if (anodes.isEmpty() || cathodes.isEmpty()) {
                all(group, StepKind.SERIES, through("which end is the anode is not known"));
            }
            for (TracedPin a : anodes) {
                cathodes.forEach(k -> add(a, k, StepKind.SERIES, "through " + PartWords.kind(kind) + " "
                        + PartWords.part(part) + ", anode to cathode"));
            }
        }
    }

    /**
     * The ways through a diode against its arrow: a signal at its cathode pulls down what a resistor pulls up at its
     * anode.
     *
     * @param pullUp the resistor that pulls a net up, or null for none
     */
    static List<Step> pulledDown(Part part, List<TracedPin> pins, Function<String, Part> pullUp) {
        List<Step> ways = new ArrayList<>();
        for (TracedPin k : named(pins, CATHODE)) {
            for (TracedPin a : named(pins, ANODE)) {
                Part resistor = pullUp.apply(a.pin().net());
                if (resistor != null && !a.pin().net().equals(k.pin().net())) {
                    ways.add(new Step(k, a, StepKind.SERIES, null, "through diode " + PartWords.part(part)
                            + ", cathode to anode: it pulls down what " + resistor.ref() + " pulls up"));
                }
            }
        }
        return ways;
    }

    /**
     * Base to collector and emitter, emitter to collector; a field effect transistor also conducts back. An electrode on
     * a supply is where the stage stands, not where the signal goes.
     */
    private void transistor() {
        TransistorPins which = TransistorPins.of(part).orElse(null);
        if (which == null) {
            if (part.pins().size() <= THREE) {
                all(pins, StepKind.TRANSISTOR, "through transistor " + PartWords.part(part)
                        + ", which of its pins is the base is not known");
            }
            return;
        }
        boolean field = which.field();
        transistor(which.base(), which.collector(), field ? "gate to drain, inverted" : "base to collector, inverted");
        transistor(which.base(), which.emitter(), field ? "gate to source, following" : "base to emitter, following");
        transistor(which.emitter(), which.collector(), field ? "source to drain" : "emitter to collector");
        if (field) {
            transistor(which.collector(), which.emitter(), "drain to source");
        }
    }

    private void transistor(Pin from, Pin to, String how) {
        for (TracedPin in : pins) {
            for (TracedPin out : pins) {
                boolean supplied = carries.apply(in).isSupply() || carries.apply(out).isSupply();
                if (in.pin() == from && out.pin() == to && !supplied) {
                    add(in, out, StepKind.TRANSISTOR, "through transistor " + PartWords.part(part) + ", " + how);
                }
            }
        }
    }

    /** Ways between all pins of a group. */
    private void all(List<TracedPin> group, StepKind how, String reason) {
        for (TracedPin a : group) {
            group.forEach(b -> add(a, b, how, reason));
        }
    }

    private static List<TracedPin> named(List<TracedPin> group, Set<String> names) {
        return group.stream().filter(p -> is(p.pin(), names)).toList();
    }

    private String through(String why) {
        String value = PartWords.value(part, kind);
        return "through " + part.ref() + " (" + (value == null ? "" : value + ", ") + why + ")";
    }

    private void add(TracedPin in, TracedPin out, StepKind how, String reason) {
        if (in != out && !in.pin().net().equals(out.pin().net())) {
            ways.add(new Step(in, out, how, null, reason));
        }
    }
}
