// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.probe;

import java.util.Map;

/**
 * One explanation of what was seen.
 *
 * @param suspect what is to be found out: explanations with one suspect need not be told apart
 * @param weight  its share, 0 or more
 * @param bad     for each place where it says so, how likely something is wrong there, 0 to 1
 */
public record Candidate(int suspect, double weight, Map<Integer, Double> bad) {

    public Candidate {
        bad = Map.copyOf(bad);
    }
}
