// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.netlist;

import java.util.List;
import java.util.Optional;

/**
 * What a drawing says is connected, over all its pages.
 *
 * @param file   name of the file it was read from, without folders
 * @param sha256 of the file's bytes, lower-case hexadecimal
 * @param sheets pages, by rising number
 * @param parts  parts, by designator
 * @param nets   nets, by id
 * @param doubts where the reading is unsure
 */
public record Netlist(String file, String sha256, List<Sheet> sheets, List<Part> parts, List<Net> nets,
        List<Doubt> doubts) {

    public Netlist {
        sheets = List.copyOf(sheets);
        parts = List.copyOf(parts);
        nets = List.copyOf(nets);
        doubts = List.copyOf(doubts);
    }

    /** A netlist that says nothing. */
    public static Netlist empty() {
        return new Netlist("", "", List.of(), List.of(), List.of(), List.of());
    }

    /** The part with the given designator, letter case ignored. */
    public Optional<Part> part(String ref) {
        return parts.stream().filter(p -> p.ref().equalsIgnoreCase(ref)).findFirst();
    }

    /** The net with the given id, exactly. */
    public Optional<Net> net(String id) {
        return nets.stream().filter(n -> n.id().equals(id)).findFirst();
    }
}
