// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.fuzz;

import java.util.List;
import java.util.stream.IntStream;

import org.probeleaf.drawing.SheetException;
import org.probeleaf.drawing.SheetFile;
import org.probeleaf.recognition.PageSource;
import org.probeleaf.recognition.Progress;
import org.probeleaf.recognition.Recogniser;

/**
 * What became of a damaged file.
 *
 * @param kind   what happened
 * @param detail of a failure what was thrown and where, else ""
 */
record Outcome(Kind kind, String detail) {

    /** What can happen; only the first two are as they should be. */
    enum Kind {
        /** It was read. */
        READ,
        /** It was refused with one clear sentence. */
        REFUSED,
        /** Something else was thrown. */
        FAILED,
        /** The memory did not suffice. */
        OUT_OF_MEMORY,
        /** It took longer than it may. */
        HUNG,
        /** The process ended. */
        DIED
    }

    boolean good() {
        return kind == Kind.READ || kind == Kind.REFUSED;
    }

    /** Opens and reads a file, all its pages. */
    static Outcome of(byte[] bytes) {
        try (SheetFile file = SheetFile.open(bytes, "mutant.pdf", null)) {
            List<Integer> pages = IntStream.rangeClosed(1, file.pageCount()).boxed().toList();
            new Recogniser().recognise(file.name(), "", PageSource.of(file, pages, null), Progress.NONE);
            return new Outcome(Kind.READ, "");
        } catch (SheetException e) {
            return e.getMessage() == null || e.getMessage().contains("\n")
                    ? new Outcome(Kind.FAILED, "a refusal that is no sentence: " + e.getMessage())
                    : new Outcome(Kind.REFUSED, "");
        } catch (OutOfMemoryError e) {
            return new Outcome(Kind.OUT_OF_MEMORY, where(e));
        } catch (RuntimeException | Error e) {
            return new Outcome(Kind.FAILED, where(e));
        }
    }

    /** What was thrown, and the first place of ours it came from. */
    private static String where(Throwable e) {
        StackTraceElement[] trace = e.getStackTrace();
        String top = trace.length == 0 ? "" : " at " + trace[0];
        for (StackTraceElement at : trace) {
            if (at.getClassName().startsWith("org.probeleaf.") && !at.getClassName().contains("benchmark")) {
                return (e + top + ", from " + at).replaceAll("\\s+", " ");
            }
        }
        return (e + top).replaceAll("\\s+", " ");
    }
}
