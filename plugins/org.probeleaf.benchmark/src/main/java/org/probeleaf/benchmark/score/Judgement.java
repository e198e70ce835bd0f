// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.score;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

import org.probeleaf.benchmark.score.ReadPins.ReadPin;
import org.probeleaf.benchmark.score.Truth.TrueNet;
import org.probeleaf.benchmark.score.Truth.TruePin;
import org.probeleaf.schematic.netlist.Netlist;

/** A reading held against the truth: figures, and for each net what is right and wrong about it. */
public final class Judgement {

    private final Truth truth;
    private final ReadPins read;
    private final PinMatch match;
    private final Map<String, Integer> sizes = new HashMap<>();
    private final List<NetVerdict> verdicts = new ArrayList<>();
    private final Map<String, TrueNet> owners = new HashMap<>();
    private final Set<ReadPin> matched = new HashSet<>();

    /**
     * What became of a true net of two pins or more.
     *
     * @param main   id of the read net that has most of its pins, or null
     * @param exact  whether that is all of them and no other
     * @param own    its pins that were read on the main net
     * @param away   its pins that were read on another net
     * @param unread its pins that were not read
     */
    record NetVerdict(TrueNet net, String main, boolean exact, List<ReadPin> own, List<ReadPin> away,
            List<TruePin> unread) {
    }

    private Judgement(Truth truth, ReadPins read) {
        this.truth = truth;
        this.read = read;
        this.match = PinMatch.of(truth, read);
        read.pins().forEach(p -> sizes.merge(p.net(), 1, Integer::sum));
        truth.nets().stream().filter(n -> n.pins().size() > 1).forEach(n -> verdicts.add(judge(n)));
        Map<String, Integer> most = new HashMap<>();
        for (NetVerdict v : verdicts) {
            netsOf(v.net()).forEach((net, pins) -> {
                if (pins > most.getOrDefault(net, 0)) {
                    most.put(net, pins);
                    owners.put(net, v.net());
                }
            });
            matched.addAll(v.own());
            matched.addAll(v.away());
        }
    }

    static Judgement of(Netlist netlist, Truth truth) {
        return new Judgement(truth, ReadPins.of(netlist, truth));
    }

    List<NetVerdict> verdicts() {
        return verdicts;
    }

    /** The true net that has most pins of a read net, or null for a net without any. */
    TrueNet owner(String net) {
        return owners.get(net);
    }

    /** Pins of a read net that stand for no true pin. */
    List<ReadPin> foreign(String net) {
        return read.pins().stream().filter(p -> p.net().equals(net) && !matched.contains(p)).toList();
    }

    /** Ids of the read nets that are some true net exactly. */
    Set<String> rightNets() {
        Set<String> right = new HashSet<>();
        verdicts.stream().filter(NetVerdict::exact).forEach(v -> right.add(v.main()));
        return right;
    }

    /**
     * Ids of the read nets that can be right or wrong: those with two counted pins or more, and those with one that
     * truly belongs with others. A net of one pin that is one in truth too is not scored.
     */
    Set<String> judgedNets() {
        Set<String> judged = new HashSet<>();
        sizes.forEach((net, size) -> {
            if (size > 1) {
                judged.add(net);
            }
        });
        verdicts.forEach(v -> v.net().pins().stream().map(p -> match.of(p.key())).filter(Objects::nonNull)
                .forEach(p -> judged.add(p.net())));
        return judged;
    }

    /** The figures, as the scorer beside the sheets defines them. */
    public Score score() {
        Set<String> good = new HashSet<>(read.refs());
        good.retainAll(truth.refs());
        double parts = 2.0 * good.size() / Math.max(1, read.refs().size() + truth.refs().size());
        int exact = (int) verdicts.stream().filter(NetVerdict::exact).count();
        Map<String, Integer> pinsOf = new HashMap<>();
        truth.nets().forEach(n -> n.pins().forEach(p -> pinsOf.merge(p.key().ref(), 1, Integer::sum)));
        int many = pinsOf.values().stream().mapToInt(Integer::intValue).filter(n -> n > 2).sum();
        return new Score(parts, (double) exact / Math.max(1, verdicts.size()), bcubed(),
                (double) match.named() / Math.max(1, many), truth.refs().size(), verdicts.size(), exact);
    }

    private double bcubed() {
        double precision = 0;
        double recall = 0;
        int pins = 0;
        int matched = 0;
        for (NetVerdict v : verdicts) {
            Map<String, Integer> here = netsOf(v.net());
            for (TruePin pin : v.net().pins()) {
                pins++;
                ReadPin got = match.of(pin.key());
                if (got != null) {
                    matched++;
                    recall += (double) here.get(got.net()) / v.net().pins().size();
                    precision += (double) here.get(got.net()) / sizes.get(got.net());
                }
            }
        }
        double p = matched == 0 ? 0 : precision / matched;
        double r = pins == 0 ? 0 : recall / pins;
        return p + r == 0 ? 0 : 2 * p * r / (p + r);
    }

    private Map<String, Integer> netsOf(TrueNet net) {
        Map<String, Integer> here = new HashMap<>();
        for (TruePin pin : net.pins()) {
            ReadPin got = match.of(pin.key());
            if (got != null) {
                here.merge(got.net(), 1, Integer::sum);
            }
        }
        return here;
    }

    private NetVerdict judge(TrueNet net) {
        String main = netsOf(net).entrySet().stream()
                .max(Map.Entry.<String, Integer>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey).orElse(null);
        List<ReadPin> away = new ArrayList<>();
        List<TruePin> unread = new ArrayList<>();
        List<ReadPin> own = new ArrayList<>();
        for (TruePin pin : net.pins()) {
            ReadPin got = match.of(pin.key());
            if (got == null) {
                unread.add(pin);
            } else if (got.net().equals(main)) {
                own.add(got);
            } else {
                away.add(got);
            }
        }
        // Counted, not listed: the sizes are what the scorer compares.
        boolean exact = away.isEmpty() && unread.isEmpty() && main != null && sizes.get(main) == net.pins().size();
        return new NetVerdict(net, main, exact, own, away, unread);
    }
}
