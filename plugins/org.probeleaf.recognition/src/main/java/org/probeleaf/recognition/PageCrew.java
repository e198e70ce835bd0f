// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

import org.probeleaf.drawing.SheetException;
import org.probeleaf.drawing.primitive.Drawing;
import org.probeleaf.recognition.page.PageReading;
import org.probeleaf.schematic.netlist.Sheet;

/**
 * Draws and reads pages on several threads, one page each at a time, and hands them out in their order. Each thread
 * has a hand of its own; what it has drawn is let go once it is read. Used by one thread.
 */
final class PageCrew implements AutoCloseable {

    /** How long a person who asked to stop waits at most until that is heard, in milliseconds. */
    private static final long HEAR_WITHIN = 50;
    private static final double NANO = 1e-9;

    private final PageSource source;
    private final Progress progress;
    private final ExecutorService threads;
    private final ThreadLocal<PageSource.Hand> hand = new ThreadLocal<>();
    private final List<PageSource.Hand> hands = new ArrayList<>();
    private final List<Future<ReadPage>> pages = new ArrayList<>();
    private volatile boolean stopped;

    /**
     * A page that was read.
     *
     * @param draw how long it took to draw, in seconds
     * @param read how long it took to read, in seconds
     */
    record ReadPage(Sheet sheet, PageReading reading, double draw, double read) {
    }

    /**
     * @param cores how many pages are in work at the same time, at least 1
     */
    PageCrew(PageSource source, Progress progress, int cores) {
        this.source = source;
        this.progress = progress;
        this.threads = Executors.newFixedThreadPool(Math.max(1, Math.min(cores, source.size())), r -> {
            Thread thread = new Thread(r, "pages");
            thread.setDaemon(true);
            return thread;
        });
        for (int i = 0; i < source.size(); i++) {
            int index = i;
            pages.add(threads.submit(() -> read(index)));
        }
    }

    /**
     * Waits for a page.
     *
     * @param index 0-based
     * @throws SheetException        where it could not be drawn
     * @throws CancellationException where {@code progress} says to stop
     */
    ReadPage page(int index) throws SheetException {
        // Taken out of the list: what is done with a page is up to whoever waited for it.
        Future<ReadPage> page = pages.set(index, null);
        while (true) {
            if (progress.cancelled()) {
                throw new CancellationException("the recognition was stopped");
            }
            try {
                return page.get(HEAR_WITHIN, TimeUnit.MILLISECONDS);
            } catch (TimeoutException e) {
                continue;
            } catch (ExecutionException e) {
                throw failed(e.getCause());
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new CancellationException("the recognition was interrupted");
            }
        }
    }

    /** Lets go of all pages and waits for those in work, since the sheet may be closed then. */
    @Override
    public void close() {
        stopped = true;
        threads.shutdownNow();
        try {
            threads.awaitTermination(1, TimeUnit.MINUTES);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        synchronized (hands) {
            hands.forEach(PageSource.Hand::close);
        }
    }

    private ReadPage read(int index) throws SheetException {
        if (stopped) {
            throw new CancellationException("the recognition was stopped");
        }
        long start = System.nanoTime();
        Drawing drawing = hand().draw(index, () -> stopped);
        long drawn = System.nanoTime();
        PageReading reading = PageReading.of(drawing, () -> stopped);
        Sheet sheet = new Sheet(drawing.page(), drawing.width(), drawing.height(), drawing.kind());
        return new ReadPage(sheet, reading, (drawn - start) * NANO, (System.nanoTime() - drawn) * NANO);
    }

    private PageSource.Hand hand() throws SheetException {
        PageSource.Hand mine = hand.get();
        if (mine == null) {
            mine = source.open();
            hand.set(mine);
            synchronized (hands) {
                hands.add(mine);
            }
        }
        return mine;
    }

    private static SheetException failed(Throwable cause) {
        if (cause instanceof SheetException e) {
            return e;
        }
        if (cause instanceof RuntimeException e) {
            throw e;
        }
        if (cause instanceof Error e) {
            throw e;
        }
        throw new IllegalStateException(cause);
    }
}
