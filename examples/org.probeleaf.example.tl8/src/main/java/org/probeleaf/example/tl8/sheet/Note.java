// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8.sheet;

import org.probeleaf.example.tl8.ink.Ink;

/**
 * Ink that says or frames something and connects nothing.
 *
 * @param ink the ink, in points
 */
public record Note(Ink ink) {
}
