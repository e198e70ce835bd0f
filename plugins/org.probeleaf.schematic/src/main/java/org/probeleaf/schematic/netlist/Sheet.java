// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.netlist;

/**
 * One page of a drawing.
 *
 * @param page   1-based page number; in a job of several files the pages count on
 * @param width  of the page as displayed, in points
 * @param height of the page as displayed, in points
 * @param kind   how the page carries its drawing
 */
public record Sheet(int page, double width, double height, SheetKind kind) {
}
