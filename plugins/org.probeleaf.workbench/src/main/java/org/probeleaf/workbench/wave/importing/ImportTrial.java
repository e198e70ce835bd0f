// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave.importing;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InterruptedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;

import org.eclipse.swt.widgets.Display;
import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.capture.DigitalChannel;
import org.probeleaf.waveform.format.CaptureException;
import org.probeleaf.waveform.format.CaptureReader;
import org.probeleaf.waveform.format.ImportOptions;
import org.probeleaf.waveform.format.Imported;
import org.probeleaf.waveform.format.TextPreview;
import org.probeleaf.waveform.plot.Ink;
import org.probeleaf.waveform.plot.PlotTrace;
import org.probeleaf.waveform.plot.StateTrace;

/** Reads a capture in the background to show what comes out; of several readings asked for only the last one is finished. */
final class ImportTrial {

    /** More traces than these cannot be told apart in a small plot. */
    static final int DRAWN = 8;

    private final Display display;
    private final Consumer<Outcome> then;
    private final AtomicLong latest = new AtomicLong();
    private final ExecutorService thread = Executors.newSingleThreadExecutor(r -> {
        Thread t = new Thread(r, "capture preview");
        t.setDaemon(true);
        return t;
    });

    /**
     * What came out.
     *
     * @param preview the first rows, or null where it is no text or its rows make no sense
     * @param format  what the file is taken for; empty where it cannot be read
     * @param assumed what was assumed, a sentence each
     * @param traces  the first traces; those of logic states are lanes
     * @param summary how many traces of how many samples there are; empty where it cannot be read
     * @param problem why it cannot be read, in a sentence, or null
     */
    record Outcome(TextPreview preview, String format, List<String> assumed, List<PlotTrace> traces, boolean states,
            String summary, String problem) {

        static Outcome wrong(TextPreview preview, String problem) {
            return new Outcome(preview, "", List.of(), List.of(), false, "", problem);
        }
    }

    /** @param then told on the display thread */
    ImportTrial(Display display, Consumer<Outcome> then) {
        this.display = display;
        this.then = then;
    }

    /** Begins a reading in place of any that is under way. */
    void begin(CaptureSource source, ImportOptions options) {
        long ticket = latest.incrementAndGet();
        thread.execute(() -> {
            if (latest.get() != ticket) {
                return;
            }
            Outcome outcome = read(source, options, ticket);
            if (latest.get() == ticket && !display.isDisposed()) {
                display.asyncExec(() -> {
                    if (latest.get() == ticket) {
                        then.accept(outcome);
                    }
                });
            }
        });
    }

    /** Gives up what is under way. */
    void stop() {
        latest.incrementAndGet();
    }

    void close() {
        stop();
        thread.shutdown();
    }

    private Outcome read(CaptureSource source, ImportOptions options, long ticket) {
        TextPreview preview = null;
        try {
            try (InputStream in = source.open()) {
                preview = CaptureReader.preview(in, options).orElse(null);
            }
            try (InputStream in = new Abandoned(source.open(), ticket)) {
                return outcome(preview, CaptureReader.read(in, options));
            }
        } catch (CaptureException e) {
            return Outcome.wrong(preview, sentence(e.getMessage()));
        } catch (IOException e) {
            return Outcome.wrong(preview, "The file cannot be read; check that it is still there.");
        } catch (OutOfMemoryError e) {
            return Outcome.wrong(preview, "The file is too large for the memory there is; cut out the part that matters.");
        }
    }

    private static String sentence(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
    }

    private static Outcome outcome(TextPreview preview, Imported read) {
        List<PlotTrace> traces = new ArrayList<>();
        List<Channel> channels = read.capture().channels();
        for (Channel channel : channels.subList(0, Math.min(DRAWN, channels.size()))) {
            traces.add(PlotTrace.of(channel.name(), channel, Ink.trace(traces.size())));
        }
        boolean states = channels.isEmpty();
        if (states) {
            List<DigitalChannel> lines = read.capture().digital().stream().flatMap(c -> c.lines().stream()).limit(DRAWN).toList();
            lines.forEach(l -> traces.add(StateTrace.of(l, Ink.TRACE_A)));
        }
        return new Outcome(preview, read.notes().format(), read.notes().assumed(), traces, states,
                ImportSummary.of(read.capture()), null);
    }

    /** A stream that ends with an error once its reading is wanted no more. */
    private final class Abandoned extends FilterInputStream {

        private final long ticket;

        Abandoned(InputStream in, long ticket) {
            super(in);
            this.ticket = ticket;
        }

        @Override
        public int read(byte[] b, int off, int len) throws IOException {
            if (latest.get() != ticket) {
                throw new InterruptedIOException();
            }
            return super.read(b, off, len);
        }
    }
}
