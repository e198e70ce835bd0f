// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code wave} on made captures and on those of the example. */
class WaveTest {

    private static final Path STROBE = Shell.ROOT.resolve("examples/tern-tl8/inp-strobe.csv");
    private static final Path GOOD = Shell.ROOT.resolve("examples/tern-tl8/inp-strobe-good.csv");
    private static final Set<String> KEYS = Set.of("name", "samples", "interval_s", "low_V", "high_V", "amplitude_V", "min_V",
            "max_V", "mean_V", "rms_V", "frequency_Hz", "period_s", "duty", "rise_s", "fall_s", "overshoot_pct",
            "undershoot_pct", "pulse_s", "verdict", "reasons", "video");

    @TempDir
    private Path folder;

    private Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private static Map<?, ?> channel(Map<String, Object> answer, int index) {
        return (Map<?, ?>) ((List<?>) answer.get("channels")).get(index);
    }

    /** Up in 1 us, top 3 us, down in 2 us, every 10 us, 0.4 to 3.4 V: the RMS is 2.2 V exactly (computed). */
    private Path trapezoid() throws IOException {
        StringBuilder text = new StringBuilder("time,CLK\ns,V\n");
        for (int i = 0; i < 2500; i++) {
            double p = (i * 0.02 + 7.1) % 10;
            double v = p < 1 ? p : p < 4 ? 1 : p < 6 ? 1 - (p - 4) / 2 : 0;
            text.append(String.format(Locale.ROOT, "%.8f,%.6f%n", i * 2e-8, 0.4 + 3 * v));
        }
        return file("trapezoid.csv", text.toString());
    }

    @Test
    void wave_json_hasTheKeysAndTheFigures() throws IOException {
        Map<String, Object> answer = Shell.run("wave", trapezoid(), "--family", "74LS", "--json", "-").done().json();
        assertTrue(answer.keySet().containsAll(Set.of("channels", "difference")), answer.toString());
        assertNull(answer.get("difference"));
        Map<?, ?> c = channel(answer, 0);
        assertTrue(c.keySet().containsAll(KEYS), c.keySet().toString());
        assertEquals("CLK", c.get("name"));
        assertEquals(2500, c.get("samples"));
        assertEquals(2e-8, number(c, "interval_s"), 1e-14);
        assertEquals(0.4, number(c, "low_V"), 1e-3);
        assertEquals(3.0, number(c, "amplitude_V"), 1e-3);
        assertEquals(2.2, number(c, "rms_V"), 2e-3);
        assertEquals(1.75, number(c, "mean_V"), 2e-3);
        assertEquals(100e3, number(c, "frequency_Hz"), 10);
        assertEquals(0.45, number(c, "duty"), 1e-3);
        assertEquals(0.8e-6, number(c, "rise_s"), 1e-9);
        assertEquals(1.6e-6, number(c, "fall_s"), 2e-9);
        assertEquals(4.5e-6, number(c, "pulse_s"), 1e-9);
        assertEquals("clocking", c.get("verdict"));
        assertNull(c.get("video"));
    }

    private static double number(Map<?, ?> map, String key) {
        return ((Number) map.get(key)).doubleValue();
    }

    @Test
    void wave_figureThatCannotBeHad_isNullWithItsReason() throws IOException {
        Map<String, Object> answer = Shell.run("wave", file("flat.csv", "t,A\n0,1.4\n1,1.4\n2,1.4\n"), "--json", "-").done().json();
        Map<?, ?> c = channel(answer, 0);
        assertNull(c.get("frequency_Hz"));
        assertEquals("between", c.get("verdict"));
        assertTrue(c.get("reasons").toString().contains("frequency_Hz"), c.toString());
    }

    @Test
    void wave_strobeAgainstAGoodOne_differs() throws IOException {
        Map<String, Object> answer = Shell.run("wave", STROBE, "--channel", "/INP", "--family", "74LS", "--against", GOOD,
                "--json", "-").done().json();
        assertEquals("weak-low", channel(answer, 0).get("verdict"));
        assertEquals(false, channel(answer, 0).get("toggles"));
        Map<?, ?> difference = (Map<?, ?>) answer.get("difference");
        assertEquals("differs", difference.get("verdict"));
        assertEquals("/INP", difference.get("reference"));
        assertEquals(2.1 / 3.2, number(difference, "gain"), 0.02);
        Map<String, Object> same = Shell.run("wave", GOOD, "--against", GOOD, "--json", "-").done().json();
        assertEquals("same", ((Map<?, ?>) same.get("difference")).get("verdict"));
    }

    @ParameterizedTest
    @CsvSource({"2.0V, true", "0.5, true", "1.4V, true", "3.6V, false", "1V, false"})
    void wave_plainThreshold_saysWhetherItToggles(String threshold, boolean toggles) throws IOException {
        Path capture = toggles ? GOOD : STROBE;
        Map<?, ?> c = channel(Shell.run("wave", capture, "--channel", "/INP", "--threshold", threshold, "--json", "-").done()
                .json(), 0);
        assertEquals(toggles, c.get("toggles"), c.toString());
    }

    @Test
    void wave_text_saysWhatWasAssumedAndWhy() {
        String out = Shell.run("wave", STROBE, "--family", "74LS").done().out();
        for (String words : new String[] {"Columns separated by semicolons, decimal comma, data from row 4.",
            "/INP: weak low (800 samples, 10 ns apart)", "no low for 74LS", "/RD: clocking", "rise 10-90 %"}) {
            assertTrue(out.contains(words), () -> words + " is not in " + out);
        }
    }

    @Test
    void wave_vcd_judgesEachLine() throws IOException {
        Path dump = file("bus.vcd", "$timescale 1us $end\n$scope module t $end\n$var wire 2 a bus $end\n$upscope $end\n"
                + "$enddefinitions $end\n#0\nb00 a\n#1\nb01 a\n#2\nb00 a\n#3\nb01 a\n#4\nb00 a\n#5\nb01 a\n#6\n");
        Map<String, Object> answer = Shell.run("wave", dump, "--json", "-").done().json();
        assertEquals("t.bus[1]", channel(answer, 0).get("name"));
        assertEquals("static-low", channel(answer, 0).get("verdict"));
        assertEquals("clocking", channel(answer, 1).get("verdict"));
        assertEquals(500e3, number(channel(answer, 1), "frequency_Hz"), 1);
        assertNull(channel(answer, 1).get("low_V"));
        assertTrue(channel(answer, 1).get("reasons").toString().contains("a logic trace has no volts"));
    }

    /** Lines of 64 us with sync of 4.7 us and 0.3 V, porches of 1.5 and 5.8 us, a picture of 0.7 V (BT.470). */
    @Test
    void wave_video_isMeasuredAsSuch() throws IOException {
        StringBuilder text = new StringBuilder("Interval: 100 ns\nVIDEO (mV)\n");
        for (int i = 0; i < 20 * 640; i++) {
            double p = (i * 0.1 + 3.04) % 64;
            text.append(p < 4.7 ? 0 : p < 10.5 || p > 62.5 ? 300 : 1000).append('\n');
        }
        Path file = file("video.txt", text.toString());
        Map<?, ?> c = channel(Shell.run("wave", file, "--json", "-").done().json(), 0);
        assertEquals("video", c.get("verdict"));
        Map<?, ?> video = (Map<?, ?>) c.get("video");
        assertEquals("625/50", video.get("system"));
        assertEquals(15625, number(video, "line_Hz"), 5);
        assertEquals(0.3, number(video, "sync_V"), 0.003);
        assertEquals(4.7e-6, number(video, "sync_s"), 0.1e-6);
        assertEquals(true, video.get("would_lock"));
        assertTrue(Shell.run("wave", file).done().out().contains("A display would lock to it."));
    }

    @Test
    void wave_options_correctWhatWasAssumed() throws IOException {
        Path plain = file("plain.txt", "0\n0\n0\n5\n5\n5\n5\n0\n0\n0\n0\n5\n5\n5\n5\n0\n0\n");
        String out = Shell.run("wave", plain).done().out();
        assertTrue(out.contains("Nothing tells how far apart the samples are"), out);
        Map<?, ?> c = channel(Shell.run("wave", plain, "--interval", "2us", "--scale", "0.5V", "--json", "-").done().json(), 0);
        assertEquals(16e-6, number(c, "period_s"), 1e-9);
        assertEquals(2.5, number(c, "high_V"), 1e-9);
    }

    @Test
    void wave_wrongFile_endsWithThreeAndTheRow() throws IOException {
        Shell.run("wave", file("bad.csv", "t,A\n0,1\n1,2\n2,3\n3,x\n4,5\n")).failed(3, "bad.csv", "row 5", "\"x\"", "expected");
        Shell.run("wave", folder.resolve("absent.csv")).failed(3, "absent.csv", "no such file");
        Shell.run("wave", folder).failed(3, "is a folder");
        Shell.run("wave", GOOD, "--against", file("empty.csv", "")).failed(3, "empty.csv", "empty");
    }

    @Test
    void wave_wrongWords_endWithTwo() {
        Shell.run("wave", GOOD, "--channel", "/WR").failed(2, "no channel \"/WR\"", "/INP, /RD");
        Shell.run("wave", GOOD, "--family", "74XYZ").failed(2, "no family \"74XYZ\"", "74LS");
        Shell.run("wave", GOOD, "--family", "74HC", "--supply", "9V").failed(2, "74HC at 9 V");
        Shell.run("wave", GOOD, "--supply", "5V").failed(2, "--family");
        Shell.run("wave", GOOD, "--threshold", "high up").failed(2, "--threshold");
        Shell.run("wave", GOOD, "--family", "74LS", "--threshold", "2V").failed(2, "one of them");
        Shell.run("wave", GOOD, "--interval", "0s").failed(2, "above zero");
    }

    @Test
    void wave_partValueAndSupply_findTheFamily() throws IOException {
        Map<?, ?> ls = channel(Shell.run("wave", GOOD, "--family", "SN74LS32N", "--json", "-").done().json(), 0);
        assertEquals(0.6, number(ls, "low_margin_V"), 0.02);
        Map<?, ?> hc = channel(Shell.run("wave", GOOD, "--family", "74HC", "--supply", "4.5V", "--json", "-").done().json(), 0);
        assertEquals(1.35 - 0.2, number(hc, "low_margin_V"), 0.02);
    }
}
