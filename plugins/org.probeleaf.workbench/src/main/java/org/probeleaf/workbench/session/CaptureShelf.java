// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.session;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;

import org.probeleaf.job.Job;
import org.probeleaf.job.JobException;
import org.probeleaf.job.mark.Anchor;
import org.probeleaf.job.mark.CaptureMark;
import org.probeleaf.photo.reading.CaptureFile;
import org.probeleaf.schematic.checksum.Sha256;
import org.probeleaf.waveform.format.CaptureException;
import org.probeleaf.waveform.format.Imported;

/**
 * The captures of a job, read and measured when they are first asked for, on a thread of their own. Called on the display
 * thread.
 */
public final class CaptureShelf {

    private static final long LARGEST = 512L << 20;

    private final ExecutorService thread = Executors.newSingleThreadExecutor(r -> {
        Thread t = new Thread(r, "captures");
        t.setDaemon(true);
        return t;
    });
    private final JobThread jobs;
    private final Consumer<Runnable> post;
    private final Consumer<Trouble> trouble;
    private final Runnable tell;
    private final CaptureAnswers answers;
    private final Map<String, LoadedCapture> loaded = new HashMap<>();
    private final Set<String> asked = new HashSet<>();

    CaptureShelf(JobThread jobs, Consumer<Runnable> post, Consumer<Trouble> trouble, Runnable tell) {
        this.jobs = jobs;
        this.post = post;
        this.trouble = trouble;
        this.tell = tell;
        this.answers = new CaptureAnswers(thread, post, tell);
    }

    /** What is said of captures. */
    public CaptureAnswers answers() {
        return answers;
    }

    /**
     * Reads a file to compare with, which stays outside of the job.
     *
     * @param beside the capture that it is to be compared with
     * @return under which it is got
     */
    public CaptureMark outside(Path file, CaptureMark beside) {
        CaptureMark mark = CaptureMark.of(beside.place(), new Anchor(beside.page(), beside.at()), file.getFileName().toString(),
                "", 0, "", "", Instant.now());
        asked.add(mark.id() + " ");
        thread.execute(() -> {
            try {
                keep(read(mark, bytes(file)));
            } catch (IOException e) {
                keep(LoadedCapture.unreadable(mark, e.getMessage()));
            }
        });
        return mark;
    }

    private static byte[] bytes(Path file) throws IOException {
        if (Files.size(file) > LARGEST) {
            throw new CaptureException("is larger than " + (LARGEST >> 20)
                    + " MB; cut out the part that matters and pin that");
        }
        return Files.readAllBytes(file);
    }

    /** A capture; empty while it is being read, which this begins. */
    public Optional<LoadedCapture> get(CaptureMark mark) {
        LoadedCapture known = loaded.get(mark.id());
        if (known != null && known.mark().readAs().equals(mark.readAs())) {
            return Optional.of(known);
        }
        if (asked.add(mark.id() + " " + mark.readAs())) {
            jobs.onJob(job -> {
                byte[] bytes = bytes(job, mark);
                thread.execute(() -> keep(bytes == null ? LoadedCapture.unreadable(mark, "is not as it was put in")
                        : read(mark, bytes)));
            });
        }
        return Optional.empty();
    }

    private static byte[] bytes(Job job, CaptureMark mark) {
        try {
            return job.captureBytes(mark);
        } catch (JobException e) {
            return null;
        }
    }

    private static LoadedCapture read(CaptureMark mark, byte[] bytes) {
        try {
            return LoadedCapture.of(mark, CaptureFile.read(bytes, mark.readAs()));
        } catch (IOException | IllegalArgumentException e) {
            return LoadedCapture.unreadable(mark, e.getMessage());
        }
    }

    private void keep(LoadedCapture capture) {
        post.accept(() -> {
            loaded.put(capture.mark().id(), capture);
            tell.run();
        });
    }

    /**
     * Pins a file to a place. It is read once more with its bytes in hand, since it may have changed; what cannot be read is
     * told and not pinned.
     *
     * @param readAs how it is to be read, as import options are written
     */
    void pin(Path file, Selection at, String readAs) {
        thread.execute(() -> {
            try {
                byte[] bytes = bytes(file);
                String name = file.getFileName().toString();
                Imported read = CaptureFile.read(bytes, readAs);
                CaptureMark mark = CaptureMark.of(at.place(), at.anchor(), name, Sha256.of(bytes), bytes.length, readAs, "",
                        Instant.now());
                keep(LoadedCapture.of(mark, read));
                jobs.onJob(job -> job.addCapture(mark, bytes));
            } catch (CaptureException | IllegalArgumentException e) {
                trouble.accept(new Trouble(Trouble.Kind.NOTICE, file.getFileName() + ": " + e.getMessage()));
            } catch (IOException e) {
                trouble.accept(new Trouble(Trouble.Kind.NOTICE, file.getFileName() + " cannot be read; check the name"));
            } catch (OutOfMemoryError e) {
                trouble.accept(new Trouble(Trouble.Kind.NOTICE, file.getFileName()
                        + " is too large for the memory there is; cut out the part that matters and pin that"));
            }
        });
    }

    /**
     * Fetches the bytes of a capture's file from the job.
     *
     * @param then told on the display thread; with null where they are damaged
     */
    public void fetch(CaptureMark mark, Consumer<byte[]> then) {
        jobs.onJob(job -> {
            byte[] bytes = bytes(job, mark);
            post.accept(() -> then.accept(bytes));
        });
    }

    /** Pins the bytes of a file that was read already to a place. */
    public void pin(String name, byte[] bytes, String readAs, Imported read, Selection at) {
        CaptureMark mark = CaptureMark.of(at.place(), at.anchor(), name, Sha256.of(bytes), bytes.length, readAs, "",
                Instant.now());
        keep(LoadedCapture.of(mark, read));
        jobs.onJob(job -> job.addCapture(mark, bytes));
    }

    void close() {
        thread.shutdown();
    }
}
