// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.follow;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;

import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.partbook.PartType;
import org.probeleaf.schematic.partbook.PinType;
import org.probeleaf.schematic.partbook.UnitType;
import org.probeleaf.trace.TracedPin;

/** The ways through the sections of a chip that the part book knows, from input to output of the same section. */
final class SectionWays {

    private static final String TRANSCEIVER = "XCVR";

    private final PartType type;
    private final List<TracedPin> pins;
    private final List<String> numbers;
    private final Function<TracedPin, NetKind> carries;
    private final Map<String, String> sections = new HashMap<>();
    private final List<Step> ways = new ArrayList<>();

    private SectionWays(PartBook book, Part part, PartType type, List<TracedPin> pins,
            Function<TracedPin, NetKind> carries) {
        this.type = type;
        this.pins = pins;
        this.numbers = pins.stream().map(p -> book.pin(part, p.pin()).map(PinType::number).orElse("")).toList();
        this.carries = carries;
    }

    /**
     * The ways through a chip.
     *
     * @param carries what the net of a pin carries
     */
    static List<Step> of(PartBook book, Part part, PartType type, List<TracedPin> pins,
            Function<TracedPin, NetKind> carries) {
        SectionWays all = new SectionWays(book, part, type, pins, carries);
        type.units().forEach(all::unit);
        return all.ways;
    }

    private void unit(UnitType unit) {
        if (!TRANSCEIVER.equals(unit.function())) {
            data(unit, unit.inputs(), unit.outputs());
        } else {
            NetKind turned = at(unit.controls().getOrDefault("dir", List.of())).stream().map(carries).findFirst()
                    .orElse(NetKind.SIGNAL);
            if (turned != NetKind.GROUND) {
                data(unit, unit.inputs(), unit.outputs());
            }
            if (turned != NetKind.SUPPLY) {
                data(unit, unit.outputs(), unit.inputs());
            }
        }
        for (Map.Entry<String, List<String>> control : new TreeMap<>(unit.controls()).entrySet()) {
            control(unit, control.getKey(), control.getValue());
        }
    }

    private void data(UnitType unit, List<String> from, List<String> to) {
        Tie tie = Tie.of(unit, this::at, carries);
        if (tie.off() != null) {
            return;
        }
        for (TracedPin out : at(to)) {
            for (TracedPin in : at(from)) {
                add(unit, in, out, StepKind.GATE, PartWords.shortPin(in) + " drives " + PartWords.shortPin(out) + tie.note());
            }
        }
    }

    private void control(UnitType unit, String word, List<String> from) {
        if (word.equals("rc")) {
            return;
        }
        StepKind kind = word.startsWith("oe") || word.equals("dir") ? StepKind.ENABLE : StepKind.CONTROL;
        for (TracedPin in : at(from)) {
            List<TracedPin> outs = new ArrayList<>(at(unit.outputs()));
            if (TRANSCEIVER.equals(unit.function())) {
                outs.addAll(at(unit.inputs()));
            }
            outs.forEach(out -> add(unit, in, out, kind, PartWords.shortPin(in) + " (" + PartWords.control(word)
                    + ") works on " + PartWords.shortPin(out)));
        }
    }

    private List<TracedPin> at(List<String> wanted) {
        List<TracedPin> there = new ArrayList<>();
        for (int i = 0; i < numbers.size(); i++) {
            if (wanted.contains(numbers.get(i))) {
                there.add(pins.get(i));
            }
        }
        return there;
    }

    private void add(UnitType unit, TracedPin in, TracedPin out, StepKind kind, String how) {
        if (!in.pin().net().equals(out.pin().net())) {
            String section = sections.computeIfAbsent(unit.name() + " " + out.pin().unit(),
                    u -> PartWords.section(out, unit, type.units().size() > 1));
            ways.add(new Step(in, out, kind, unit, "through " + section + ": " + how));
        }
    }
}
