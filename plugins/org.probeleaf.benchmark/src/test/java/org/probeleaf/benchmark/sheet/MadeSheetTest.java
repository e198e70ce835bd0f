// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;
import org.probeleaf.benchmark.speed.MadeReading;
import org.probeleaf.drawing.SheetFile;
import org.probeleaf.schematic.netlist.Netlist;

class MadeSheetTest {

    @Test
    void of_severalPages_isReadExactly() throws IOException {
        MadeSheet made = MadeSheet.of(150, 3, 7);

        Netlist netlist = MadeReading.read(made.pdf());

        assertEquals(3, netlist.sheets().size());
        assertEquals(150, netlist.parts().size());
        assertEquals(made.nets().size(), MadeReading.exact(made, netlist));
    }

    @Test
    void of_anyNumberOfParts_drawsThatMany() throws IOException {
        for (int parts : new int[] {1, 2, 3, 10, 101}) {
            MadeSheet made = MadeSheet.of(parts, 1, parts);
            assertEquals(parts, MadeReading.read(made.pdf()).parts().size());
        }
    }

    @Test
    void of_sameSeed_isTheSameSheet() throws IOException {
        MadeSheet made = MadeSheet.of(60, 2, 3);
        assertEquals(made.nets(), MadeSheet.of(60, 2, 3).nets());
        assertTrue(IntStream.range(4, 9).anyMatch(seed -> !made.nets().equals(nets(seed))));
        try (SheetFile file = SheetFile.open(made.pdf(), "made.pdf", null)) {
            assertEquals(2, file.pageCount());
        }
    }

    private static List<List<String>> nets(long seed) {
        try {
            return MadeSheet.of(60, 2, seed).nets();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
