// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.trace;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;

import org.junit.jupiter.api.Test;

import picocli.CommandLine;

class TraceCommandTest {

    /** Every measurement runs; how long it takes is for a machine with nothing else to do. */
    @Test
    void short_everyMeasurement_givesAFigure() {
        StringWriter out = new StringWriter();
        new CommandLine(new TraceCommand()).setOut(new PrintWriter(out)).execute("--short");
        assertTrue(out.toString().startsWith("3000 parts, "), out.toString());
        for (String name : List.of("buildNetwork", "traceLargestNet", "allLoads", "followLargest",
                "followLargestWithoutLimits", "plainBreadthFirst")) {
            assertTrue(out.toString().matches("(?s).*" + name + " +\\d+\\.\\d+ ms/op.*"), out.toString());
        }
    }
}
