// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.probes;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;

import org.probeleaf.benchmark.probes.GateNetwork.Stuck;
import org.probeleaf.diagnosis.Diagnosis;
import org.probeleaf.diagnosis.Finding;
import org.probeleaf.diagnosis.Given;
import org.probeleaf.diagnosis.Observation;
import org.probeleaf.diagnosis.Seen;
import org.probeleaf.schematic.place.Place;

/**
 * One fault in one network under one set of inputs that shows it at an output: how many probes find it.
 *
 * @param gates    size of the network
 * @param classes  single stuck-at faults that agree with the outputs, those with the same levels everywhere as one
 * @param probes   probes that the diagnosis asked for
 * @param backward probes that going back from the failing output needs
 * @param found    whether the true part is the suspect, or one of those that cannot be told apart
 * @param settled  whether the faults that agree with all that was seen give one pattern of levels, or are all of one part
 * @param mean     processor time for one answer on the average, in seconds
 * @param longest  the longest processor time for one answer, in seconds
 */
record Hunt(int gates, int classes, int probes, int backward, boolean found, boolean settled,
        double mean, double longest) {

    private static final int MOST_TRIES = 500;

    /** Hunts a fault of a network that chance chooses, with inputs that chance finds; null where none shows it. */
    static Hunt of(GateNetwork network, Diagnosis sound, Random random) {
        List<Stuck> all = network.faults();
        Stuck fault = all.get(random.nextInt(all.size()));
        for (int i = 0; i < MOST_TRIES; i++) {
            boolean[] given = new boolean[network.inputs()];
            for (int s = 0; s < given.length; s++) {
                given[s] = random.nextBoolean();
            }
            boolean[] is = network.levels(given, fault);
            boolean[] due = network.levels(given, null);
            if (network.outputs().stream().anyMatch(o -> is[o] != due[o])) {
                return hunt(network, sound, given, fault);
            }
        }
        return null;
    }

    private static Hunt hunt(GateNetwork network, Diagnosis sound, boolean[] given, Stuck fault) {
        boolean[] is = network.levels(given, fault);
        List<Given> held = new ArrayList<>();
        for (int s = 0; s < given.length; s++) {
            held.add(new Given(new Place.OfNet(network.net(s)), given[s]));
        }
        List<Observation> seen = new ArrayList<>();
        for (int output : network.outputs()) {
            seen.add(new Observation(new Place.OfNet(network.net(output)), is[output] ? Seen.HIGH : Seen.LOW));
        }
        Diagnosis diagnosis = sound.given(held).with(seen);
        Set<Integer> looked = new TreeSet<>(network.outputs());
        double longest = 0;
        double total = 0;
        int answers = 0;
        while (true) {
            long start = AnswerCommand.processor();
            Finding finding = diagnosis.finding();
            double took = (AnswerCommand.processor() - start) / 1e9;
            longest = Math.max(longest, took);
            total += took;
            answers++;
            if (finding.next() == null) {
                boolean found = finding.suspects().stream().anyMatch(s -> s.ref().equals(GateNetwork.ref(fault.gate())));
                return new Hunt(network.gates().size(), patterns(network, given, is, network.outputs()).size(),
                        looked.size() - network.outputs().size(),
                        backward(network, is, network.levels(given, null)), found,
                        settled(network, given, is, looked), total / answers, longest);
            }
            String net = finding.next().net().id();
            looked.add(signal(network, net));
            diagnosis = diagnosis.with(List.of(new Observation(new Place.OfNet(net),
                    is[signal(network, net)] ? Seen.HIGH : Seen.LOW)));
        }
    }

    private static int signal(GateNetwork network, String net) {
        int number = Integer.parseInt(net.replaceAll("\\D", "")) - 1;
        return net.startsWith("IN") ? number : network.inputs() + number;
    }

    private static boolean settled(GateNetwork network, boolean[] given, boolean[] seen, Set<Integer> looked) {
        Map<List<Boolean>, Set<Integer>> left = patterns(network, given, seen, looked);
        Set<Integer> gates = new TreeSet<>();
        left.values().forEach(gates::addAll);
        return left.size() == 1 || gates.size() == 1;
    }

    /** Single stuck-at faults that agree with what was seen, by the levels that they make; with the gates that have them. */
    private static Map<List<Boolean>, Set<Integer>> patterns(GateNetwork network, boolean[] given, boolean[] seen,
            Collection<Integer> looked) {
        Map<List<Boolean>, Set<Integer>> patterns = new HashMap<>();
        for (Stuck fault : network.faults()) {
            boolean[] level = network.levels(given, fault);
            if (looked.stream().allMatch(o -> level[o] == seen[o])) {
                List<Boolean> pattern = new ArrayList<>();
                for (boolean l : level) {
                    pattern.add(l);
                }
                patterns.computeIfAbsent(pattern, p -> new TreeSet<>()).add(fault.gate());
            }
        }
        return patterns;
    }

    /**
     * Probes that it takes to go back from the first failing output: the inputs of a gate in order, on from the first
     * that is wrong, until all inputs of a gate are right.
     */
    private static int backward(GateNetwork network, boolean[] is, boolean[] due) {
        int at = network.outputs().stream().filter(o -> is[o] != due[o]).findFirst().orElseThrow();
        Set<Integer> probed = new HashSet<>();
        Deque<Integer> open = new ArrayDeque<>(List.of(at));
        while (!open.isEmpty()) {
            int signal = open.poll();
            for (int in : network.gates().get(signal - network.inputs()).in()) {
                if (in >= network.inputs()) {
                    probed.add(in);
                    if (is[in] != due[in]) {
                        open.add(in);
                        break;
                    }
                }
            }
        }
        return probed.size();
    }
}
