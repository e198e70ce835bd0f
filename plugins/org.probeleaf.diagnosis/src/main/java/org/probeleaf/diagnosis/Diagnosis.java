// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.diagnosis.circuit.Circuit;
import org.probeleaf.diagnosis.fault.Priors;
import org.probeleaf.diagnosis.internal.FindingMaker;
import org.probeleaf.diagnosis.internal.Places;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.trace.SignalGraph;
import org.probeleaf.trace.UnknownPlaceException;

/**
 * Says which parts may be to blame for what was seen on a board, and where to probe next. Immutable; any thread may use
 * it. The circuit is made once; {@link #with} and {@link #given} share it.
 */
public final class Diagnosis {

    private final Places places;
    private final PartBook book;
    private final Priors priors;
    private final List<Given> given;
    private final List<Observation> observations;

    private Diagnosis(Places places, PartBook book, Priors priors, List<Given> given, List<Observation> observations) {
        this.places = places;
        this.book = book;
        this.priors = priors;
        this.given = List.copyOf(given);
        this.observations = List.copyOf(observations);
    }

    /**
     * Makes the circuit of a board.
     *
     * @param board  as it is, with what was lifted, cut and linked
     * @param book   what is known of its parts
     * @param priors how readily parts fail
     */
    public static Diagnosis of(Netlist board, PartBook book, Priors priors) {
        Circuit circuit = Circuit.of(board, book);
        return new Diagnosis(new Places(circuit, SignalGraph.of(board, book)), book, priors, List.of(), List.of());
    }

    /**
     * With more that was seen. Of one net the last word counts, unless different pins of it read differently.
     *
     * @throws UnknownPlaceException where the board has no such place, or a part on several nets is named
     */
    public Diagnosis with(List<Observation> more) {
        more.forEach(o -> places.find(o.at()));
        List<Observation> all = new ArrayList<>(observations);
        all.addAll(more);
        return new Diagnosis(places, book, priors, given, all);
    }

    /**
     * With nets that somebody holds at a level.
     *
     * @throws UnknownPlaceException where the board has no such place, or a part on several nets is named
     */
    public Diagnosis given(List<Given> more) {
        more.forEach(g -> places.find(g.at()));
        List<Given> all = new ArrayList<>(given);
        all.addAll(more);
        return new Diagnosis(places, book, priors, all, observations);
    }

    /** With other weights of faults. */
    public Diagnosis with(Priors other) {
        return new Diagnosis(places, book, other, given, observations);
    }

    /** What follows from all that was seen. Takes up to some tenths of a second on a large board. */
    public Finding finding() {
        return new FindingMaker(places, book, priors, given, observations).make();
    }
}
