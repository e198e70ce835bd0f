// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.follow;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;

import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.partbook.PartClass;
import org.probeleaf.trace.TracedPin;

/**
 * Which pins of a passive part with many belong together, as two ends of one element. It is known where
 * <ol>
 * <li>the sheet draws the elements as units of two pins;</li>
 * <li>the sheet draws the part as a box with its pins opposite each other;</li>
 * <li>a resistor pack has pin 1, and that alone, on a supply: pin 1 is the common end of a bussed pack.</li>
 * </ol>
 */
final class PinGroups {

    private static final int PAIR = 2;
    private static final int THREE = 3;
    /** How far pins may be out of line to count as opposite, in points. */
    private static final double IN_LINE = 1;

    private final Part part;
    private final List<TracedPin> pins;

    private PinGroups(Part part, List<TracedPin> pins) {
        this.part = part;
        this.pins = pins;
    }

    /**
     * Pins that belong together.
     *
     * @param pins    those of the part's pins that are on nets
     * @param carries what the net of a pin carries
     * @return groups of pins that conduct to one another; none where nothing is known
     */
    static List<List<TracedPin>> of(Part part, PartClass kind, List<TracedPin> pins, Function<TracedPin, NetKind> carries) {
        PinGroups groups = new PinGroups(part, pins);
        if (part.pins().size() <= THREE && kind != PartClass.RELAY) {
            return List.of(pins);
        }
        List<List<TracedPin>> found = groups.units();
        found = found.isEmpty() && kind != PartClass.RELAY ? groups.opposite() : found;
        return found.isEmpty() && kind == PartClass.RESISTOR ? groups.bussed(carries) : found;
    }

    private List<List<TracedPin>> units() {
        Map<String, Integer> size = new LinkedHashMap<>();
        part.pins().stream().map(Pin::unit).filter(Objects::nonNull).forEach(u -> size.merge(u, 1, Integer::sum));
        return size.entrySet().stream().filter(e -> e.getValue() == PAIR)
                .map(e -> pins.stream().filter(p -> e.getKey().equals(p.pin().unit())).toList()).toList();
    }

    private List<List<TracedPin>> opposite() {
        if (part.units().size() != 1 || part.pins().stream().anyMatch(p -> p.at() == null)) {
            return List.of();
        }
        Box box = part.units().get(0).box();
        List<List<TracedPin>> across = facing(p -> p.at().x() - box.centre().x(), p -> p.at().y(), box.width());
        return across.isEmpty() ? facing(p -> p.at().y() - box.centre().y(), p -> p.at().x(), box.height()) : across;
    }

    /** Pairs of pins on two sides; none unless each pin has its one partner. */
    private List<List<TracedPin>> facing(Function<Pin, Double> side, Function<Pin, Double> along, double size) {
        for (Pin pin : part.pins()) {
            boolean beside = Math.abs(side.apply(pin)) >= size / 2 - IN_LINE;
            long partners = part.pins().stream().filter(q -> faces(pin, q, side, along)).count();
            if (!beside || partners != 1) {
                return List.of();
            }
        }
        List<List<TracedPin>> pairs = new ArrayList<>();
        for (TracedPin pin : pins) {
            pins.stream().filter(q -> side.apply(pin.pin()) < 0 && faces(pin.pin(), q.pin(), side, along))
                    .forEach(q -> pairs.add(List.of(pin, q)));
        }
        return pairs;
    }

    private static boolean faces(Pin a, Pin b, Function<Pin, Double> side, Function<Pin, Double> along) {
        return side.apply(a) * side.apply(b) < 0 && Math.abs(along.apply(a) - along.apply(b)) < IN_LINE;
    }

    private List<List<TracedPin>> bussed(Function<TracedPin, NetKind> carries) {
        List<TracedPin> supplied = pins.stream().filter(p -> carries.apply(p).isSupply()).toList();
        if (supplied.size() != 1 || !"1".equals(supplied.get(0).pin().number())) {
            return List.of();
        }
        return pins.stream().filter(p -> p != supplied.get(0)).map(p -> List.of(supplied.get(0), p)).toList();
    }
}
