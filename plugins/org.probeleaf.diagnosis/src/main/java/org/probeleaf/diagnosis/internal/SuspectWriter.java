// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.probeleaf.diagnosis.PossibleFault;
import org.probeleaf.diagnosis.Suspect;
import org.probeleaf.diagnosis.circuit.Circuit;
import org.probeleaf.diagnosis.circuit.Node;
import org.probeleaf.diagnosis.internal.Ranking.Weighed;
import org.probeleaf.diagnosis.simulation.Evidence;
import org.probeleaf.diagnosis.simulation.Fault;
import org.probeleaf.diagnosis.simulation.Simulator;

/** Puts weighed faults together by part, with the reason for each in words. */
final class SuspectWriter {

    private final Circuit circuit;
    private final Node wrong;

    SuspectWriter(Circuit circuit, Evidence evidence, Simulator simulator, List<Node> wrong) {
        this.circuit = circuit;
        this.wrong = wrong.get(0);
    }

    List<Suspect> write(Ranking ranking) {
        Map<Integer, List<Weighed>> byPart = new LinkedHashMap<>();
        ranking.weighed().forEach(w -> byPart.computeIfAbsent(w.fault().part(), p -> new ArrayList<>()).add(w));
        List<Suspect> suspects = new ArrayList<>();
        byPart.forEach((part, faults) -> suspects.add(suspect(part, faults)));
        suspects.sort(Comparator.comparingDouble(Suspect::weight).reversed());
        return suspects;
    }

    private Suspect suspect(int part, List<Weighed> faults) {
        Fault first = faults.get(0).fault();
        double weight = faults.stream().mapToDouble(Weighed::weight).sum();
        return new Suspect(circuit.ref(part), label(first), first.kind(), first.text(), weight,
                "works on " + wrong.title() + ", which reads bad", faults.stream().map(w -> new PossibleFault(
                        label(w.fault()), w.fault().kind(), w.fault().text(), w.weight())).toList());
    }

    private static String label(Fault fault) {
        return fault.terminal() == null ? null : fault.terminal().label();
    }
}
