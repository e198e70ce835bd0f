// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/**
 * Whether what drives a net can drive it: {@link org.probeleaf.trace.drive.LogicLink} sets one family against another,
 * {@link org.probeleaf.trace.drive.PullUp} works out a pull-up resistor, and
 * {@link org.probeleaf.trace.drive.DriveBudget} does the sum of a whole net. {@link org.probeleaf.trace.drive.DriverKind}
 * says what may let go of the net, and what makes it.
 */
package org.probeleaf.trace.drive;
