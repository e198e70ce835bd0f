// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/**
 * Where a signal goes. A netlist with the part book makes a {@link org.probeleaf.trace.SignalGraph}; asked for a place
 * it answers with the net there, and what drives and loads it.
 * {@link org.probeleaf.trace.NetLocator} answers what is under a spot of a page, fast enough for a moving pointer.
 */
package org.probeleaf.trace;
