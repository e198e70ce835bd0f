// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.netlist;

import java.util.List;

/**
 * What is electrically one over all pages.
 *
 * @param id         unique in its netlist ({@code "N12"})
 * @param name       the name that the sheet gives it, or null
 * @param pages      1-based pages on which it is drawn, rising
 * @param wires      its lines
 * @param junctions  where its lines are joined
 * @param labels     its drawn names
 * @param confidence 0 to 1: how sure the reading is
 */
public record Net(String id, String name, List<Integer> pages, List<Wire> wires, List<Junction> junctions,
        List<NetLabel> labels, double confidence) {

    public Net {
        pages = List.copyOf(pages);
        wires = List.copyOf(wires);
        junctions = List.copyOf(junctions);
        labels = List.copyOf(labels);
    }

    /** The name where there is one, else the id; never null. */
    public String title() {
        return name != null ? name : id;
    }
}
