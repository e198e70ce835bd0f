// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8.symbol;

import org.probeleaf.schematic.geometry.Point;

/**
 * A pin of a symbol, in grid steps from the symbol's origin.
 *
 * @param number as printed beside its line, or null where none is printed
 * @param name   as printed inside the body, or null where none is printed
 * @param end    where a wire meets it; whole grid steps
 * @param root   where its line meets the body
 */
public record SymbolPin(String number, String name, Point end, Point root) {
}
