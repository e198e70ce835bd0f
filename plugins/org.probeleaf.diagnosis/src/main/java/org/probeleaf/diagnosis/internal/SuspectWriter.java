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
import org.probeleaf.diagnosis.simulation.Fault;
import org.probeleaf.schematic.netlist.NaturalOrder;

/** Puts weighed explanations together by part. */
final class SuspectWriter {

    private final Circuit circuit;
    private final Reasons reasons;

    SuspectWriter(Circuit circuit, Reasons reasons) {
        this.circuit = circuit;
        this.reasons = reasons;
    }

    private record Share(Fault fault, double weight, Weighed from) {
    }

    List<Suspect> write(List<Weighed> weighed) {
        Map<Integer, List<Share>> byPart = new LinkedHashMap<>();
        for (Weighed w : weighed) {
            for (Fault fault : w.faults()) {
                byPart.computeIfAbsent(fault.part(), p -> new ArrayList<>())
                        .add(new Share(fault, w.weight() / w.faults().size(), w));
            }
        }
        List<Suspect> suspects = new ArrayList<>();
        byPart.values().forEach(shares -> suspects.add(suspect(merged(shares))));
        suspects.sort(Comparator.comparingDouble(Suspect::weight).reversed()
                .thenComparing(Suspect::ref, NaturalOrder.INSTANCE));
        return suspects;
    }

    /** One share for each fault, the largest first: a part may be wrong together with one part or with another. */
    private static List<Share> merged(List<Share> shares) {
        Map<Fault, Share> byFault = new LinkedHashMap<>();
        for (Share s : shares) {
            byFault.merge(s.fault(), s, (a, b) -> new Share(a.fault(), a.weight() + b.weight(), a.from()));
        }
        List<Share> all = new ArrayList<>(byFault.values());
        all.sort(Comparator.comparingDouble(Share::weight).reversed());
        return all;
    }

    private Suspect suspect(List<Share> shares) {
        Fault first = shares.get(0).fault();
        double weight = shares.stream().mapToDouble(Share::weight).sum();
        return new Suspect(circuit.ref(first.part()), label(first), first.kind(), first.text(), weight,
                reasons.why(first, shares.get(0).from()), shares.stream().map(s -> new PossibleFault(label(s.fault()),
                        s.fault().kind(), s.fault().text(), s.weight())).toList());
    }

    private static String label(Fault fault) {
        return fault.terminal() == null ? null : fault.terminal().label();
    }
}
