// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.follow;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.partbook.PartClass;
import org.probeleaf.trace.TracedPin;

/** The ways through parts that are not chips, by the class of their designator and the names of their pins. */
final class PassiveWays {

    private static final Set<String> ANODE = Set.of("A", "ANODE", "+");
    private static final Set<String> CATHODE = Set.of("K", "C", "CATHODE", "KA", "-");
    private static final Set<String> BASE = Set.of("B", "BASE", "G", "GATE");
    private static final Set<String> COLLECTOR = Set.of("C", "COLLECTOR", "D", "DRAIN");
    private static final Set<String> EMITTER = Set.of("E", "EMITTER", "S", "SOURCE");
    private static final int PAIR = 2;
    private static final int THREE = 3;

    private final Part part;
    private final PartClass kind;
    private final List<TracedPin> pins;
    private final List<Step> ways = new ArrayList<>();

    private PassiveWays(Part part, PartClass kind, List<TracedPin> pins) {
        this.part = part;
        this.kind = kind;
        this.pins = pins;
    }

    /**
     * The ways through a part.
     *
     * @param part the part
     * @param kind its class
     * @param pins those of its pins that are on nets
     */
    static List<Step> of(Part part, PartClass kind, List<TracedPin> pins) {
        PassiveWays all = new PassiveWays(part, kind, pins);
        all.find();
        return all.ways;
    }

    /** What a part is for tracing where its letters leave it open. */
    static PartClass settled(Part part, PartClass kind) {
        if (kind != PartClass.AMBIGUOUS) {
            return kind;
        }
        String value = part.value() == null ? "" : part.value().toUpperCase(Locale.ROOT);
        if (value.endsWith("HZ")) {
            return PartClass.CRYSTAL;
        }
        return has(part, BASE) && (has(part, COLLECTOR) || has(part, EMITTER)) ? PartClass.TRANSISTOR
                : has(part, ANODE) && has(part, CATHODE) ? PartClass.DIODE : kind;
    }

    private static boolean has(Part part, Set<String> names) {
        return part.pins().stream().anyMatch(p -> p.name() != null && names.contains(p.name().toUpperCase(Locale.ROOT)));
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
                : kind == PartClass.SWITCH || kind == PartClass.RELAY ? "as its contacts stand" : "series";
        for (List<TracedPin> group : groups()) {
            for (TracedPin a : group) {
                for (TracedPin b : group) {
                    add(a, b, StepKind.SERIES, through(why));
                }
            }
        }
    }

    /** Pins that belong together: all of a part with two or three, else those drawn as one unit of two. */
    private List<List<TracedPin>> groups() {
        if (part.pins().size() <= THREE && kind != PartClass.RELAY) {
            return List.of(pins);
        }
        Map<String, Integer> size = new LinkedHashMap<>();
        part.pins().stream().map(Pin::unit).filter(Objects::nonNull).forEach(u -> size.merge(u, 1, Integer::sum));
        return size.entrySet().stream().filter(e -> e.getValue() == PAIR)
                .map(e -> pins.stream().filter(p -> e.getKey().equals(p.pin().unit())).toList()).toList();
    }

    private void diodes() {
        for (List<TracedPin> group : groups()) {
            List<TracedPin> anodes = named(group, ANODE);
            List<TracedPin> cathodes = named(group, CATHODE);
            if (anodes.isEmpty() || cathodes.isEmpty()) {
                for (TracedPin a : group) {
                    group.forEach(b -> add(a, b, StepKind.SERIES, through("which end is the anode is not known")));
                }
            }
            for (TracedPin a : anodes) {
                cathodes.forEach(k -> add(a, k, StepKind.SERIES, "through " + PartWords.kind(kind) + " "
                        + PartWords.part(part) + ", anode to cathode"));
            }
        }
    }

    /** Base to collector and emitter, emitter to collector; a field effect transistor the same, and both ways as a switch. */
    private void transistor() {
        List<TracedPin> bases = named(pins, BASE);
        List<TracedPin> collectors = named(pins, COLLECTOR);
        List<TracedPin> emitters = named(pins, EMITTER);
        if (bases.isEmpty() || part.pins().size() > THREE) {
            if (part.pins().size() <= THREE) {
                for (TracedPin a : pins) {
                    pins.forEach(b -> add(a, b, StepKind.TRANSISTOR, "through transistor " + PartWords.part(part)
                            + ", which of its pins is the base is not known"));
                }
            }
            return;
        }
        boolean field = has(part, Set.of("G", "GATE"));
        String name = "through transistor " + PartWords.part(part) + ", ";
        for (TracedPin c : collectors) {
            bases.forEach(b -> add(b, c, StepKind.TRANSISTOR, name + (field ? "gate to drain" : "base to collector")
                    + ", inverted"));
            emitters.forEach(e -> add(e, c, StepKind.TRANSISTOR, name + (field ? "source to drain" : "emitter to collector")));
            if (field) {
                emitters.forEach(e -> add(c, e, StepKind.TRANSISTOR, name + "drain to source"));
            }
        }
        for (TracedPin e : emitters) {
            bases.forEach(b -> add(b, e, StepKind.TRANSISTOR, name + (field ? "gate to source" : "base to emitter")
                    + ", following"));
        }
    }

    private static List<TracedPin> named(List<TracedPin> group, Set<String> names) {
        return group.stream().filter(p -> p.name() != null && names.contains(p.name().toUpperCase(Locale.ROOT))).toList();
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
