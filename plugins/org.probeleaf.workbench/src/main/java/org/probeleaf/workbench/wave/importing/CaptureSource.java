// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave.importing;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** Where the bytes of a capture come from: a file, or a job that keeps it. May be read any number of times. */
interface CaptureSource {

    /** More than this is no help in a job that is to be sent, in bytes. */
    long LARGEST = 512L << 20;

    /** Opens it; whoever opened it closes it. */
    InputStream open() throws IOException;

    /** The bytes that a job keeps. */
    static CaptureSource of(byte[] bytes) {
        return () -> new ByteArrayInputStream(bytes);
    }

    static CaptureSource of(Path file) {
        return () -> Files.newInputStream(file);
    }

    /** Why a name cannot be a capture, in a sentence, or null where it may be one. */
    static String wrong(String name) {
        if (name.isBlank()) {
            return "Name the file of the capture, or browse for it.";
        }
        try {
            Path file = Path.of(name.strip());
            if (Files.isDirectory(file)) {
                return file.getFileName() == null ? "This is a folder; name a file in it."
                        : file.getFileName() + " is a folder; name a file in it.";
            }
            if (!Files.isReadable(file)) {
                return Files.exists(file) ? "This file may not be read; ask for the right to." : "There is no such file.";
            }
            return Files.size(file) <= LARGEST ? null : "This file is larger than " + (LARGEST >> 20)
                    + " MB; cut out the part that matters and pin that.";
        } catch (java.nio.file.InvalidPathException | IOException e) {
            return "There is no such file.";
        }
    }
}
