// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition;

import java.util.AbstractList;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;

import org.probeleaf.drawing.SheetException;
import org.probeleaf.drawing.primitive.Drawing;

/**
 * Pages as a list that is drawn as it is read: while one page is in use, one thread draws the next, and no page is
 * kept, so that a file of ten thousand pages needs no more memory than one of two. To be read once, from the first page
 * to the last, by one thread.
 */
public final class PageFeed extends AbstractList<Drawing> implements AutoCloseable {

    private static final double NANO = 1e-9;

    private final int size;
    private final Source source;
    private final double[] seconds;
    private final double[] waited;
    private final ExecutorService drawer;
    private int ahead = -1;
    private Future<Drawing> next;

    /** Draws pages; called by one thread at a time. */
    public interface Source {

        /**
         * Draws a page.
         *
         * @param index 0-based place in the list
         * @throws SheetException where it cannot be drawn
         */
        Drawing draw(int index) throws SheetException;
    }

    /**
     * @param size   how many pages
     * @param source draws them
     */
    public PageFeed(int size, Source source) {
        this.size = size;
        this.source = source;
        this.seconds = new double[size];
        this.waited = new double[size];
        this.drawer = size < 2 ? null : Executors.newSingleThreadExecutor(r -> {
            Thread thread = new Thread(r, "pages");
            thread.setDaemon(true);
            return thread;
        });
    }

    @Override
    public int size() {
        return size;
    }

    /**
     * A page, drawn when it is asked for.
     *
     * @throws Failed where it cannot be drawn
     */
    @Override
    public Drawing get(int index) {
        long from = System.nanoTime();
        try {
            Drawing drawing = drawer == null ? draw(index) : fromAhead(index);
            waited[index] = (System.nanoTime() - from) * NANO;
            return drawing;
        } catch (SheetException e) {
            throw new Failed(e);
        }
    }

    /** How long a page took to draw, in seconds. */
    public double seconds(int index) {
        return seconds[index];
    }

    /** How long whoever asked for a page waited for it, in seconds. */
    public double waited(int index) {
        return waited[index];
    }

    /** Waits for the page that is being drawn, since the sheet may be closed then. */
    @Override
    public void close() {
        if (drawer == null) {
            return;
        }
        drawer.shutdown();
        try {
            drawer.awaitTermination(1, TimeUnit.MINUTES);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private Drawing fromAhead(int index) throws SheetException {
        Future<Drawing> wanted = index == ahead ? next : drawer.submit(() -> draw(index));
        try {
            Drawing drawing = wanted.get();
            ahead = index + 1;
            next = ahead < size ? drawer.submit(() -> draw(index + 1)) : null;
            return drawing;
        } catch (ExecutionException e) {
            if (e.getCause() instanceof SheetException s) {
                throw s;
            }
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted", e);
        }
    }

    private Drawing draw(int index) throws SheetException {
        long from = System.nanoTime();
        Drawing drawing = source.draw(index);
        seconds[index] = (System.nanoTime() - from) * NANO;
        return drawing;
    }

    /** Carries a sheet's failure through a list, which may not throw it. */
    public static final class Failed extends RuntimeException {

        private static final long serialVersionUID = 1L;

        private Failed(SheetException cause) {
            super(cause);
        }

        /** What went wrong with the sheet. */
        public SheetException sheetException() {
            return (SheetException) getCause();
        }
    }
}
