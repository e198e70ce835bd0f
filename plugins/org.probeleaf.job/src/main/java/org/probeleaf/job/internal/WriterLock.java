// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.internal;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/**
 * Keeps a second writer out. A lock of the operating system is held on a small file beside the job
 * ({@code board.probeleaf.lock}); the system lets it go when the process ends, however it ends, so that a file left
 * behind by a crash holds nothing. The job file itself is never locked or opened here, because on POSIX systems
 * closing any descriptor of a file drops all of the process's locks on it, those of SQLite included.
 *
 * <p>The lock file is deleted while it is still locked. A writer that waited on a file deleted meanwhile sees that the
 * name no longer leads to the file it locked, and tries again. Within this process a register of held names stands in
 * front, since such locks do not keep a process from itself.
 */
final class WriterLock implements AutoCloseable {

    /** Far behind the text, so that systems with mandatory locks let others read it. */
    private static final long LOCKED_BYTE = 1L << 40;
    private static final int ATTEMPTS = 20;
    private static final Set<Path> HELD_HERE = new HashSet<>();

    private final Path path;
    private final FileChannel channel;
    private final FileLock lock;

    private WriterLock(Path path, FileChannel channel, FileLock lock) {
        this.path = path;
        this.channel = channel;
        this.lock = lock;
    }

    /**
     * Takes the lock.
     *
     * @param job the job file; its folder must exist
     * @return the lock, or empty where another writer has it
     * @throws IOException where the folder cannot be written
     */
    static Optional<WriterLock> take(Path job) throws IOException {
        Path path = lockFile(job);
        synchronized (HELD_HERE) {
            if (HELD_HERE.contains(path)) {
                return Optional.empty();
            }
            for (int i = 0; i < ATTEMPTS; i++) {
                Object before = identity(path, true);
                FileChannel channel = FileChannel.open(path, StandardOpenOption.READ, StandardOpenOption.WRITE,
                        StandardOpenOption.CREATE);
                Object opened = identity(path, false);
                Optional<FileLock> lock = tryLock(channel);
                if (lock.isEmpty()) {
                    channel.close();
                    return Optional.empty();
                }
                if (before.equals(opened) && before.equals(identity(path, false))) {
                    sign(channel);
                    HELD_HERE.add(path);
                    return Optional.of(new WriterLock(path, channel, lock.get()));
                }
                channel.close();
            }
        }
        throw new IOException("the lock file " + path.getFileName() + " cannot be taken");
    }

    /**
     * What tells the file that the name leads to from one of the same name before or after it. Asked without opening
     * the file, since closing it again would drop a lock that this process has on it.
     */
    private static Object identity(Path path, boolean create) throws IOException {
        try {
            if (create && !Files.exists(path)) {
                Files.createFile(path);
            }
        } catch (FileAlreadyExistsException e) {
            // Another writer made it meanwhile; it serves as well.
        }
        try {
            Object key = Files.readAttributes(path, BasicFileAttributes.class).fileKey();
            return key == null ? path : key;
        } catch (NoSuchFileException e) {
            return new Object();
        }
    }

    /** Writes this process's number into the file, for {@link #holder}. */
    private static void sign(FileChannel channel) throws IOException {
        channel.truncate(0);
        channel.write(ByteBuffer.wrap((ProcessHandle.current().pid() + "\n").getBytes(StandardCharsets.US_ASCII)), 0);
    }

    /** Who has the lock, in a few words, or empty where that cannot be told. */
    static Optional<String> holder(Path job) {
        try {
            Path path = lockFile(job);
            synchronized (HELD_HERE) {
                if (HELD_HERE.contains(path)) {
                    return Optional.of("this program");
                }
                // Reading does no harm here: this process has no lock on the file that closing it could drop.
                String process = Files.readString(path).strip();
                return process.matches("\\d+") ? Optional.of("process " + process) : Optional.empty();
            }
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private static Path lockFile(Path job) throws IOException {
        Path whole = job.toAbsolutePath();
        Path real = Files.exists(whole) ? whole.toRealPath()
                : whole.getParent().toRealPath().resolve(whole.getFileName());
        return real.resolveSibling(real.getFileName() + ".lock");
    }

    private static Optional<FileLock> tryLock(FileChannel channel) throws IOException {
        try {
            return Optional.ofNullable(channel.tryLock(LOCKED_BYTE, 1, false));
        } catch (IOException e) {
            channel.close();
            throw e;
        }
    }

    @Override
    public void close() throws IOException {
        synchronized (HELD_HERE) {
            if (!lock.isValid()) {
                return;
            }
            try {
                Files.deleteIfExists(path);
            } catch (IOException e) {
                // Where an open file cannot be deleted it stays, empty of meaning, and the next writer takes it.
                channel.truncate(0);
            } finally {
                channel.close();
                HELD_HERE.remove(path);
            }
        }
    }
}
