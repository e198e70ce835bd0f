// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.io;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.InvalidPathException;

import org.probeleaf.drawing.SheetException;
import org.probeleaf.job.JobException;
import org.probeleaf.trace.UnknownPlaceException;

/** What goes wrong, as one line and an exit code. */
public final class Problems {

    private Problems() {
    }

    /** Whatever was thrown as a problem. */
    public static Problem wrapped(Throwable e) {
        if (e instanceof Problem p) {
            return p;
        }
        if (e instanceof SheetException s) {
            return new Problem(s.problem() == SheetException.Problem.NO_SUCH_PAGE ? ExitCode.USAGE : ExitCode.INPUT,
                    s.getMessage(), s);
        }
        if (e instanceof JobException j) {
            return new Problem(code(j), j.getMessage(), j);
        }
        if (e instanceof UnknownPlaceException) {
            return new Problem(ExitCode.USAGE, e.getMessage(), e);
        }
        if (e instanceof InvalidPathException p) {
            return new Problem(ExitCode.USAGE, p.getInput() + ": is no name for a file here", p);
        }
        if (e instanceof OutOfMemoryError) {
            return new Problem(ExitCode.OTHER, "there is not enough memory for this; read fewer pages at a time, with"
                    + " --pages, or give Java more with PROBELEAF_JAVA_OPTS=-Xmx4g", e);
        }
        if (e instanceof IOException io) {
            return new Problem(ExitCode.OTHER, line(io), io);
        }
        return new Problem(ExitCode.OTHER, "something went wrong inside the program (" + e.getClass().getSimpleName()
                + (e.getMessage() == null ? "" : ": " + e.getMessage()) + "); --debug shows where", e);
    }

    /**
     * Tells a problem on the way, when other work goes on.
     *
     * @return the code the process should end with, where it was to end with {@code before}
     */
    public static ExitCode tell(Console console, Throwable e, ExitCode before) {
        Problem problem = wrapped(e);
        print(console, problem);
        return before == ExitCode.DONE ? problem.code() : before;
    }

    /** Prints the one line. */
    public static void print(Console console, Problem problem) {
        console.progressDone();
        console.err().println(String.valueOf(problem.getMessage()).replaceAll("\\s*\\R\\s*", " "));
        console.err().flush();
    }

    private static ExitCode code(JobException e) {
        return switch (e.problem()) {
            case NOT_FOUND, NOT_A_JOB, NEWER_VERSION, SHEET -> ExitCode.INPUT;
            case HELD, DAMAGED -> ExitCode.JOB;
            case EXISTS, NOT_WRITTEN -> ExitCode.OTHER;
        };
    }

    private static String line(IOException e) {
        if (e instanceof AccessDeniedException a) {
            return a.getFile() + ": may not be used; check your rights to it";
        }
        if (e instanceof FileSystemException f && f.getReason() == null) {
            return f.getFile() + ": cannot be used ("
                    + f.getClass().getSimpleName().replace("Exception", "") + ")";
        }
        return String.valueOf(e.getMessage());
    }
}
