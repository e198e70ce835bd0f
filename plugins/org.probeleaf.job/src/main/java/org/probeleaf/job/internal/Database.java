// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;

import org.probeleaf.job.JobException;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConnection;
import org.sqlite.SQLiteOpenMode;

/**
 * Opens job files with SQLite. A writer keeps a rollback journal, so that the job is one file whenever nothing is
 * being written, and has every commit forced to the disk, the folder's entry of the journal included. The file is never
 * opened by other means while a job is open: see {@link WriterLock} for why.
 */
final class Database {

    /** "PBLF" in ASCII: tells a job file from other SQLite files. */
    static final int APPLICATION_ID = 0x50424C46;

    /** How long a writer waits for readers, and they for it, before giving up. */
    private static final int PATIENCE_MS = 10_000;

    private Database() {
    }

    /** Opens a file to write, makes it where it is missing. */
    static Connection toWrite(Path file) throws SQLException {
        SQLiteConfig config = config();
        config.setJournalMode(SQLiteConfig.JournalMode.DELETE);
        config.setPragma(SQLiteConfig.Pragma.SYNCHRONOUS, "EXTRA");
        config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
        return config.createConnection(address(file, "rwc"));
    }

    /**
     * Opens a file to read. Where the file may be written it is opened so that a journal left by a crash can be rolled
     * back, which reading needs, but no statement may change it.
     */
    static Connection toRead(Path file) throws SQLException {
        boolean writable = Files.isWritable(file) && Files.isWritable(file.toAbsolutePath().getParent());
        SQLiteConfig config = config();
        Connection connection = config.createConnection(address(file, writable ? "rw" : "ro"));
        try (Statement s = connection.createStatement()) {
            s.execute("PRAGMA query_only=ON");
        }
        return connection;
    }

    /** A copy of an open file in memory, free to be changed. */
    static Connection copyInMemory(Connection file) throws SQLException {
        byte[] image = file.unwrap(SQLiteConnection.class).serialize("main");
        Connection copy = config().createConnection("jdbc:sqlite::memory:");
        copy.unwrap(SQLiteConnection.class).deserialize("main", image);
        return copy;
    }

    private static SQLiteConfig config() {
        SQLiteConfig config = new SQLiteConfig();
        config.setBusyTimeout(PATIENCE_MS);
        config.setOpenMode(SQLiteOpenMode.OPEN_URI);
        return config;
    }

    /** The path as a URI, in which every letter is plain that a file name may have. */
    private static String address(Path file, String mode) {
        return "jdbc:sqlite:file:" + file.toAbsolutePath().toUri().getRawPath() + "?mode=" + mode;
    }

    static long pragma(Connection connection, String name) throws SQLException {
        try (Statement s = connection.createStatement(); ResultSet r = s.executeQuery("PRAGMA " + name)) {
            return r.next() ? r.getLong(1) : 0;
        }
    }

    /**
     * Makes sure that an open file is a whole job that this program can read.
     *
     * @throws JobException NOT_A_JOB, NEWER_VERSION, DAMAGED
     */
    static void requireJob(Connection connection, Path file) throws SQLException, JobException {
        if (pragma(connection, "application_id") != APPLICATION_ID) {
            throw new JobException(JobException.Problem.NOT_A_JOB,
                    file + ": is no job file; name a file that was made as a job", null);
        }
        long version = pragma(connection, "user_version");
        if (version > Schema.VERSION) {
            throw new JobException(JobException.Problem.NEWER_VERSION, file + ": was written by a newer version of the"
                    + " program (file version " + version + ", this one knows " + Schema.VERSION
                    + "); open it with that version", null);
        }
        try {
            long whole = pragma(connection, "page_count") * pragma(connection, "page_size");
            if (Files.size(file) < whole) {
                throw new JobException(JobException.Problem.DAMAGED, file + ": is cut short (" + Files.size(file)
                        + " of " + whole + " bytes); get a whole copy of it", null);
            }
        } catch (JobException e) {
            throw e;
        } catch (IOException e) {
            throw Failures.of(file, e);
        }
    }
}
