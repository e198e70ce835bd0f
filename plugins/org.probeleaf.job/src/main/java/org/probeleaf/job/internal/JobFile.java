// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.internal;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

import org.probeleaf.job.JobException;
import org.probeleaf.job.JobException.Problem;
import org.probeleaf.job.details.JobDetails;

/**
 * An open job file: its tables and, for a writer, its lock.
 *
 * @param path  the file
 * @param store its tables
 * @param lock  the writer's lock, or null for a reader
 */
public record JobFile(Path path, JobStore store, WriterLock lock) implements AutoCloseable {

    /** Makes a file under another name first, so that it is there whole or not at all, and opens it to write. */
    public static JobFile create(Path file, JobDetails details, List<NewSheet> sheets, Instant when)
            throws JobException {
        if (Files.exists(file)) {
            throw exists(file, null);
        }
        WriterLock lock = lock(file);
        Path part = file.toAbsolutePath().resolveSibling(file.getFileName() + ".part");
        try {
            Files.deleteIfExists(part);
            Connection connection = Database.toWrite(part);
            try (JobStore store = new JobStore(connection)) {
                Schema.upgrade(connection);
                store.commit(() -> {
                    store.fill(details, sheets, when);
                    return null;
                });
            }
            Files.move(part, file);
            forceFolder(file);
            return new JobFile(file, new JobStore(Database.toWrite(file)), lock);
        } catch (SQLException e) {
            discard(part, lock);
            throw Failures.of(file, e);
        } catch (FileAlreadyExistsException e) {
            discard(part, lock);
            throw exists(file, e);
        } catch (IOException e) {
            discard(part, lock);
            throw Failures.of(file, e);
        }
    }

    /** Opens a file as its one writer and brings it up to date. */
    public static JobFile write(Path file) throws JobException {
        requireFile(file);
        WriterLock lock = lock(file);
        Connection connection = null;
        try {
            connection = Database.toWrite(file);
            Database.requireJob(connection, file);
            Schema.upgrade(connection);
            return new JobFile(file, new JobStore(connection), lock);
        } catch (SQLException e) {
            release(connection, lock);
            throw Failures.of(file, e);
        } catch (JobException e) {
            release(connection, lock);
            throw e;
        }
    }

    /** Opens a file to read. One of an older version is read from a copy in memory that is brought up to date. */
    public static JobFile read(Path file) throws JobException {
        requireFile(file);
        Connection connection = null;
        try {
            connection = Database.toRead(file);
            Database.requireJob(connection, file);
            if (Database.pragma(connection, "user_version") == Schema.VERSION) {
                return new JobFile(file, new JobStore(connection), null);
            }
            Connection copy = Database.copyInMemory(connection);
            connection.close();
            Schema.upgrade(copy);
            return new JobFile(file, new JobStore(copy), null);
        } catch (SQLException e) {
            release(connection, null);
            throw Failures.of(file, e);
        } catch (JobException e) {
            release(connection, null);
            throw e;
        }
    }

    private static void requireFile(Path file) throws JobException {
        if (!Files.exists(file)) {
            throw new JobException(Problem.NOT_FOUND, file + ": there is no such job; check the name", null);
        }
        if (!Files.isRegularFile(file)) {
            throw new JobException(Problem.NOT_A_JOB, file + ": is a folder; name a job file in it", null);
        }
    }

    private static JobException exists(Path file, Exception cause) {
        return new JobException(Problem.EXISTS, file + ": is there already; choose another name or open it", cause);
    }

    private static WriterLock lock(Path file) throws JobException {
        try {
            Optional<WriterLock> lock = WriterLock.take(file);
            if (lock.isEmpty()) {
                String holder = WriterLock.holder(file).map(h -> " (" + h + ")").orElse("");
                throw new JobException(Problem.HELD, file + ": is open to write elsewhere" + holder
                        + "; close it there, or open it to read", null);
            }
            return lock.get();
        } catch (JobException e) {
            throw e;
        } catch (IOException e) {
            throw Failures.of(file, e);
        }
    }

    /** Makes sure that the file's name is on the disk, where the system has a way to. */
    private static void forceFolder(Path file) {
        try (FileChannel folder = FileChannel.open(file.toAbsolutePath().getParent(), StandardOpenOption.READ)) {
            folder.force(true);
        } catch (IOException e) {
            // Systems that cannot open a folder write its entries through by themselves.
        }
    }

    private static void discard(Path part, WriterLock lock) {
        release(null, lock);
        try {
            Files.deleteIfExists(part);
        } catch (IOException e) {
            // What led here is told; a leftover of that name is replaced by the next attempt.
        }
    }

    private static void release(Connection connection, WriterLock lock) {
        try {
            if (connection != null) {
                connection.close();
            }
        } catch (SQLException e) {
            // What led here is told.
        }
        try {
            if (lock != null) {
                lock.close();
            }
        } catch (IOException e) {
            // What led here is told; the system lets the lock go with the process.
        }
    }

    @Override
    public void close() throws JobException {
        try {
            store.close();
        } catch (SQLException e) {
            throw Failures.of(path, e);
        } finally {
            release(null, lock);
        }
    }
}
