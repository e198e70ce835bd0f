// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/**
 * The board as it is. {@link org.probeleaf.trace.board.BoardState} puts what was done to a board to the netlist of its
 * drawing, in these steps: tracks cut at a spot part their nets ({@code NetCut}); then, in their order, pins come off,
 * parts leave and come, links join nets ({@code WorkingBoard}); what stands then is written as a netlist that tracing,
 * diagnosis and the window use like any other. The drawing's netlist stays as it is, so a change is undone by leaving
 * it out of the list.
 */
package org.probeleaf.trace.board;
