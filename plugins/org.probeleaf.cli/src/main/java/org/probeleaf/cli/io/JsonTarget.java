// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.io;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;

/** Where a JSON answer goes: a file, or {@code -} for standard output. */
public final class JsonTarget {

    private static final JsonFactory JSON = new JsonFactory();

    private JsonTarget() {
    }

    /** Writes a document of bytes. */
    public interface Document {
        void write(OutputStream out) throws IOException;
    }

    /** Writes the inside of one JSON object. */
    public interface Body {
        void write(JsonGenerator out) throws IOException;
    }

    /**
     * Writes a whole document; a folder that is missing is made.
     *
     * @throws Problem where it cannot be written
     */
    public static void write(Console console, String target, Document document) {
        try {
            if (target.equals("-")) {
                document.write(console.out());
                console.out().flush();
                return;
            }
            Path file = Path.of(target);
            Path folder = file.toAbsolutePath().getParent();
            if (folder != null) {
                Files.createDirectories(folder);
            }
            try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
                document.write(out);
            }
        } catch (IOException e) {
            throw Problem.other(target + ": cannot be written (" + reason(e) + "); check the folder and its rights", e);
        }
    }

    /** Writes one JSON object. */
    public static void object(Console console, String target, Body body) {
        write(console, target, stream -> {
            try (JsonGenerator out = JSON.createGenerator(stream)) {
                out.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
                out.setPrettyPrinter(new DefaultPrettyPrinter());
                out.writeStartObject();
                body.write(out);
                out.writeEndObject();
                out.writeRaw('\n');
            }
        });
    }

    private static String reason(IOException e) {
        return e.getClass().getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", " ").replaceAll(" ?Exception$", "")
                .toLowerCase(Locale.ROOT);
    }
}
