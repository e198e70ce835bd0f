// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.session;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.partbook.PartBookFolder;
import org.probeleaf.schematic.partbook.PartType;

/**
 * The part book that the window works with: the technician's own over the standard one. Where a file of the own one is
 * written wrongly the last book that was right counts, and {@link #problem} says what is wrong. Any thread may ask;
 * listeners are told on the thread that made the change.
 */
public final class OwnPartBook {

    private static final OwnPartBook SHARED = new OwnPartBook(PartBookFolder.usual(System.getenv(),
            Path.of(System.getProperty("user.home")), System.getProperty("os.name")));

    private final PartBookFolder folder;
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private volatile PartBook book;
    private volatile PartBook own;
    private volatile String problem;

    OwnPartBook(PartBookFolder folder) {
        this.folder = folder;
    }

    /** The one of the window. */
    public static OwnPartBook shared() {
        return SHARED;
    }

    /** The book; read from the folder when it is first asked for. */
    public synchronized PartBook book() {
        if (book == null) {
            read();
        }
        return book;
    }

    /** Whether the technician wrote the part of that name. */
    public boolean isOwn(String name) {
        book();
        return own.text(name).isPresent();
    }

    /** What is wrong with the files of the folder, in a sentence, or null. */
    public String problem() {
        book();
        return problem;
    }

    /** Where the files are; the folder may not exist yet. */
    public Path folder() {
        return folder.path();
    }

    /**
     * Keeps a part, and tells who listens.
     *
     * @param lines the lines of one part
     * @throws IOException where they are written wrongly or cannot be kept; the message says why
     */
    public PartType keep(String lines) throws IOException {
        PartType kept = folder.keep(lines);
        again();
        return kept;
    }

    /** Forgets a part of the technician's own, and tells who listens. */
    public void drop(String name) throws IOException {
        folder.drop(name);
        again();
    }

    /** Reads the folder again, and tells who listens. */
    public void again() {
        synchronized (this) {
            read();
        }
        listeners.forEach(Runnable::run);
    }

    private void read() {
        try {
            own = folder.own();
            book = own.over(PartBook.standard());
            problem = null;
        } catch (IOException e) {
            problem = e.getMessage();
            if (book == null) {
                own = PartBook.empty();
                book = PartBook.standard();
            }
        }
    }

    /** Tells {@code listener} when the book is another. */
    public void addListener(Runnable listener) {
        listeners.add(listener);
    }

    public void removeListener(Runnable listener) {
        listeners.remove(listener);
    }
}
