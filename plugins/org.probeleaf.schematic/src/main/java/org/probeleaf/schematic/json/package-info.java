// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** The netlist document: written and read as JSON. */
package org.probeleaf.schematic.json;
