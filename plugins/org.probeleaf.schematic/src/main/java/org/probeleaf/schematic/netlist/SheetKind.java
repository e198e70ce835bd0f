// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.netlist;

/** How a page carries its drawing. */
public enum SheetKind {
    /** Lines and text as such. */
    VECTOR,
    /** A picture of a drawing. */
    SCAN,
    /** Both, each with a share of the drawing. */
    MIXED
}
