// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import org.probeleaf.diagnosis.PossibleFault;
import org.probeleaf.diagnosis.Suspect;
import org.probeleaf.diagnosis.simulation.Fault;
import org.probeleaf.schematic.netlist.NaturalOrder;

/** Puts weighed explanations together by part. */
final class SuspectWriter {

    private final List<Situation> situations;
    private final List<Reasons> reasons;

    /** For board states, each with what gives its reasons, the board as it is last. */
    SuspectWriter(List<Situation> situations, List<Reasons> reasons) {
        this.situations = situations;
        this.reasons = reasons;
    }

    private record Share(Fault fault, double weight, Weighed from) {
    }

    List<Suspect> write(List<Weighed> weighed) {
        Map<String, List<Share>> byPart = new LinkedHashMap<>();
        for (Weighed w : weighed) {
            for (Fault fault : w.faults()) {
                byPart.computeIfAbsent(fault.ref(), p -> new ArrayList<>())
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
        Map<String, Share> byFault = new LinkedHashMap<>();
        for (Share s : shares) {
            byFault.merge(s.fault().key(), s, (a, b) -> new Share(a.fault(), a.weight() + b.weight(), a.from()));
        }
        List<Share> all = new ArrayList<>(byFault.values());
        all.sort(Comparator.comparingDouble(Share::weight).reversed());
        return all;
    }

    private Suspect suspect(List<Share> shares) {
        Fault first = shares.get(0).fault();
        double weight = shares.stream().mapToDouble(Share::weight).sum();
        return new Suspect(first.ref(), first.pin(), first.kind(), words(shares), weight,
                why(first, shares.get(0).from()), shares.stream().map(s -> new PossibleFault(s.fault().pin(),
                        s.fault().kind(), s.fault().text(), s.weight())).toList());
    }

    /** The likeliest fault, with the others of the same pin that are nearly as likely. */
    private static String words(List<Share> shares) {
        Share first = shares.get(0);
        String pin = "pin " + first.fault().pin() + " ";
        if (!first.fault().text().startsWith(pin)) {
            return first.fault().text();
        }
        List<String> same = shares.stream().filter(s -> s.weight() >= first.weight() / 2)
                .filter(s -> Objects.equals(s.fault().pin(), first.fault().pin())).map(s -> s.fault().text())
                .filter(t -> t.startsWith(pin)).map(t -> t.substring(pin.length())).distinct().limit(3).toList();
        return pin + (same.size() == 1 ? same.get(0) : String.join(", ", same.subList(0, same.size() - 1)) + " or "
                + same.get(same.size() - 1));
    }

    /** The reason on the board as it is, else on the last board state on which the fault shows. */
    private String why(Fault fault, Weighed from) {
        for (int i = situations.size() - 1; i > 0; i--) {
            Situation s = situations.get(i);
            Fault here = s.same(fault);
            if (from.faults().size() > 1 || here != null && shows(s, here)) {
                return reasons.get(i).why(here == null ? fault : here, from);
            }
        }
        Fault first = situations.size() == 1 ? fault : situations.get(0).same(fault);
        return (situations.size() == 1 ? "" : "as the board was: ")
                + reasons.get(0).why(first == null ? fault : first, from);
    }

    private static boolean shows(Situation s, Fault fault) {
        return s.wrong().stream().anyMatch(w -> s.change(fault).nodes().contains(w.index()))
                || s.apart().contains(fault.terminal());
    }
}
