// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;

import org.junit.jupiter.api.Test;
import org.probeleaf.waveform.capture.DigitalChannel;
import org.probeleaf.waveform.format.CaptureReader;
import org.probeleaf.waveform.format.ImportOptions;

class StateTraceTest {

    @Test
    void of_fourStates_eachAtItsHeightUntilTheEnd() throws Exception {
        String vcd = "$timescale 1 ns $end\n$var wire 1 ! RD $end\n$enddefinitions $end\n"
                + "#0\n0!\n#10\n1!\n#20\nz!\n#30\nx!\n#40\n1!\n#100\n";
        DigitalChannel line = CaptureReader.read(new ByteArrayInputStream(vcd.getBytes(StandardCharsets.US_ASCII)),
                ImportOptions.none()).capture().digital().get(0).lines().get(0);
        PlotTrace trace = StateTrace.of(line, Ink.TRACE_A);
        double[] expected = {0, 1, 0.5, Double.NaN, 1, 1};
        assertEquals(expected.length, trace.channel().size());
        for (int i = 0; i < expected.length; i++) {
            assertEquals(expected[i], trace.channel().samples().get(i), 1e-9);
        }
        assertEquals(100e-9, trace.channel().times().at(5), 1e-15);
    }
}
