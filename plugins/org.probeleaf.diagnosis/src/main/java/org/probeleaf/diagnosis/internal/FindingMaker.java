// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.internal;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.diagnosis.Finding;
import org.probeleaf.diagnosis.Given;
import org.probeleaf.diagnosis.NextProbe;
import org.probeleaf.diagnosis.Observation;
import org.probeleaf.diagnosis.circuit.Circuit;
import org.probeleaf.diagnosis.circuit.Level;
import org.probeleaf.diagnosis.circuit.Node;
import org.probeleaf.diagnosis.fault.Priors;
import org.probeleaf.diagnosis.simulation.Evidence;
import org.probeleaf.diagnosis.simulation.FaultFinder;
import org.probeleaf.diagnosis.simulation.Simulator;
import org.probeleaf.schematic.partbook.PartBook;

/** Puts a finding together: what does not fit, what would explain it, where to look next. */
public final class FindingMaker {

    /** A reading that agrees less than this with a sound board does not fit it. */
    private static final double FITS = 0.05;

    private final Places places;
    private final Circuit circuit;
    private final PartBook book;
    private final Priors priors;
    private final Evidence evidence;

    public FindingMaker(Places places, PartBook book, Priors priors, List<Given> given,
            List<Observation> observations) {
        this.places = places;
        this.circuit = places.circuit();
        this.book = book;
        this.priors = priors;
        Evidence known = Evidence.none(circuit);
        for (Given g : given) {
            known = known.given(places.find(g.at()).node().index(), g.high() ? Level.HIGH : Level.LOW);
        }
        for (Observation o : observations) {
            known = known.seen(places.find(o.at()).node().index(), sight(o));
        }
        this.evidence = known;
    }

    private static Evidence.Sight sight(Observation o) {
        return switch (o.seen()) {
            case GOOD -> Evidence.Sight.GOOD;
            case BAD -> Evidence.Sight.BAD;
            case LOW -> Evidence.Sight.LOW;
            case HIGH -> Evidence.Sight.HIGH;
        };
    }

    /** Works it out. */
    public Finding make() {
        Simulator simulator = new Simulator(circuit, evidence);
        Logic logic = new Logic(circuit, evidence, simulator, part -> priors.of(circuit.parts().get(part), book));
        List<Node> wrong = circuit.nodes().stream().filter(n -> evidence.isSeen(n.index()))
                .filter(n -> simulator.agreement(n.index(), simulator.base(n.index())) < FITS).toList();
        boolean sound = wrong.isEmpty() && logic.diagnoses().size() == 1 && logic.diagnoses().get(0).isEmpty();
        if (sound) {
            return new Finding(List.of(), List.of(), null, List.of(), List.of(
                    "Nothing that was seen is wrong on a sound board: say of at least one place that it is bad."));
        }
        FaultFinder finder = new FaultFinder(circuit, evidence, simulator, priors, book);
        Ranking ranking = new Ranking(circuit, evidence, simulator, finder, logic, wrong);
        NextProbe next = new Prober(circuit, evidence, simulator, ranking).next();
        Reasons reasons = new Reasons(circuit, evidence, simulator, wrong);
        return new Finding(new SuspectWriter(circuit, reasons).write(ranking.weighed()),
                logic.refs(logic.diagnoses().stream().filter(d -> !d.isEmpty()).toList()), next,
                logic.refs(logic.conflicts()), notes(logic, ranking));
    }

    private List<String> notes(Logic logic, Ranking ranking) {
        List<String> notes = new ArrayList<>();
        if (!ranking.explainedByOne()) {
            notes.add("No single fault explains all that was seen: either several parts are at fault, or a reading is"
                    + " mistaken.");
        }
        if (logic.wasCut()) {
            notes.add("Diagnoses of several parts were not looked for to the end.");
        }
        if (logic.wasLoose()) {
            notes.add("The circuit is too large to try every level; some diagnoses may not hold.");
        }
        if (circuit.nodes().stream().noneMatch(n -> n.rail() && evidence.isSeen(n.index()))) {
            notes.add("The supplies are taken to be good; measure them first.");
        }
        return notes;
    }
}
