// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.round;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.probeleaf.job.JobState;
import org.probeleaf.job.mark.ReadingMark;
import org.probeleaf.schematic.netlist.NaturalOrder;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.partbook.PinType;
import org.probeleaf.schematic.place.Place;

/**
 * The pins of one part in the order in which a hand goes round them, each with its net, what it should look like and
 * what was read there last.
 *
 * @param part the part as it is on the board
 * @param pins its pins by number
 */
public record ProbeRound(Part part, List<RoundPin> pins) {

    private static final Comparator<RoundPin> BY_NUMBER = Comparator.comparing(p -> p.pin().label(),
            NaturalOrder.INSTANCE);

    public ProbeRound {
        pins = List.copyOf(pins);
    }

    /**
     * A round of a part.
     *
     * @param ref designator, letter case ignored
     * @return the round; empty before recognition, or where the board has no such part
     */
    public static Optional<ProbeRound> of(JobState state, PartBook book, String ref) {
        Netlist board = state.onBench();
        return board == null ? Optional.empty() : board.part(ref).map(part -> {
            List<RoundPin> pins = new ArrayList<>();
            for (Pin pin : part.pins()) {
                pins.add(pin(state, book, part, pin));
            }
            pins.sort(BY_NUMBER);
            return new ProbeRound(part, pins);
        });
    }

    /** The first pin that has not been read yet; empty where all have. */
    public Optional<RoundPin> firstUnread() {
        return pins.stream().filter(p -> p.latest() == null && p.net() != null).findFirst();
    }

    private static RoundPin pin(JobState state, PartBook book, Part part, Pin pin) {
        Netlist board = state.onBench();
        Net net = pin.net() == null ? null : board.net(pin.net()).orElse(null);
        Place place = pin.number() == null && pin.name() == null && part.pins().size() == 2
                ? new Place.OfPin(part.ref(), String.valueOf(part.pins().indexOf(pin) + 1))
                : new Place.OfPin(part.ref(), pin.label());
        boolean lifted = state.boards().thisBoard().isLifted(part.ref(), pin.label());
        PinType type = book.pin(part, pin).orElse(null);
        PinLook look = PinLook.of(part, pin, type, net, board, lifted);
        String name = pin.name() != null ? pin.name() : type == null ? null : type.name();
        return new RoundPin(place, pin, name, book.direction(part, pin), net, lifted, look.words(), look.expected(),
                latest(state, part, pin, place));
    }

    /** The last reading that was pinned to the pin itself. */
    private static ReadingMark latest(JobState state, Part part, Pin pin, Place place) {
        ReadingMark last = null;
        for (ReadingMark r : state.readings()) {
            boolean named = r.place() instanceof Place.OfPin p && p.ref().equalsIgnoreCase(part.ref())
                    && (p.pin().equals(pin.number()) || p.pin().equalsIgnoreCase(pin.name())
                            || r.place().text().equalsIgnoreCase(place.text()));
            if (named) {
                last = r;
            }
        }
        return last;
    }
}
