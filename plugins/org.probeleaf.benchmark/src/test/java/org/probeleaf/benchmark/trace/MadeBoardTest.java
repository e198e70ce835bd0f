// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;

import org.probeleaf.schematic.netlist.Netlist;

class MadeBoardTest {

    @Test
    void of_aSeed_isAlwaysTheSameBoard() {
        assertEquals(MadeBoard.of(300, 7), MadeBoard.of(300, 7));
    }

    @Test
    void of_parts_areAllWiredToNetsThatExist() {
        Netlist board = MadeBoard.of(500, 1);
        assertEquals(500, board.parts().size());
        Set<String> nets = board.nets().stream().map(n -> n.id()).collect(Collectors.toSet());
        assertTrue(board.parts().stream().flatMap(p -> p.pins().stream()).allMatch(p -> nets.contains(p.net())));
    }
}
