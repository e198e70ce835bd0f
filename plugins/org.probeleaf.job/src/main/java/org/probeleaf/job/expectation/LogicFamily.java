// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.expectation;

/**
 * The voltage levels of a logic family at one supply.
 *
 * @param name    as typed and shown ({@code "74LS"}, {@code "74HC@4.5V"})
 * @param vilMax  highest voltage that an input takes for low, in volts
 * @param vihMin  lowest voltage that an input takes for high, in volts
 * @param volMax  highest voltage that an output gives for low, in volts
 * @param vohMin  lowest voltage that an output gives for high, in volts
 */
public record LogicFamily(String name, double vilMax, double vihMin, double volMax, double vohMin) {
}
