// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.probeleaf.diagnosis.Finding;
import org.probeleaf.diagnosis.Given;
import org.probeleaf.diagnosis.NextProbe;
import org.probeleaf.diagnosis.Observation;
import org.probeleaf.diagnosis.circuit.Terminal;
import org.probeleaf.diagnosis.fault.Priors;
import org.probeleaf.schematic.partbook.PartBook;

/** Puts a finding together: what does not fit, what would explain it, where to look next. */
public final class FindingMaker {

    private final List<Situation> situations;
    private final Situation now;
    private final Logic logic;

    private FindingMaker(List<Situation> situations, PartBook book, Priors priors) {
        this.situations = situations;
        this.now = situations.get(situations.size() - 1);
        this.logic = new Logic(situations, part -> priors.of(part, book));
    }

    /**
     * One board state with what was seen on it.
     *
     * @param places on its circuit
     */
    public record Measured(Places places, List<Given> given, List<Observation> observations) {
    }

    /**
     * Works out a finding.
     *
     * @param measured boards as they were measured, the board as it is last
     */
    public static Finding make(List<Measured> measured, PartBook book, Priors priors) {
        return new FindingMaker(measured.stream()
                .map(m -> new Situation(m.places(), book, priors, m.given(), m.observations())).toList(), book, priors)
                .make();
    }

    /** Works it out. */
    private Finding make() {
        if (logic.allSound() && situations.stream().allMatch(s -> s.wrong().isEmpty())) {
            return new Finding(List.of(), List.of(), null, List.of(), List.of(
                    "Nothing that was seen is wrong on a sound board: say of at least one place that it is bad."));
        }
        Ranking ranking = new Ranking(situations, logic);
        NextProbe next = new Prober(now, ranking.weighed()).next();
        List<Reasons> reasons = situations.stream().map(Reasons::new).toList();
        return new Finding(new SuspectWriter(situations, reasons).write(ranking.weighed()),
                logic.diagnoses().stream().filter(d -> !d.isEmpty()).toList(), next, logic.conflicts(),
                notes(ranking, next));
    }

    private List<String> notes(Ranking ranking, NextProbe next) {
        List<String> notes = new ArrayList<>();
        if (next == null) {
            lift(ranking.weighed()).ifPresent(notes::add);
        }
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
        if (situations.stream().allMatch(s -> s.circuit().nodes().stream()
                .noneMatch(n -> n.rail() && s.evidence().isSeen(n.index())))) {
            notes.add("The supplies are taken to be good; measure them first.");
        }
        return notes;
    }

    /** Where a driver and a load of one net are left, lifting a pin tells them apart. */
    private Optional<String> lift(List<Weighed> weighed) {
        for (Weighed driver : weighed) {
            Terminal pin = driver.faults().get(0).terminal();
            if (pin != null && driver.faults().size() == 1 && drives(pin)) {
                return weighed.stream().filter(w -> w.faults().size() == 1).map(w -> w.faults().get(0))
                        .filter(f -> f.terminal() != null && f.terminal().node() == pin.node()
                                && !f.ref().equals(driver.faults().get(0).ref())).findFirst()
                        .map(load -> "Probing does not tell " + driver.faults().get(0).ref() + " from " + load.ref()
                                + ": lift " + pin.title() + " for now, and read the pin and "
                                + now.circuit().nodes().get(pin.node()).title() + " each by itself.");
            }
        }
        return Optional.empty();
    }

    private boolean drives(Terminal pin) {
        return now.circuit().terminals().contains(pin) && now.circuit().nodes().get(pin.node()).drivers().stream()
                .anyMatch(c -> now.circuit().cells().get(c).out() == pin);
    }
}
