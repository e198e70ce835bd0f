// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.consistency;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * The least sets that meet every set of a collection. One set is taken in after the other; what does not meet it grows
 * by each of its elements, and what then holds a smaller one is dropped, so that the order of the sets and whether some
 * hold others do not matter. (The tree of Reiter's article loses sets in some orders, as R. Greiner, B. A. Smith and
 * R. W. Wilkerson show in "A correction to the algorithm in Reiter's theory of diagnosis", Artificial Intelligence 41,
 * 1989.)
 */
public final class HittingSets {

    private HittingSets() {
    }

    /**
     * All least hitting sets, the smallest first.
     *
     * @param most sets with more elements than this are left out
     */
    public static List<BitSet> least(List<BitSet> collection, int most) {
        List<BitSet> found = new ArrayList<>(List.of(new BitSet()));
        for (BitSet set : collection) {
            List<BitSet> meeting = new ArrayList<>();
            List<BitSet> grown = new ArrayList<>();
            for (BitSet candidate : found) {
                if (candidate.intersects(set)) {
                    meeting.add(candidate);
                } else if (candidate.cardinality() < most) {
                    set.stream().forEach(e -> {
                        BitSet more = (BitSet) candidate.clone();
                        more.set(e);
                        grown.add(more);
                    });
                }
            }
            for (BitSet more : grown) {
                if (meeting.stream().noneMatch(m -> holds(more, m))) {
                    meeting.add(more);
                }
            }
            found = meeting;
        }
        found.sort(Comparator.comparingInt(BitSet::cardinality).thenComparing(BitSet::toString));
        return found;
    }

    /** Whether a set holds all of another. */
    static boolean holds(BitSet set, BitSet other) {
        BitSet rest = (BitSet) other.clone();
        rest.andNot(set);
        return rest.isEmpty();
    }
}
