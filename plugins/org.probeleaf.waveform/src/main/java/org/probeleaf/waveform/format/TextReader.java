// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.format;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.probeleaf.waveform.capture.Capture;

/** Reads delimited text of any layout. */
final class TextReader {

    private static final int SAMPLE = 1 << 18;
    private static final int SAMPLE_ROWS = 400;
    private static final int BUFFER = 1 << 20;

    private final ImportOptions options;
    private final List<String> notes = new ArrayList<>();

    TextReader(ImportOptions options) {
        this.options = options;
    }

    /**
     * Reads to the end.
     *
     * @param in positioned at the first byte; not closed
     * @throws CaptureException naming the row, where something else stands there than was expected
     */
    Imported read(InputStream in) throws IOException {
        byte[] head = in.readNBytes(SAMPLE);
        byte across = OneRow.delimiter(head, head.length < SAMPLE);
        if (across != 0) {
            notes.add("All values stand in one row.");
            OneRow.turn(head, head.length, across);
        }
        int skip = marked(head);
        List<String> lines = lines(head, skip);
        Layout layout = new LayoutFinder(lines, options).find();
        Preamble preamble = preamble(lines, layout);
        notes.add(capital(layout.delimiterWord()) + ", decimal " + (layout.decimal() == ',' ? "comma" : "point")
                + ", data from row " + (layout.firstRow() + 1) + ".");
        List<Column> columns = new ColumnFinder(lines, layout, options, preamble, notes).find();
        TextBody body = new TextBody(layout, columns, headRow(lines, layout.firstRow()));
        feed(body, head, skip, across == 0 ? in : OneRow.turned(in, across));
        TextChannels channels = new TextChannels(body, columns, options, preamble, notes);
        Capture capture = channels.build();
        return new Imported(capture, new ImportNotes("delimited text", notes));
    }

    /** What the lines above the data say, or those beside its first rows. */
    static Preamble preamble(List<String> lines, Layout layout) {
        int legend = layout.data()[0] ? layout.firstRow() : Math.min(lines.size(), layout.firstRow() + 40);
        return Preamble.of(lines.subList(0, Math.min(legend, lines.size())), layout.delimiter(), layout.decimal());
    }

    /** The first rows as they are understood. */
    static TextPreview preview(InputStream in, ImportOptions options) throws IOException {
        byte[] head = in.readNBytes(SAMPLE);
        byte across = OneRow.delimiter(head, head.length < SAMPLE);
        if (across != 0) {
            OneRow.turn(head, head.length, across);
        }
        return TextPreview.of(lines(head, marked(head)), options);
    }

    /** How many bytes the mark of UTF-8 takes at the start. */
    private static int marked(byte[] head) {
        return head.length >= 3 && (head[0] & 0xff) == 0xef && (head[1] & 0xff) == 0xbb ? 3 : 0;
    }

    /** The last row above the data that is not empty. */
    private static String headRow(List<String> lines, int firstRow) {
        for (int i = Math.min(firstRow, lines.size()) - 1; i >= 0; i--) {
            if (!lines.get(i).isBlank()) {
                return lines.get(i);
            }
        }
        return null;
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    /** The whole lines of the first bytes; of a short file all lines. */
    private static List<String> lines(byte[] head, int skip) {
        String text = new String(head, skip, head.length - skip, StandardCharsets.UTF_8);
        if (text.indexOf('\ufffd') >= 0) {
            text = new String(head, skip, head.length - skip, StandardCharsets.ISO_8859_1);
        }
        boolean whole = head.length < SAMPLE;
        List<String> lines = new ArrayList<>(Arrays.asList(text.split("\r\n|\n|\r", -1)));
        if (!whole || lines.get(lines.size() - 1).isEmpty()) {
            lines.remove(lines.size() - 1);
        }
        return lines.size() > SAMPLE_ROWS ? lines.subList(0, SAMPLE_ROWS) : lines;
    }

    /** Hands the body its lines, as stretches of one buffer. */
    private static void feed(TextBody body, byte[] head, int skip, InputStream in) throws IOException {
        byte[] buffer = Arrays.copyOf(head, Math.max(head.length, BUFFER));
        int from = skip;
        int filled = head.length;
        boolean ended = false;
        while (!ended) {
            int got = filled < buffer.length ? in.read(buffer, filled, buffer.length - filled) : 0;
            ended = got < 0;
            filled += Math.max(0, got);
            from = lines(body, buffer, from, filled, ended);
            if (from > 0) {
                System.arraycopy(buffer, from, buffer, 0, filled - from);
                filled -= from;
                from = 0;
            } else if (filled == buffer.length) {
                buffer = Arrays.copyOf(buffer, buffer.length * 2);
            }
        }
        body.end();
    }

    /** All whole lines of a stretch; returns where the first line begins that is not whole. */
    private static int lines(TextBody body, byte[] b, int start, int filled, boolean ended) throws CaptureException {
        int from = start;
        for (int i = from; i < filled; i++) {
            byte c = b[i];
            if (c == '\n' || c == '\r') {
                if (c == '\r' && i + 1 == filled && !ended) {
                    return from;
                }
                body.line(b, from, i);
                i += c == '\r' && i + 1 < filled && b[i + 1] == '\n' ? 1 : 0;
                from = i + 1;
            }
        }
        if (ended && from < filled) {
            body.line(b, from, filled);
            from = filled;
        }
        return from;
    }
}
