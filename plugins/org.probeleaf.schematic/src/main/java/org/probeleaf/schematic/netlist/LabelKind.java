// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.netlist;

/** What a name on a net is. */
public enum LabelKind {
    /** A plain name on a wire. */
    LABEL,
    /** A supply or ground symbol. */
    POWER,
    /** A connector to another sheet. */
    OFFSHEET,
    /** The name of a bus. */
    BUS
}
