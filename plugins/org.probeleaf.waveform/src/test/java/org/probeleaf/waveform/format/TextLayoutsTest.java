// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import org.probeleaf.waveform.capture.Capture;
import org.probeleaf.waveform.capture.Channel;

/** The same capture, two channels of twelve samples 2 us apart, written in many ways. All layouts are made up. */
class TextLayoutsTest {

    private static final int ROWS = 12;
    private static final double STEP = 2e-6;

    private static double a(int i) {
        return 0.125 * (i * 7 % 11);
    }

    private static double b(int i) {
        return 1.5 - 0.25 * (i * 3 % 5);
    }

    /**
     * A way to write it.
     *
     * @param title    what is special
     * @param head     what stands above the data
     * @param row      of the data: T time in s, U in us, M in ms, N sample number from 0, K from 1, A and B the values in V,
     *                 C and D in mV
     * @param comma    whether the decimal sign is a comma
     * @param end      of each line
     * @param names    of the channels, as expected; one name, and only A is there
     * @param interval expected, in seconds
     */
    private record Written(String title, String head, String row, boolean comma, String end, String names, double interval) {

        String text() {
            StringBuilder text = new StringBuilder(head.replace("\n", end));
            for (int i = 0; i < ROWS; i++) {
                StringBuilder line = new StringBuilder();
                for (char c : row.toCharArray()) {
                    line.append(switch (c) {
                        case 'T' -> number("%.6f", i * STEP);
                        case 'E' -> number("%.5E", i * STEP);
                        case 'U' -> number("%.1f", i * 2.0);
                        case 'M' -> number("%.3f", i * 0.002);
                        case 'N' -> String.valueOf(i);
                        case 'K' -> String.valueOf(i + 1);
                        case 'A' -> number("%.4f", a(i));
                        case 'B' -> number("%.2f", b(i));
                        case 'C' -> number("%.1f", a(i) * 1000);
                        case 'D' -> number("%.0f", b(i) * 1000);
                        case 'X' -> number("%+.3e", a(i));
                        default -> String.valueOf(c);
                    });
                }
                text.append(line).append(end);
            }
            return text.toString();
        }

        private String number(String form, double v) {
            String s = String.format(Locale.ROOT, form, v);
            return comma ? s.replace('.', ',') : s;
        }

        @Override
        public String toString() {
            return title;
        }
    }

    private static Written w(String title, String head, String row, String names) {
        return new Written(title, head, row, false, "\n", names, STEP);
    }

    private static Written comma(String title, String head, String row, String names) {
        return new Written(title, head, row, true, "\r\n", names, STEP);
    }

    static List<Written> layouts() {
        List<Written> all = new ArrayList<>(List.of(
                w("no head, commas", "", "T,A,B", "CH1 CH2"),
                w("no head, semicolons", "", "T;A;B", "CH1 CH2"),
                w("no head, tabs", "", "T\tA\tB", "CH1 CH2"),
                w("no head, spaces", "", "  T   A  B", "CH1 CH2"),
                w("no head, bars", "", "T|A|B", "CH1 CH2"),
                w("names", "time,probe 1,probe 2\n", "T,A,B", "probe_1 probe_2"),
                w("names in quotes", "\"Time\",\"X1\",\"X2\"\n", "T,A,B", "X1 X2"),
                w("names with units in round brackets", "Time (us),CLK (mV),RD (V)\n", "U,C,B", "CLK RD"),
                w("names with units in square brackets", "t [ms];CLK [V];RD [mV]\n", "M;A;D", "CLK RD"),
                w("names with units behind a stroke", "t/us\tCLK/V\tRD/mV\n", "U\tA\tD", "CLK RD"),
                w("names with units in words", "Time in us,CLK in V,RD in mV\n", "U,A,D", "CLK RD"),
                w("units row", "Time,CLK,RD\ns,V,V\n", "T,A,B", "CLK RD"),
                w("units row with prefixes", "Time,CLK,RD\nus,mV,mV\n", "U,C,D", "CLK RD"),
                w("units row in brackets", "Time;CLK;RD\n(us);(V);(mV)\n", "U;A;D", "CLK RD"),
                w("units in words, then an empty row", "x-axis,CLK,RD\nsecond,Volt,Volt\n\n", "T,A,B", "CLK RD"),
                w("units row and no names", "us,V,V\n", "U,A,B", "CH1 CH2"),
                w("micro sign", "Zeit (\u00b5s),CLK (V),RD (V)\n", "U,A,B", "CLK RD"),
                w("exponents", "Time,CLK\n", "E,X", "CLK"),
                w("spaces behind commas", "Time, CLK, RD\n", "T, A, B", "CLK RD"),
                w("delimiter at the end of rows", "Time,CLK,RD,\n", "T,A,B,", "CLK RD"),
                w("all cells in quotes", "\"Time\",\"CLK\",\"RD\"\n", "\"T\",\"A\",\"B\"", "CLK RD"),
                w("units in the cells", "Time;CLK;RD\n", "U us;C mV;B V", "CLK RD"),
                w("preamble lines", "Tern bench recorder\nSerial,0042\nPoints,12\n\nTime,CLK,RD\n", "T,A,B", "CLK RD"),
                w("preamble as remarks", "# made on the bench\n# gain: 1\n# Time CLK RD\n", "T A B", "CLK RD"),
                w("preamble with other delimiters", "Recorder: bench\nCoupling = DC\nTime\tCLK\n", "T\tA", "CLK"),
                w("interval in the preamble", "Sample Interval,2e-6\nCLK,RD\n", "A,B", "CLK RD"),
                w("interval with its unit in the next cell", "Sample Interval,2,us\nCLK,RD\n", "A,B", "CLK RD"),
                w("interval with a unit behind it", "# sampling interval = 2 us\nCLK\n", "A", "CLK"),
                w("increment with a unit in the key", "XIncrement (us): 2\nCLK\n", "A", "CLK"),
                w("rate in the preamble", "Sample rate: 500 kS/s\nCLK;RD\n", "A;B", "CLK RD"),
                w("rate in hertz", "fs;500000\nCLK;RD\n", "A;B", "CLK RD"),
                w("sample numbers and an interval", "dt=2us\nn,CLK,RD\n", "N,A,B", "CLK RD"),
                w("sample numbers without a name and an interval", "Interval,0.000002\n", "K,A,B", "CH1 CH2"),
                w("index beside the time", "Index,Time (ms),CLK,RD\n", "K,M,A,B", "CLK RD"),
                w("each channel with its own time", "t1,CLK,t2,RD\n", "T,A,T,B", "CLK RD"),
                w("time in the last column but one", "CLK,Time,RD\n", "A,T,B", "CLK RD"),
                comma("decimal comma, semicolons", "Zeit;CLK;RD\n", "T;A;B", "CLK RD"),
                comma("decimal comma, tabs, no head", "", "T\tA\tB", "CH1 CH2"),
                comma("decimal comma, units row", "Zeit;CLK;RD\n\u00b5s;mV;V\n", "U;C;B", "CLK RD"),
                comma("decimal comma, spaces", "t CLK RD\n", "T A B", "CLK RD"),
                comma("decimal comma in quotes", "Zeit,CLK,RD\n", "\"T\",\"A\",\"B\"", "CLK RD"),
                comma("decimal comma, interval with a comma", "Abtastintervall;0,000002\nCLK;RD\n", "A;B", "CLK RD")));
        all.add(new Written("lines that end with CR alone", "Time,CLK\n", "T,A", false, "\r", "CLK", STEP));
        all.add(new Written("one column and nothing said", "", "A", false, "\n", "CH1", 1));
        return all;
    }

    private static Imported read(String text, Charset charset, ImportOptions options) throws IOException {
        return CaptureReader.read(new ByteArrayInputStream(text.getBytes(charset)), options);
    }

    private static void check(Imported imported, String names, double interval) {
        Capture c = imported.capture();
        assertEquals(names, String.join(" ", c.names().stream().map(n -> n.replace(' ', '_')).toList()),
                imported.notes().toString());
        for (int k = 0; k < c.channels().size(); k++) {
            Channel channel = c.channels().get(k);
            assertEquals(ROWS, channel.size());
            assertEquals("V", channel.unit());
            assertEquals(interval, channel.times().interval(), 1e-6 * interval, imported.notes().toString());
            for (int i = 0; i < ROWS; i++) {
                assertEquals(k == 0 ? a(i) : b(i), channel.samples().get(i), 1e-9, imported.notes().toString());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("layouts")
    void layout_isUnderstood(Written written) throws IOException {
        Imported imported = read(written.text(), StandardCharsets.UTF_8, ImportOptions.none());
        check(imported, written.names(), written.interval());
        assertFalse(imported.notes().assumed().isEmpty());
    }

    @Test
    void layouts_areAtLeastForty() {
        assertTrue(layouts().size() >= 40, () -> layouts().size() + " layouts");
    }

    @Test
    void otherAlphabets_areRead() throws IOException {
        String text = w("", "Zeit (\u00b5s);CLK\n", "U;A", "CLK").text();
        check(read("\ufeff" + text, StandardCharsets.UTF_8, ImportOptions.none()), "CLK", STEP);
        check(read("\ufeff" + text, StandardCharsets.UTF_16LE, ImportOptions.none()), "CLK", STEP);
        check(read(text, StandardCharsets.ISO_8859_1, ImportOptions.none()), "CLK", STEP);
    }

    @Test
    void options_countBeforeWhatWasAssumed() throws IOException {
        String text = w("", "", "A,B", "").text();
        check(read(text, StandardCharsets.UTF_8, ImportOptions.none().withInterval(STEP).withNames(List.of("CLK", "RD"))),
                "CLK RD", STEP);
        Imported none = read("1,5\n2,5\n3,5\n", StandardCharsets.UTF_8, ImportOptions.none());
        assertEquals(5, none.capture().channels().get(0).samples().get(0), 0);
        Imported one = read("1,5\n2,5\n3,5\n", StandardCharsets.UTF_8, ImportOptions.none().withDecimal(',').withDelimiter(';'));
        assertEquals(1.5, one.capture().channels().get(0).samples().get(0), 0);
        Imported values = read("0,1\n1,2\n2,1\n", StandardCharsets.UTF_8, ImportOptions.none().withTimeColumn(0));
        assertEquals(2, values.capture().channels().size());
        Imported later = read("5,5\n0,1\n1,2\n2,1\n", StandardCharsets.UTF_8, ImportOptions.none().withFirstRow(2));
        assertEquals(3, later.capture().channels().get(0).size());
    }

    @Test
    void gaps_areMissingOrUneven() throws IOException {
        Capture c = read("t,A,B\n0,1,5\n1,,6\n2,NaN,7\n3,4,-\n4,5,9\n", StandardCharsets.UTF_8, ImportOptions.none()).capture();
        assertTrue(Double.isNaN(c.channels().get(0).samples().get(1)) && Double.isNaN(c.channels().get(0).samples().get(2)));
        assertEquals(9, c.channels().get(1).samples().get(4), 0);
        Imported uneven = read("t,A\n0,1\n1,2\n2,3\n7,4\n8,5\n9,5\n", StandardCharsets.UTF_8, ImportOptions.none());
        assertEquals(7, uneven.capture().channels().get(0).times().at(3), 0);
        assertTrue(uneven.notes().toString().contains("unevenly spaced"), uneven.notes().toString());
    }

    /** Some recorders put what belongs to the whole capture beside the first rows of data. */
    @Test
    void legendBesideTheData_isRead() throws IOException {
        StringBuilder text = new StringBuilder();
        String[] legend = {"Points,12,", "Coupling,DC,", "Vertical Units,V,", "Probe,10,"};
        for (int i = 0; i < ROWS; i++) {
            text.append(i < legend.length ? legend[i] : ",,").append(String.format(Locale.ROOT, ",%.6f,%.4f%n", i * STEP, a(i)));
        }
        check(read(text.toString(), StandardCharsets.UTF_8, ImportOptions.none()), "CH1", STEP);
    }

    @Test
    void roundedTimes_areEven() throws IOException {
        StringBuilder text = new StringBuilder("t,A\n");
        for (int i = 0; i < 300; i++) {
            text.append(String.format(Locale.ROOT, "%.3e,%d%n", 1e-3 + i * 2.5e-7, i % 5));
        }
        Imported imported = read(text.toString(), StandardCharsets.UTF_8, ImportOptions.none());
        assertEquals(2.5e-7, imported.capture().channels().get(0).times().interval(), 5e-9);
        assertTrue(imported.notes().toString().contains("rounded"), imported.notes().toString());
    }

    /** Four digits are fine at first and coarse later, when ten samples bear the same time. */
    @Test
    void timesThatGetCoarser_areEven() throws IOException {
        StringBuilder text = new StringBuilder("t,A\n");
        for (int i = 0; i < 20_000; i++) {
            text.append(String.format(Locale.ROOT, "%.3e,%d\n", i * 1e-8, i % 5));
        }
        Imported imported = read(text.toString(), StandardCharsets.UTF_8, ImportOptions.none());
        assertEquals(1e-8, imported.capture().channels().get(0).times().interval(), 1e-12);
        assertTrue(imported.notes().toString().contains("rounded"), imported.notes().toString());
    }

    @Test
    void whatIsBelowTheData_isLeftOutWithANote() throws IOException {
        Imported end = read("t,A\n0,1\n1,2\n2,3\nEND OF DATA\n", StandardCharsets.UTF_8, ImportOptions.none());
        assertEquals(3, end.capture().channels().get(0).size());
        assertTrue(end.notes().toString().contains("from row 5 on"), end.notes().toString());
        Imported cut = read("t,A\n0,1\n1,2\n2,3\n3", StandardCharsets.UTF_8, ImportOptions.none());
        assertTrue(cut.notes().toString().contains("The last row, 5, is cut short"), cut.notes().toString());
    }
}
