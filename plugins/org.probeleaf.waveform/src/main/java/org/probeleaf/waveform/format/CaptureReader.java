// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.format;

import java.io.BufferedInputStream;
import java.io.ByteArrayInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

import org.probeleaf.waveform.capture.Capture;
import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.capture.Samples;
import org.probeleaf.waveform.capture.TimeBase;

/** Reads a capture of any known format, told by its first bytes and not by its name. */
public final class CaptureReader {

    private static final int LOOKED_AT = 4096;
    private static final int PREVIEWED = 1 << 18;

    private static final Pattern VCD = Pattern.compile(
            "\\s*\\$(?:date|version|timescale|comment|scope|var|upscope|enddefinitions|dump\\w*)\\b");

    private CaptureReader() {
    }

    /**
     * Reads a file.
     *
     * @throws CaptureException where it is no capture that can be read; one line says where and what was expected
     * @throws IOException      where it cannot be read at all
     */
    public static Imported read(Path file, ImportOptions options) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return read(in, options);
        }
    }

    /** Reads a stream to its end; it is not closed. */
    public static Imported read(InputStream stream, ImportOptions options) throws IOException {
        BufferedInputStream in = new BufferedInputStream(stream, 1 << 16);
        in.mark(LOOKED_AT + 1);
        byte[] head = in.readNBytes(LOOKED_AT);
        in.reset();
        if (head.length == 0) {
            throw new CaptureException("the file is empty; rows of numbers, a VCD or a WAV file were expected");
        }
        try {
            return known(in, head, options);
        } catch (EOFException e) {
            throw new CaptureException("the file ends inside its head; get it again from where it was made");
        }
    }

    /**
     * The first rows of a text as they are understood; empty for what is no text with columns. The stream is not closed.
     *
     * @throws CaptureException where no rows of numbers are found, or the options do not fit it
     */
    public static Optional<TextPreview> preview(InputStream stream, ImportOptions options) throws IOException {
        byte[] head = stream.readNBytes(PREVIEWED);
        String start = new String(head, 0, Math.min(head.length, LOOKED_AT), StandardCharsets.ISO_8859_1);
        Charset wide = wide(start);
        if (start.startsWith("RIFF") || VCD.matcher(start).lookingAt() || InstrumentBlock.begins(head) && !remark(start)
                || wide == null && start.indexOf('\0') >= 0 || start.isEmpty()) {
            return Optional.empty();
        }
        byte[] text = wide == null ? head : new String(head, wide).getBytes(StandardCharsets.UTF_8);
        return Optional.of(TextReader.preview(new ByteArrayInputStream(text), options));
    }

    /** Text of two bytes a letter, with its mark or known by every other byte being zero; null for any other. */
    private static Charset wide(String start) {
        if (start.startsWith("\u00fe\u00ff") || start.startsWith("\u00ff\u00fe")) {
            return StandardCharsets.UTF_16;
        }
        int[] zeros = new int[2];
        for (int i = 0; i < start.length(); i++) {
            zeros[i % 2] += start.charAt(i) == 0 ? 1 : 0;
        }
        int most = start.length() / 2 * 9 / 10;
        return most < 4 ? null : zeros[1] > most && zeros[0] == 0 ? StandardCharsets.UTF_16LE
                : zeros[0] > most && zeros[1] == 0 ? StandardCharsets.UTF_16BE : null;
    }

    /** A remark such as {@code #2026-11-27} begins like a block but is a row among others. */
    private static boolean remark(String start) {
        return start.matches("(?s)#[^\\n\\r]*[^\\d\\s.,;eE+\\-#][^\\n\\r]*\\R.*\\R.*|#\\d{4}[-./]\\d\\d.*\\R.*")
                && start.chars().allMatch(c -> c >= ' ' || c == '\n' || c == '\r' || c == '\t');
    }

    private static Imported known(BufferedInputStream in, byte[] head, ImportOptions options) throws IOException {
        String start = new String(head, StandardCharsets.ISO_8859_1);
        if (start.startsWith("RIFF")) {
            return new WavReader(in, options).read();
        }
        if (InstrumentBlock.begins(head) && !remark(start)) {
            return block(InstrumentBlock.payload(in.readAllBytes()), options);
        }
        Charset wide = wide(start);
        if (wide != null) {
            String text = new String(in.readAllBytes(), wide);
            return new TextReader(options).read(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
        }
        if (start.indexOf('\0') >= 0) {
            throw new CaptureException("byte " + start.indexOf('\0')
                    + ": it is no text, and neither VCD nor WAV; export the capture as text with columns");
        }
        if (VCD.matcher(start).lookingAt()) {
            return new VcdReader(in).read();
        }
        return new TextReader(options).read(in);
    }

    /** Text inside a block is read as such; other bytes are the codes of a converter with eight bits. */
    private static Imported block(byte[] payload, ImportOptions options) throws IOException {
        boolean text = payload.length > 0;
        for (byte b : payload) {
            text &= b >= ' ' || b == '\n' || b == '\r' || b == '\t';
        }
        if (text) {
            return new TextReader(options).read(new ByteArrayInputStream(payload));
        }
        if (payload.length == 0) {
            throw new CaptureException("byte 0: the block of the instrument is empty, where samples were expected");
        }
        List<String> notes = new ArrayList<>();
        boolean scaled = !Double.isNaN(options.scale());
        double scale = scaled ? options.scale() : 1;
        double[] values = new double[payload.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = (payload[i] & 0xff) * scale;
        }
        notes.add("Each byte is taken for one sample, 0 to 255" + (scaled ? ", " + scale + " V a step, as said."
                : "; the file knows no volts."));
        boolean timed = !Double.isNaN(options.interval());
        notes.add(timed ? "Samples are as far apart as said."
                : "Nothing tells how far apart the samples are; 1 s is assumed, and all times count samples.");
        String name = options.names().isEmpty() ? "CH1" : options.names().get(0);
        Channel channel = new Channel(name, scaled ? "V" : "",
                new TimeBase.Uniform(0, timed ? options.interval() : 1, values.length), Samples.of(values), scale, false);
        return new Imported(new Capture(List.of(channel), List.of()), new ImportNotes("block of an instrument", notes));
    }
}
