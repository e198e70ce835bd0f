// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;

import com.fasterxml.jackson.jr.ob.JSON;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import org.probeleaf.waveform.capture.Capture;
import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.capture.DigitalChannel;

/** The vectors of {@code reference/format_vectors.json} as they stand there; the sources of each are named in that file. */
class SharedFormatVectorsTest {

    private static final Path VECTORS = Path.of(System.getProperty("probeleaf.shared", "none"), "reference",
            "format_vectors.json");
    private Map<?, ?> all;

    @BeforeEach
    void read() throws IOException {
        assumeTrue(Files.exists(VECTORS), "the vectors are not there; probeleaf.shared names their folder");
        all = JSON.std.mapFrom(Files.readString(VECTORS));
    }

    private static Imported imported(byte[] bytes) throws IOException {
        return CaptureReader.read(new ByteArrayInputStream(bytes), ImportOptions.none());
    }

    private Map<?, ?> vector(String name) {
        return (Map<?, ?>) all.get(name);
    }

    private static byte[] hex(Object text) {
        return HexFormat.of().parseHex(text.toString().replace(" ", ""));
    }

    @Test
    void vcd_givesTheChangesThatAreExpected() throws IOException {
        for (String name : List.of("vcd", "vcd_ok")) {
            Map<?, ?> expect = (Map<?, ?>) vector(name).get("expect");
            Map<?, ?> signals = expect.get("signals") instanceof Map<?, ?> m ? m : expect;
            Capture capture = imported(vector(name).get("text").toString().getBytes(StandardCharsets.UTF_8)).capture();
            assertEquals(signals.size(), capture.names().size());
            signals.forEach((signal, changes) -> check(capture, signal.toString(), (List<?>) changes));
        }
    }

    private static void check(Capture capture, String signal, List<?> changes) {
        for (int i = 0; i < changes.size(); i++) {
            List<?> change = (List<?>) changes.get(i);
            double at = ((Number) change.get(0)).doubleValue();
            if (change.get(1) instanceof Number value) {
                Channel channel = capture.channel(signal).orElseThrow();
                assertEquals(value.doubleValue(), channel.samples().get(i), 0, signal);
                assertEquals(at, channel.times().at(i), 1e-18, signal);
            } else {
                DigitalChannel channel = capture.digital(signal).orElseThrow();
                assertEquals(changes.size(), channel.size(), signal);
                assertEquals(change.get(1), channel.state(i), signal);
                assertEquals(at, channel.at(i), 1e-18, signal);
            }
        }
    }

    @Test
    void wav_givesTheSharesThatAreExpected() throws IOException {
        for (String[] name : new String[][] {{"wav16", "samples_over_32768"}, {"wav8_odd_padded", "samples_centred_over_128"}}) {
            Channel channel = imported(hex(vector(name[0]).get("hex"))).capture().channels().get(0);
            List<?> expect = (List<?>) vector(name[0]).get(name[1]);
            assertEquals(expect.size(), channel.size());
            for (int i = 0; i < channel.size(); i++) {
                assertEquals(((Number) expect.get(i)).doubleValue(), channel.samples().get(i), 0);
            }
            assertEquals(1 / ((Number) vector(name[0]).get("rate")).doubleValue(), channel.times().interval(), 1e-18);
        }
    }

    @Test
    void records_areThoseExpected() throws CaptureException {
        for (Object o : (List<?>) all.get("csv")) {
            Map<?, ?> one = (Map<?, ?>) o;
            String text = one.get("in").toString();
            if (one.containsKey("error")) {
                assertThrows(CaptureException.class, () -> DelimitedRecords.parse(text, ','), text);
            } else {
                assertEquals(one.get("rows"), DelimitedRecords.parse(text, ','), text);
            }
        }
    }

    @Test
    void blocks_haveThePayloadExpected() throws CaptureException {
        Map<?, ?> first = (Map<?, ?>) ((List<?>) all.get("ieee488_blocks")).get(0);
        byte[] payload = InstrumentBlock.payload(hex(first.get("hex")));
        List<?> expect = (List<?>) first.get("payload");
        assertEquals(expect.size(), payload.length);
        for (int i = 0; i < payload.length; i++) {
            assertEquals(((Number) expect.get(i)).intValue(), payload[i]);
        }
    }

    @Test
    void prefixes_areKnownWhereUnitsOfCapturesHaveThem() {
        Map<?, ?> prefixes = vector("si_prefixes");
        int known = 0;
        for (Map.Entry<?, ?> prefix : prefixes.entrySet()) {
            double factor = UnitWord.factor(prefix.getKey() + "V");
            if (!Double.isNaN(factor)) {
                assertEquals(((Number) prefix.getValue()).doubleValue(), factor, 1e-12 * factor, prefix.getKey() + "V");
                known++;
            }
        }
        assertTrue(known >= 8, "known " + known);
    }
}
