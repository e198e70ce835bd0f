// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/**
 * The vocabulary every other bundle speaks: geometry, netlist, places, quantities, the part book and the JSON of
 * the netlist document. Nothing here reads files of its own accord, draws, or knows another bundle of ours.
 */
package org.probeleaf.schematic;
