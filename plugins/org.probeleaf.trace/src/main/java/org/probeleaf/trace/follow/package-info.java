// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/**
 * A signal followed from net to net. {@link org.probeleaf.trace.follow.SignalNetwork} is built once of a netlist and the
 * part book:
 * <ol>
 * <li>each net is told to be a signal, a supply or ground;</li>
 * <li>each part gives the ways through it, {@link org.probeleaf.trace.follow.Step}, by its class or, for a chip, by the
 * sections that the part book knows: this is the one place that says what conducts;</li>
 * <li>nets and ways make a directed graph.</li>
 * </ol>
 * Asked, it gives a tree of what a signal reaches ({@link org.probeleaf.trace.follow.Followed}), the ways from one place
 * to another, and what a lifted pin or a part that is out cuts off.
 */
package org.probeleaf.trace.follow;
