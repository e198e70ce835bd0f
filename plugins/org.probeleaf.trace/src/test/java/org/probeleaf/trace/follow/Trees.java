// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.follow;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.trace.follow.Followed.Node;

/** Trees as lines: two blanks for each part on the way, the net, the pins it was reached by, why it ends. */
final class Trees {

    private Trees() {
    }

    /** The tree from a place of a board, by the standard part book. */
    static List<String> follow(Netlist board, String from, FollowOptions options) {
        return lines(SignalNetwork.of(board, PartBook.standard()).follow(Place.parse(from), options));
    }

    static List<String> lines(Followed tree) {
        List<String> lines = new ArrayList<>();
        add(tree.root(), lines);
        return lines;
    }

    private static void add(Node node, List<String> lines) {
        String by = node.step() == null ? "" : " by " + node.step().in().place().text() + ">"
                + node.step().out().place().text();
        String ends = String.join("", node.stops().stream().map(s -> " " + s.kind()
                + (s.at() == null ? "" : "@" + s.at().place().text())).toList());
        lines.add("  ".repeat(node.depth()) + node.net().title() + by + (ends.isEmpty() ? "" : " !" + ends));
        node.next().forEach(n -> add(n, lines));
    }
}
