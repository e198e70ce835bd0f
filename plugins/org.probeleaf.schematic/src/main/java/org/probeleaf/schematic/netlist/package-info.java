// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** What a sheet says is connected: sheets, parts, pins, nets, and the places where the reading is unsure. */
package org.probeleaf.schematic.netlist;
