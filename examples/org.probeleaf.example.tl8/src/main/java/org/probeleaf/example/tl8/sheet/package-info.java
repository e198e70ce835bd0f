// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/**
 * The sheet as a model and what follows from it.
 *
 * <ol>
 * <li>A {@link org.probeleaf.example.tl8.sheet.Page} is filled with parts, wires, names and notes on a grid.</li>
 * <li>{@link org.probeleaf.example.tl8.sheet.DrawingRules} finds what a draughtsman would not let pass.</li>
 * <li>{@link org.probeleaf.example.tl8.sheet.Connections} derives the netlist from the model, never from ink.</li>
 * <li>{@link org.probeleaf.example.tl8.sheet.Inking} turns the model into ink.</li>
 * </ol>
 */
package org.probeleaf.example.tl8.sheet;
