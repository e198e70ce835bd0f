// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/**
 * The symbols of the sheet, our own drawing. A symbol is drawn once, in grid steps round its own origin, and placed
 * turned and moved. One grid step is {@link org.probeleaf.example.tl8.symbol.Symbol#GRID} points.
 */
package org.probeleaf.example.tl8.symbol;
