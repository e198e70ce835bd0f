// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.internal;

import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.sql.SQLException;

import org.probeleaf.job.JobException;
import org.probeleaf.job.JobException.Problem;
import org.sqlite.SQLiteErrorCode;

/** Turns what went wrong below into one line for a person. */
public final class Failures {

    private Failures() {
    }

    /** For a failure of SQLite. */
    public static JobException of(Path file, SQLException e) {
        SQLiteErrorCode code = SQLiteErrorCode.getErrorCode(e.getErrorCode() & 0xFF);
        return switch (code) {
            case SQLITE_NOTADB -> new JobException(Problem.NOT_A_JOB,
                    file + ": is no job file; name a file that was made as a job", e);
            case SQLITE_CORRUPT, SQLITE_MISMATCH, SQLITE_ERROR -> new JobException(Problem.DAMAGED,
                    file + ": is damaged (" + plain(e) + "); go back to a copy of it", e);
            case SQLITE_BUSY, SQLITE_LOCKED -> new JobException(Problem.NOT_WRITTEN,
                    file + ": another program is reading it and does not let go; try again", e);
            case SQLITE_FULL -> new JobException(Problem.NOT_WRITTEN,
                    file + ": the disk is full, nothing was changed; make room and try again", e);
            case SQLITE_READONLY, SQLITE_PERM, SQLITE_CANTOPEN -> new JobException(Problem.NOT_WRITTEN,
                    file + ": cannot be opened or written here; check your rights to the file and its folder", e);
            default -> new JobException(Problem.NOT_WRITTEN, file + ": the disk did not take it (" + plain(e)
                    + "), nothing was changed; check the disk and try again", e);
        };
    }

    /** For a failure of the file system. */
    public static JobException of(Path file, IOException e) {
        if (e instanceof NoSuchFileException) {
            return new JobException(Problem.NOT_WRITTEN, file + ": its folder is not there; make the folder first", e);
        }
        return new JobException(Problem.NOT_WRITTEN, file + ": cannot be written (" + e.getClass().getSimpleName()
                + "); check the folder and your rights to it", e);
    }

    private static String plain(SQLException e) {
        // SQLite's driver adds the same words a second time in brackets.
        return String.valueOf(e.getMessage()).lines().findFirst().orElse("").replaceAll("^\\[[A-Z_]+\\]\\s*", "")
                .replaceAll("\\s*\\([^()]*\\)$", "");
    }
}
