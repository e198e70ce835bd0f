// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.format;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

import org.probeleaf.waveform.capture.Capture;
import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.capture.SampleBuilder;
import org.probeleaf.waveform.capture.Samples;
import org.probeleaf.waveform.capture.TimeBase;

/**
 * Reads RIFF/WAVE: PCM with 8 (unsigned about 128), 16, 24 or 32 bits (signed) and IEEE float with 32 or 64, also by the
 * extensible tag. Values are shares of the full scale; a sound card knows no volts.
 */
final class WavReader {

    private static final int PCM = 1;
    private static final int FLOAT = 3;
    private static final int EXTENSIBLE = 0xfffe;
    private static final int FRAMES = 4096;
    private static final int MOST_CHANNELS = 256;

    private final InputStream in;
    private final ImportOptions options;
    private final List<String> notes = new ArrayList<>();
    private long at;

    WavReader(InputStream in, ImportOptions options) {
        this.in = in;
        this.options = options;
    }

    /** What the {@code fmt} chunk says. */
    private record Form(int tag, int channels, int rate, int bits) {

        int bytes() {
            return bits / 8;
        }

        double full() {
            return tag == FLOAT ? 1 : Math.scalb(1, bits - 1);
        }
    }

    /** @throws CaptureException naming the byte, where something else stands there than was expected */
    Imported read() throws IOException {
        ByteBuffer head = bytes(12);
        if (!text(head, 8).equals("WAVE")) {
            throw bad(8, "\"" + text(head, 8) + "\" stands where WAVE was expected; it is another kind of RIFF file");
        }
        Form form = null;
        while (true) {
            long chunkAt = at;
            ByteBuffer chunk = chunk(form);
            String name = text(chunk, 0);
            long size = chunk.getInt(4) & 0xffffffffL;
            if (name.equals("fmt ")) {
                form = form(chunkAt, size);
            } else if (name.equals("data")) {
                if (form == null) {
                    throw bad(chunkAt, "the data begin, where a fmt chunk was expected before them");
                }
                return imported(form, data(form, size));
            } else {
                skip(size + size % 2);
            }
        }
    }

    private ByteBuffer chunk(Form form) throws IOException {
        try {
            return bytes(8);
        } catch (EOFException e) {
            throw bad(at, "the file ends, where a " + (form == null ? "fmt" : "data") + " chunk was expected");
        }
    }

    private Form form(long chunkAt, long size) throws IOException {
        if (size < 16 || size > 1000) {
            throw bad(chunkAt, "the fmt chunk has " + size + " bytes, where at least 16 were expected");
        }
        ByteBuffer f = bytes((int) (size + size % 2));
        int tag = f.getShort(0) & 0xffff;
        if (tag == EXTENSIBLE && size >= 26) {
            tag = f.getShort(24) & 0xffff;
        }
        Form form = new Form(tag, f.getShort(2) & 0xffff, f.getInt(4), f.getShort(14) & 0xffff);
        boolean known = form.tag == PCM && (form.bits == 8 || form.bits == 16 || form.bits == 24 || form.bits == 32)
                || form.tag == FLOAT && (form.bits == 32 || form.bits == 64);
        if (!known) {
            throw bad(chunkAt, "the samples are of kind " + form.tag + " with " + form.bits
                    + " bits, where PCM with 8, 16, 24 or 32 or float with 32 or 64 was expected");
        }
        if (form.channels < 1 || form.channels > MOST_CHANNELS || form.rate < 1) {
            throw bad(chunkAt, form.channels + " channels at " + form.rate
                    + " samples a second are given, where at least 1 of each was expected");
        }
        return form;
    }

    private SampleBuilder[] data(Form form, long size) throws IOException {
        SampleBuilder[] channels = new SampleBuilder[form.channels];
        for (int c = 0; c < channels.length; c++) {
            channels[c] = new SampleBuilder();
        }
        int frame = form.bytes() * form.channels;
        boolean open = size == 0xffffffffL || size == 0;
        long left = open ? Long.MAX_VALUE : size;
        ByteBuffer block = ByteBuffer.allocate(frame * FRAMES).order(ByteOrder.LITTLE_ENDIAN);
        while (left >= frame) {
            int want = (int) Math.min(block.capacity(), left - left % frame);
            int got = in.readNBytes(block.array(), 0, want);
            at += got;
            left -= got;
            for (int p = 0; p + frame <= got; p += frame) {
                for (int c = 0; c < channels.length; c++) {
                    channels[c].add(value(form, block, p + c * form.bytes()));
                }
            }
            if (got < want) {
                if (!open) {
                    notes.add("The file ends " + left + " bytes early; what there is was read.");
                }
                break;
            }
        }
        if (channels[0].size() == 0) {
            throw bad(at, "there is no sample, where at least one was expected");
        }
        return channels;
    }

    private static double value(Form form, ByteBuffer b, int p) {
        if (form.tag == FLOAT) {
            return form.bits == 32 ? b.getFloat(p) : b.getDouble(p);
        }
        return switch (form.bits) {
            case 8 -> ((b.get(p) & 0xff) - 128) / form.full();
            case 16 -> b.getShort(p) / form.full();
            case 24 -> ((b.get(p) & 0xff) | (b.get(p + 1) & 0xff) << 8 | b.get(p + 2) << 16) / form.full();
            default -> b.getInt(p) / form.full();
        };
    }

    private Imported imported(Form form, SampleBuilder[] builders) {
        notes.add(0, (form.tag == FLOAT ? "Float" : "PCM") + " with " + form.bits + " bits, " + form.rate
                + " samples a second.");
        boolean scaled = !Double.isNaN(options.scale());
        double scale = scaled ? options.scale() : 1;
        notes.add(scaled ? "Full scale is " + options.scale() + " V, as said."
                : "The file knows no volts; values are shares of the full scale.");
        List<Channel> channels = new ArrayList<>();
        for (int c = 0; c < builders.length; c++) {
            String plain = builders.length == 2 ? c == 0 ? "left" : "right" : "CH" + (c + 1);
            String name = c < options.names().size() ? options.names().get(c) : plain;
            Samples samples = builders[c].build();
            double interval = Double.isNaN(options.interval()) ? 1.0 / form.rate : options.interval();
            channels.add(new Channel(name, scaled ? "V" : "", new TimeBase.Uniform(0, interval, samples.size()),
                    scaled ? times(samples, scale) : samples, form.tag == FLOAT ? Double.NaN : scale / form.full(), false));
        }
        return new Imported(new Capture(channels, List.of()), new ImportNotes("sound (WAV)", notes));
    }

    private static Samples times(Samples samples, double scale) {
        double[] all = samples.toArray();
        for (int i = 0; i < all.length; i++) {
            all[i] *= scale;
        }
        return Samples.of(all);
    }

    private ByteBuffer bytes(int n) throws IOException {
        byte[] b = in.readNBytes(n);
        if (b.length < n) {
            throw new EOFException();
        }
        at += n;
        return ByteBuffer.wrap(b).order(ByteOrder.LITTLE_ENDIAN);
    }

    private void skip(long n) throws IOException {
        in.skipNBytes(n);
        at += n;
    }

    private static String text(ByteBuffer b, int from) {
        return new String(b.array(), from, 4, StandardCharsets.ISO_8859_1);
    }

    private static CaptureException bad(long at, String what) {
        return new CaptureException("byte " + at + ": " + what);
    }
}
