// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.expectation;

/**
 * What is to be said of a reading.
 *
 * @param outcome good, bad or unsure
 * @param reason  why, in a short sentence for a person ({@code "4.2 V is below 4.75 V"})
 */
public record Verdict(Outcome outcome, String reason) {
}
