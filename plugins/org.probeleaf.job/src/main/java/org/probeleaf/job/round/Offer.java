// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.round;

import java.util.Optional;

import org.probeleaf.job.JobState;
import org.probeleaf.job.expectation.LogicFamily;
import org.probeleaf.job.expectation.RailName;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.partbook.PinType;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.trace.SignalGraph;
import org.probeleaf.trace.TracedPin;

/**
 * What a place probably should read, for a person to take or to leave: the voltage that the net's name says, or the levels
 * of the logic family of the part whose pin it is.
 *
 * @param expected as an expectation is typed ({@code "5 V\u00b15%"}, {@code "74LS"})
 * @param why      where that comes from, for a person ({@code "the net is named +5V"}, {@code "IC4 is a 74LS08"})
 */
public record Offer(String expected, String why) {

    /** What a place should read; the name of a supply net counts first, then the part. Empty where nothing can be said. */
    public static Optional<Offer> at(JobState state, PartBook book, Place place) {
        return rail(state, book, place).or(() -> family(state, book, place));
    }

    /** What the name of the net says. */
    public static Optional<Offer> rail(JobState state, PartBook book, Place place) {
        return net(state, book, place).map(Net::name)
                .flatMap(name -> RailName.expectation(name).map(e -> new Offer(e.text(), "the net is named " + name)));
    }

    /**
     * The levels of the logic family of the part whose pin it is; of a net those of the first part on it that has any, as
     * all parts on a net must understand one another.
     */
    public static Optional<Offer> family(JobState state, PartBook book, Place place) {
        Netlist board = state.onBench();
        Optional<Net> net = net(state, book, place);
        if (board == null || net.isEmpty()) {
            return Optional.empty();
        }
        if (place instanceof Place.OfPin pin) {
            Optional<Offer> own = board.part(pin.ref()).flatMap(p -> p.pins().stream().filter(q -> isNamed(q, pin.pin()))
                    .findFirst().flatMap(q -> family(book, board, p, q, net.get())));
            if (own.isPresent()) {
                return own;
            }
        }
        for (TracedPin pin : SignalGraph.of(board, book).pinsOn(net.get().id())) {
            Optional<Offer> offer = family(book, board, pin.part(), pin.pin(), net.get());
            if (offer.isPresent()) {
                return offer;
            }
        }
        return Optional.empty();
    }

    private static Optional<Offer> family(PartBook book, Netlist board, Part part, Pin pin, Net net) {
        PinType type = book.pin(part, pin).orElse(null);
        return LogicFamily.named(PinLook.of(part, pin, type, net, board, false).expected())
                .map(f -> new Offer(f.name(), part.ref() + " is a " + part.value()));
    }

    private static boolean isNamed(Pin pin, String name) {
        return name.equals(pin.number()) || name.equalsIgnoreCase(pin.name());
    }

    private static Optional<Net> net(JobState state, PartBook book, Place place) {
        return state.onBench() == null ? Optional.empty() : SignalGraph.of(state.onBench(), book).netAt(place);
    }
}
