// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.session;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

import org.probeleaf.diagnosis.fault.Priors;

/**
 * How readily parts fail, as the technician has it: the file {@code priors.txt} beside the own part book, over the
 * weights that come with the program. Any thread may ask.
 */
public final class OwnPriors {

    private static final OwnPriors SHARED = new OwnPriors(OwnPartBook.shared().folder().resolve("priors.txt"));

    private final Path file;
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private volatile Priors priors;
    private volatile String problem;

    OwnPriors(Path file) {
        this.file = file;
    }

    /** The ones of the window. */
    public static OwnPriors shared() {
        return SHARED;
    }

    /** The weights; read when they are first asked for. The standard ones where the file is wrong. */
    public synchronized Priors priors() {
        if (priors == null) {
            priors = Priors.standard();
            try {
                if (Files.exists(file)) {
                    priors = Priors.parse(Files.readString(file));
                }
                problem = null;
            } catch (IOException | IllegalArgumentException e) {
                problem = file + ": " + e.getMessage();
            }
        }
        return priors;
    }

    /** What is wrong with the file, in a sentence, or null. */
    public String problem() {
        priors();
        return problem;
    }

    /**
     * Keeps other weights, and tells who listens.
     *
     * @throws IllegalArgumentException with one sentence where the text is written wrongly
     * @throws IOException              where it cannot be kept
     */
    public void keep(String text) throws IOException {
        Priors next = Priors.parse(text);
        Files.createDirectories(file.getParent());
        Path fresh = Files.createTempFile(file.getParent(), "priors", ".new");
        try {
            Files.writeString(fresh, text);
            Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(fresh);
        }
        synchronized (this) {
            priors = next;
            problem = null;
        }
        listeners.forEach(Runnable::run);
    }

    /** Tells {@code listener} when the weights are others. */
    public void addListener(Runnable listener) {
        listeners.add(listener);
    }

    public void removeListener(Runnable listener) {
        listeners.remove(listener);
    }
}
