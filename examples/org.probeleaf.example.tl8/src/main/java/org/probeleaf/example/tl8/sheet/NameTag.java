// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8.sheet;

import org.probeleaf.schematic.netlist.LabelKind;

/**
 * A name that joins whatever bears it, on every page.
 *
 * @param text   the name
 * @param at     the spot that is named; on a wire or at a pin
 * @param kind   what it is drawn as
 * @param right  for an off-sheet flag: whether it lies to the right of its spot
 * @param leaves for an off-sheet flag: whether the signal leaves the page there rather than enters
 * @param where  for an off-sheet flag: the page on the other side, in words; else null
 */
public record NameTag(String text, Spot at, LabelKind kind, boolean right, boolean leaves, String where) {

    /** A name of any kind but an off-sheet flag. */
    static NameTag plain(String text, Spot at, LabelKind kind) {
        return new NameTag(text, at, kind, true, true, null);
    }
}
