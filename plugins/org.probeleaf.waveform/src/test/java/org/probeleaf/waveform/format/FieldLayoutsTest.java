// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import org.probeleaf.waveform.capture.Channel;

/** A capture as loggers, meters and sheets of numbers write it in the field. All layouts are made up. */
class FieldLayoutsTest {

    private static final int ROWS = 12;

    /** The first channel, in volts. */
    private static double a(int i) {
        return 1 + 0.125 * (i * 7 % 11);
    }

    /** The second channel, in volts. */
    private static double b(int i) {
        return 1.5 - 0.25 * (i * 3 % 5);
    }

    /**
     * A way to write it.
     *
     * @param title    what is special
     * @param text     the file
     * @param names    of the channels, as expected; one name, and only the first is there
     * @param interval expected, in seconds
     */
    private record Written(String title, String text, List<String> names, double interval) {

        @Override
        public String toString() {
            return title;
        }
    }

    private static final List<Written> ALL = new ArrayList<>();

    private static void add(String title, String head, IntFunction<String> row, String foot, double interval,
            String... names) {
        StringBuilder text = new StringBuilder(head);
        for (int i = 0; i < ROWS; i++) {
            text.append(row.apply(i)).append('\n');
        }
        ALL.add(new Written(title, text + foot, List.of(names), interval));
    }

    private static void add(String title, String head, IntFunction<String> row, double interval, String... names) {
        add(title, head, row, "", interval, names);
    }

    private static String f(String form, Object... values) {
        return String.format(Locale.ROOT, form, values);
    }

    /** With a decimal comma. */
    private static String c(String form, double value) {
        return f(form, value).replace('.', ',');
    }

    private static String clock(int second) {
        return f("%02d:%02d:%02d", second / 3600 % 24, second / 60 % 60, second % 60);
    }

    static List<Written> layouts() {
        ALL.clear();
        stamps();
        meters();
        heads();
        said();
        blocks();
        numbers();
        return List.copyOf(ALL);
    }

    private static void stamps() {
        add("date and clock in columns of their own, dots and commas", "Datum;Uhrzeit;Kanal 1;Kanal 2\n",
                i -> "27.11.2026;" + clock(36000 + i) + ";" + c("%.3f", a(i)) + ";" + c("%.2f", b(i)), 1, "Kanal 1", "Kanal 2");
        add("day behind month, in halves of the day, past noon", "Date/Time,CLK,RD\n",
                i -> f("11/27/2026 %02d:59:%02d %s", i < 6 ? 11 : 12, i < 6 ? 54 + i : 0, i < 6 ? "AM" : "PM").replace("12:59", "12:00")
                        .replaceAll(":00:00 PM", f(":00:%02d PM", Math.max(0, i - 6))) + f(",%.3f,%.2f", a(i), b(i)), 1, "CLK", "RD");
        add("stamps with a zone", "Timestamp,CLK\n", i -> f("2026-11-27T10:00:%02d.500+01:00,%.3f", i, a(i)), 1, "CLK");
        add("stamps with a comma before the fraction", "Zeitstempel;CLK\n",
                i -> f("2026-11-27 10:00:%02d,500;", i) + c("%.3f", a(i)), 1, "CLK");
        add("stamps with dots and no seconds", "Zeit;CLK\n", i -> f("27.11.2026 10:%02d;", i) + c("%.3f", a(i)), 60, "CLK");
        add("stamps with the month in letters", "Time,CLK\n", i -> f("27-Nov-2026 10:00:%02d,%.3f", i, a(i)), 1, "CLK");
        add("a clock past midnight", "Time,CLK\n", i -> clock(86394 + i) + f(",%.3f", a(i)), 1, "CLK");
        add("date and clock, past midnight", "Date,Time,CLK\n",
                i -> (i < 6 ? "2026-11-27," : "2026-11-28,") + clock(86394 + i) + f(",%.3f", a(i)), 1, "CLK");
        add("minutes and seconds that passed", "Elapsed,CLK\n", i -> f("%02d:%04.1f,%.3f", i / 6 + 59, i % 6 * 10.0, a(i)), 10, "CLK");
        add("seconds since 1970", "ts,CLK\n", i -> f("%.3f,%.3f", 1795773600 + i * 0.5, a(i)), 0.5, "CLK");
        add("milliseconds since 1970", "timestamp_ms,CLK\n", i -> f("%d,%.3f", 1795773600000L + i * 20, a(i)), 0.02, "CLK");
        add("before the trigger time is negative", "Time (us) CLK (V)\n", i -> f("%8.1f %8.3f", i * 2.0 - 12, a(i)), 2e-6, "CLK");
    }

    private static void meters() {
        add("a meter with the unit in a column", "No.;Value;Unit;Mode;Time\n",
                i -> f("%d;%.3f;V;DC;%s", i + 1, a(i), clock(36000 + i)), 1, "Value");
        add("a meter that changes its range", "n,Reading,Unit,Seconds\n",
                i -> i % 3 == 0 ? f("%d,%.1f,mV,%d", i, a(i) * 1000, i) : f("%d,%.4f,V,%d", i, a(i), i), 1, "Reading");
        add("a meter with its kind behind the unit", "Time,Reading\n", i -> f("%s,%+.3f VDC", clock(36000 + i), a(i)), 1, "Reading");
        add("a label before each row", "Row,Time,CLK\n", i -> f("R%d,%.6f,%.3f", i, i * 2e-6, a(i)), 2e-6, "CLK");
    }

    private static void heads() {
        add("the delimiter is said in the first row", "sep=;\nZeit (s);CLK (V)\n", i -> c("%.6f", i * 2e-6) + ";" + c("%.3f", a(i)),
                2e-6, "CLK");
        add("sections with their names in brackets", "[Recorder]\nModel=bench\nMemory=12\n[Data]\nTime,CLK\n",
                i -> f("%.6f,%.3f", i * 2e-6, a(i)), 2e-6, "CLK");
        add("settings of each channel above its column",
                "Channel,CLK,RD\nScale,1 V,500 mV\nOffset,0 V,0 V\nCoupling,DC,DC\nTime,CLK,RD\n",
                i -> f("%.6f,%.3f,%.2f", i * 2e-6, a(i), b(i)), 2e-6, "CLK", "RD");
        add("the time has no name", ",CLK,RD\n", i -> f("%.6f,%.3f,%.2f", i * 2e-6, a(i), b(i)), 2e-6, "CLK", "RD");
        add("a row of groups above the names", "Left pod,,\nTime,CLK,RD\n", i -> f("%.6f,%.3f,%.2f", i * 2e-6, a(i), b(i)), 2e-6,
                "CLK", "RD");
        add("names with a delimiter in quotes", "\"Time, s\",\"Probe, tip\"\n", i -> f("%.6f,%.3f", i * 2e-6, a(i)), 2e-6,
                "Probe, tip");
        add("remarks with other signs", "! bench\n* gain 1\n// 12 rows\nTime\tCLK\n", i -> f("%.6f\t%.3f", i * 2e-6, a(i)), 2e-6, "CLK");
        add("units against the name", "Time(us),CLK(mV),RD_V\n", i -> f("%.1f,%.1f,%.2f", i * 2.0, a(i) * 1000, b(i)), 2e-6, "CLK",
                "RD");
        add("an empty first column", ",Time,CLK\n", i -> f(",%.6f,%.3f", i * 2e-6, a(i)), 2e-6, "CLK");
        add("more names than columns", "Time,CLK,RD,spare\n", i -> f("%.6f,%.3f,%.2f", i * 2e-6, a(i), b(i)), 2e-6, "CLK", "RD");
        add("start and increment beside the names", "X,CLK,RD,Start,Increment\nSequence,Volt,Volt,-1.2e-5,2.0e-6\n",
                i -> f("%d,%.3f,%.2f,,", i, a(i), b(i)), 2e-6, "CLK", "RD");
    }

    private static void said() {
        for (String line : new String[] {"Sample period = 2.000 usec", "Time per sample: 2us", "Rate: 500 ksps",
            "Sampling frequency [Hz]: 500000", "Sample clock,500,kHz", "\u0394t = 2 \u00b5s", "Sampling speed: 500000 samples/second",
            "Horizontal sample spacing;2E-6;s", "# 500 kSa/s sample rate", "tInc=2e-6"}) {
            add("\"" + line + "\"", line + "\nCLK\n", i -> f("%.3f", a(i)), 2e-6, "CLK");
        }
    }

    private static void blocks() {
        add("the head again between the rows", "Time,CLK\n",
                i -> (i == 5 ? "\nPage 2\nTime,CLK\n" : "") + f("%.6f,%.3f", i * 2e-6, a(i)), 2e-6, "CLK");
        add("a sum below", "Date;Time;CLK\n", i -> f("2026-11-27;%s;%.3f", clock(36000 + i), a(i)),
                "\nMinimum;;1.000\nMaximum;;2.250\n", 1, "CLK");
        StringBuilder one = new StringBuilder();
        for (int i = 0; i < ROWS; i++) {
            one.append(i == 0 ? "" : ",").append(f("%.4E", a(i)));
        }
        ALL.add(new Written("all values in one row", one + "\n", List.of("CH1"), 1));
        add("line ends doubled", "Time,CLK\r\r\n", i -> f("%.6f,%.3f\r\r", i * 2e-6, a(i)), 2e-6, "CLK");
        add("a remark that begins like a block", "#2026-11-27 on the bench\nTime,CLK\n", i -> f("%.6f,%.3f", i * 2e-6, a(i)), 2e-6,
                "CLK");
        add("a name that begins with a dollar", "$time,CLK\n", i -> f("%.6f,%.3f", i * 2e-6, a(i)), 2e-6, "CLK");
        add("an end of the head", "Recorder bench\nGain 1\nEND OF HEAD\n", i -> f("%.6f %.3f", i * 2e-6, a(i)),
                "END OF FILE\n", 2e-6, "CH1");
    }

    private static void numbers() {
        add("thousands with apostrophes", "Time (us);CLK (mV)\n", i -> f("%.1f;1'%03.0f.0", i * 2.0, a(i) * 1000 % 1000)
                .replace("1'", a(i) < 2 ? "1'" : "2'"), 2e-6, "CLK");
        add("thousands with dots, decimal comma", "Zeit (us);CLK (mV)\n",
                i -> c("%.1f;", i * 2.0) + f("%d.%03.0f,0", (int) a(i), a(i) * 1000 % 1000), 2e-6, "CLK");
        add("thousands with commas in quotes", "Time (us),CLK (mV)\n",
                i -> f("%.1f,\"%d,%03.0f.0\"", i * 2.0, (int) a(i), a(i) * 1000 % 1000), 2e-6, "CLK");
        add("scientific, decimal comma", "Zeit\tCLK\n", i -> c("%.5E", i * 2e-6) + "\t" + c("%+.4E", a(i)), 2e-6, "CLK");
        add("spaces fill the cells", "  Time ;   CLK ;\n", i -> f("%10.6f ; %10.3f ;", i * 2e-6, a(i)), 2e-6, "CLK");
    }

    @ParameterizedTest
    @MethodSource("layouts")
    void layout_isUnderstood(Written written) throws IOException {
        Imported imported = CaptureReader.read(new ByteArrayInputStream(written.text().getBytes(StandardCharsets.UTF_8)),
                ImportOptions.none());
        String notes = imported.notes().toString();
        assertEquals(written.names(), imported.capture().names(), notes);
        for (int k = 0; k < written.names().size(); k++) {
            Channel channel = imported.capture().channels().get(k);
            assertEquals(ROWS, channel.size(), notes);
            assertEquals("V", channel.unit(), notes);
            assertEquals(written.interval(), channel.times().interval(), 1e-6 * written.interval(), notes);
            for (int i = 0; i < ROWS; i++) {
                assertEquals(k == 0 ? a(i) : b(i), channel.samples().get(i), 1e-9, i + " " + notes);
            }
        }
    }

    @Test
    void layouts_areAtLeastThirty() {
        assertTrue(layouts().size() >= 30, () -> layouts().size() + " layouts");
    }
}
