// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.score;

/**
 * How well a sheet was read.
 *
 * @param parts     F1 of the designators found
 * @param exact     share of the true nets read with exactly their pins
 * @param bcubed    BCubed F1 over pins (Bagga and Baldwin, 1998)
 * @param pins      share of the true pins of parts with three pins or more that were read with number or name
 * @param trueParts parts in the truth
 * @param trueNets  nets of two pins or more in the truth
 * @param exactNets of these, how many were read exactly
 */
public record Score(double parts, double exact, double bcubed, double pins, int trueParts, int trueNets,
        int exactNets) {
}
