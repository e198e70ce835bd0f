// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.circuit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.partbook.PartClass;
import org.probeleaf.schematic.partbook.PartType;
import org.probeleaf.schematic.partbook.PinDirection;
import org.probeleaf.schematic.partbook.PinRole;
import org.probeleaf.schematic.partbook.UnitType;

/**
 * Makes the cells. Chips that the part book knows come first: their outputs drive for certain. What is in series passes
 * on from where a signal comes. Pins of which nobody knows the direction drive what nothing else does, and contacts
 * bring what is left.
 */
final class CellBuilder {

    private static final Set<PartClass> TWO_ENDED = EnumSet.of(PartClass.RESISTOR, PartClass.CAPACITOR,
            PartClass.INDUCTOR, PartClass.DIODE, PartClass.LINK, PartClass.PROTECTION, PartClass.SWITCH,
            PartClass.FILTER, PartClass.INDICATOR, PartClass.CRYSTAL, PartClass.AMBIGUOUS, PartClass.NETWORK);
    private static final Set<PartClass> CONTACTS = EnumSet.of(PartClass.CONNECTOR, PartClass.SOURCE,
            PartClass.TRANSDUCER, PartClass.ASSEMBLY, PartClass.AMBIGUOUS);
    private static final Set<String> OUTPUT_NAMES = Set.of("OUT", "VOUT", "VO", "OUTPUT", "O");
    private static final Set<String> INPUT_NAMES = Set.of("IN", "VIN", "VI", "INPUT", "ADJ", "B", "G", "BASE", "GATE");

    private final List<Part> parts;
    private final PartBook book;
    private final List<List<Terminal>> ofPart;
    private final List<List<Terminal>> onNode;
    private final boolean[] rail;
    private final List<Cell> cells = new ArrayList<>();
    private final SeriesParts series;

    CellBuilder(List<Part> parts, PartBook book, List<List<Terminal>> ofPart, List<List<Terminal>> onNode,
            boolean[] rail) {
        this.parts = parts;
        this.book = book;
        this.ofPart = ofPart;
        this.onNode = onNode;
        this.rail = rail;
        this.series = new SeriesParts(onNode.size(), rail);
    }

    List<Cell> build() {
        List<Integer> unknown = new ArrayList<>();
        for (int p = 0; p < parts.size(); p++) {
            Part part = parts.get(p);
            Optional<PartType> type = book.find(part.value());
            PartClass kind = book.classOf(part.ref());
            if (type.isPresent()) {
                chip(p, type.get());
            } else if (TWO_ENDED.contains(kind) && ofPart.get(p).size() == 2) {
                series.add(p, kind, ofPart.get(p).get(0), ofPart.get(p).get(1));
            } else if (!CONTACTS.contains(kind) && kind != PartClass.TESTPOINT && kind != PartClass.MECHANICAL) {
                unknown.add(p);
            }
        }
        cells.forEach(c -> series.driven(c.out().node()));
        series.spread();
        unknown.forEach(this::unknownPart);
        cells.forEach(c -> series.driven(c.out().node()));
        series.spread();
        contacts();
        series.spread();
        series.cells(cells.size()).forEach(cells::add);
        return cells;
    }

    private void chip(int part, PartType type) {
        Set<Terminal> made = new HashSet<>();
        for (UnitType unit : type.units()) {
            if (unit.function().equals("XCVR")) {
                transceiver(part, unit, made);
            } else {
                for (int i = 0; i < unit.outputs().size(); i++) {
                    Terminal out = numbered(part, unit.outputs().get(i));
                    if (out != null && made.add(out)) {
                        boolean low = out.type().name().startsWith("/");
                        add(part, out, named(part, LogicBook.inputs(unit)), LogicBook.of(unit, i, low),
                                LogicBook.knows(unit) ? unit.function() : null);
                    }
                }
            }
        }
        rest(part, made);
    }

    private void transceiver(int part, UnitType unit, Set<Terminal> made) {
        List<String> controls = LogicBook.inputs(unit).subList(unit.inputs().size(), LogicBook.inputs(unit).size());
        for (int i = 0; i < unit.inputs().size(); i++) {
            Terminal a = numbered(part, unit.inputs().get(i));
            Terminal b = numbered(part, unit.outputs().get(i));
            for (boolean forward : new boolean[] {true, false}) {
                Terminal from = forward ? a : b;
                Terminal to = forward ? b : a;
                if (to != null) {
                    List<Terminal> in = new ArrayList<>(Arrays.asList(from));
                    in.addAll(named(part, controls));
                    add(part, to, in, LogicBook.transceiver(unit, forward), unit.function());
                    made.add(to);
                }
            }
        }
    }

    /** Outputs that belong to no section, as those of a memory: they follow all inputs in a way that nobody knows. */
    private void rest(int part, Set<Terminal> made) {
        List<Terminal> all = ofPart.get(part);
        for (Terminal out : all) {
            boolean drives = out.direction() == PinDirection.OUT || out.direction() == PinDirection.BIDIR;
            if (drives && !rail[out.node()] && made.add(out)) {
                List<Terminal> in = all.stream().filter(t -> t != out && t.node() != out.node())
                        .filter(t -> t.direction() == PinDirection.IN || t.direction() == PinDirection.BIDIR).toList();
                add(part, out, in, CellLogic.UNKNOWN, null);
            }
        }
    }

    /** A part that the book does not have: its pins drive what nothing else does, and follow its other pins. */
    private void unknownPart(int part) {
        List<Terminal> all = ofPart.get(part);
        List<Terminal> outs = all.stream().filter(t -> !named(t, INPUT_NAMES) && t.direction() != PinDirection.POWER)
                .filter(t -> named(t, OUTPUT_NAMES) || !rail[t.node()] && !series.isDriven(t.node())).toList();
        List<Terminal> inputs = all.stream().filter(t -> named(t, INPUT_NAMES)).toList();
        for (Terminal out : outs) {
            List<Terminal> in = all.stream().filter(t -> t != out && t.node() != out.node() && !rail[t.node()])
                    .filter(t -> t.direction() != PinDirection.POWER)
                    .filter(t -> inputs.isEmpty() || inputs.contains(t)).toList();
            add(part, out, in, CellLogic.UNKNOWN, null, !inputs.isEmpty());
        }
    }

    /** Contacts bring what nothing on the board drives; those of a rail where no regulator does. */
    private void contacts() {
        for (int n = 0; n < onNode.size(); n++) {
            if (!series.isDriven(n)) {
                for (Terminal t : onNode.get(n)) {
                    if (book.find(parts.get(t.part()).value()).isEmpty()
                            && CONTACTS.contains(book.classOf(parts.get(t.part()).ref()))) {
                        cells.add(new Cell(cells.size(), t.part(), t, List.of(), List.of(), CellLogic.UNKNOWN, null,
                                Cell.Kind.SOURCE, true));
                        series.driven(n);
                    }
                }
            }
        }
    }

    private void add(int part, Terminal out, List<Terminal> in, CellLogic logic, String function) {
        add(part, out, in, logic, function, true);
    }

    private void add(int part, Terminal out, List<Terminal> in, CellLogic logic, String function, boolean surely) {
        boolean collector = out.type() != null && out.type().role() == PinRole.OPEN_COLLECTOR;
        List<Terminal> power = ofPart.get(part).stream().filter(t -> t.direction() == PinDirection.POWER)
                .filter(t -> t.pin().net() != null && t != out).toList();
        CellLogic drive = !collector ? logic : levels -> {
            int level = logic.drive(levels);
            return level == Level.HIGH ? Level.OFF : level;
        };
        cells.add(new Cell(cells.size(), part, out, in, power, drive, function,
                collector ? Cell.Kind.OPEN_COLLECTOR : Cell.Kind.ACTIVE, surely));
    }

    private static boolean named(Terminal t, Set<String> names) {
        return t.pin().name() != null && names.contains(t.pin().name().toUpperCase(Locale.ROOT));
    }

    private List<Terminal> named(int part, List<String> numbers) {
        List<Terminal> found = new ArrayList<>();
        numbers.forEach(n -> found.add(numbered(part, n)));
        return found;
    }

    private Terminal numbered(int part, String number) {
        return ofPart.get(part).stream().filter(t -> t.type() != null && Objects.equals(t.type().number(), number))
                .findFirst().orElse(null);
    }
}
