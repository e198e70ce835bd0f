// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/**
 * The board as a circuit: nodes (nets, and pins that are on none), terminals (pins on nodes) and cells (what makes an
 * output of a part out of its inputs, where the part book knows it). {@code CircuitBuilder} makes it of a netlist.
 */
package org.probeleaf.diagnosis.circuit;
