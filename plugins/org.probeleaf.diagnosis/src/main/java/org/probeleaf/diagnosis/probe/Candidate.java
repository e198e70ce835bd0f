// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.probe;

import java.util.Map;

/**
 * One explanation of what was seen.
 *
 * @param group  what is to be found out: candidates of one group need not be told apart
 * @param weight its share, 0 or more
 * @param bad    for each place where it says so, how likely something is wrong there, 0 to 1
 */
public record Candidate(int group, double weight, Map<Integer, Double> bad) {
}
