// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.partbook;

import java.util.List;

/**
 * A pin of a type of part.
 *
 * @param number on the package the book knows
 * @param role   what it is there for
 * @param names  names in use, the usual one first; empty for a pin that leads nowhere; a leading {@code /} means
 *               active low
 */
public record PinType(String number, PinRole role, List<String> names) {

    public PinType {
        names = List.copyOf(names);
    }

    /** The usual name, or null for a pin that leads nowhere. */
    public String name() {
        return names.isEmpty() ? null : names.get(0);
    }
}
