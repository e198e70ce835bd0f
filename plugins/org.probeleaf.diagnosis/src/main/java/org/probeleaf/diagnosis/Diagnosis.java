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
    private final List<FindingMaker.Measured> earlier;

    private Diagnosis(Places places, PartBook book, Priors priors, List<Given> given, List<Observation> observations,
            List<FindingMaker.Measured> earlier) {
        this.places = places;
        this.book = book;
        this.priors = priors;
        this.given = List.copyOf(given);
        this.observations = List.copyOf(observations);
        this.earlier = List.copyOf(earlier);
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
        return new Diagnosis(new Places(circuit, SignalGraph.of(board, book)), book, priors, List.of(), List.of(),
                List.of());
    }

    /**
     * With more that was seen. Of one place the last word counts; where pins of one net read differently, the way
     * between them is suspected.
     *
     * @throws UnknownPlaceException where the board has no such place, or a part on several nets is named
     */
    public Diagnosis with(List<Observation> more) {
        more.forEach(o -> places.find(o.at()));
        List<Observation> all = new ArrayList<>(observations);
        all.addAll(more);
        return new Diagnosis(places, book, priors, given, all, earlier);
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
        return new Diagnosis(places, book, priors, all, observations, earlier);
    }

    /** With other weights of faults. */
    public Diagnosis with(Priors other) {
        return new Diagnosis(places, book, other, given, observations, earlier);
    }

    /**
     * With what was seen on the same board when it was in another state, as before a pin was lifted: a fault must
     * explain both. Places and the next probe stay those of this board.
     */
    public Diagnosis after(Diagnosis before) {
        List<FindingMaker.Measured> all = new ArrayList<>(before.measured());
        all.addAll(earlier);
        return new Diagnosis(places, book, priors, given, observations, all);
    }

    /** What follows from all that was seen. Takes up to some tenths of a second on a large board. */
    public Finding finding() {
        return FindingMaker.make(measured(), book, priors);
    }

    private List<FindingMaker.Measured> measured() {
        List<FindingMaker.Measured> all = new ArrayList<>(earlier);
        all.add(new FindingMaker.Measured(places, given, observations));
        return all;
    }
}
