// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.io;

import java.util.AbstractList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;

import org.probeleaf.drawing.SheetException;
import org.probeleaf.drawing.SheetFile;
import org.probeleaf.drawing.primitive.Drawing;

/**
 * The pages of a sheet as a list that is drawn as it is read: while one page is in use, one thread draws the next,
 * and no page is kept, so that a file of ten thousand pages needs no more memory than one of two. To be read once,
 * from the first page to the last, by one thread.
 */
final class PageFeed extends AbstractList<Drawing> implements AutoCloseable {

    private static final double NANO = 1e-9;

    private final SheetFile sheet;
    private final List<Integer> pages;
    private final double[] seconds;
    private final double[] waited;
    private final ExecutorService drawer;
    private int ahead = -1;
    private Future<Drawing> next;

    PageFeed(SheetFile sheet, List<Integer> pages) {
        this.sheet = sheet;
        this.pages = pages;
        this.seconds = new double[pages.size()];
        this.waited = new double[pages.size()];
        this.drawer = pages.size() < 2 ? null : Executors.newSingleThreadExecutor(r -> {
            Thread thread = new Thread(r, "pages");
            thread.setDaemon(true);
            return thread;
        });
    }

    @Override
    public int size() {
        return pages.size();
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
    double seconds(int index) {
        return seconds[index];
    }

    /** How long whoever asked for a page waited for it, in seconds. */
    double waited(int index) {
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
            next = ahead < pages.size() ? drawer.submit(() -> draw(index + 1)) : null;
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
        Drawing drawing = sheet.draw(pages.get(index));
        seconds[index] = (System.nanoTime() - from) * NANO;
        return drawing;
    }

    /** Carries a sheet's failure through a list, which may not throw it. */
    static final class Failed extends RuntimeException {

        private static final long serialVersionUID = 1L;

        private Failed(SheetException cause) {
            super(cause);
        }

        SheetException sheetException() {
            return (SheetException) getCause();
        }
    }
}
