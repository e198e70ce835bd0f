// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.partbook;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The technician's own part book: the text files ({@code *.txt}, UTF-8) of a folder, each in the form that the head of
 * the standard book describes. What stands in them counts before the standard book. The folder need not exist.
 */
public final class PartBookFolder {

    private static final String ENDING = ".txt";
    /** The weights of faults lie in the same folder; they are no parts. */
    private static final String WEIGHTS = "priors.txt";

    private final Path folder;

    private PartBookFolder(Path folder) {
        this.folder = folder;
    }

    /** The own part book in a folder. */
    public static PartBookFolder at(Path folder) {
        return new PartBookFolder(folder);
    }

    /**
     * Where the own part book is by custom: the folder that {@code PROBELEAF_PARTS} names, else {@code parts} in the
     * program's folder among the settings of the person.
     *
     * @param env  environment of the process
     * @param home the person's folder
     * @param os   the system's name, as in the property {@code os.name}
     */
    public static PartBookFolder usual(Map<String, String> env, Path home, String os) {
        String named = env.getOrDefault("PROBELEAF_PARTS", "");
        if (!named.isBlank()) {
            return at(Path.of(named));
        }
        String system = os.toLowerCase(Locale.ROOT);
        String settings = env.getOrDefault(system.startsWith("windows") ? "APPDATA" : "XDG_CONFIG_HOME", "");
        Path base = system.startsWith("mac") ? home.resolve("Library").resolve("Application Support")
                : settings.isBlank() ? home.resolve(".config") : Path.of(settings);
        return at(base.resolve("probeleaf").resolve("parts"));
    }

    /** The folder; it may not exist yet. */
    public Path path() {
        return folder;
    }

    /**
     * The own book laid over the standard one.
     *
     * @throws IOException where a file cannot be read or is written wrongly; the message names the file and the line
     */
    public PartBook book() throws IOException {
        PartBook own = own();
        return own.types().isEmpty() && own.classes().isEmpty() ? PartBook.standard() : own.over(PartBook.standard());
    }

    /** What the technician wrote, alone; as {@link #book}. */
    public PartBook own() throws IOException {
        PartBook all = PartBook.empty();
        Map<String, Path> places = new HashMap<>();
        for (Path file : files()) {
            PartBook one = read(file);
            for (PartType type : one.types()) {
                Path before = places.put(type.name(), file);
                if (before != null) {
                    throw new IOException("part " + type.name() + " stands in " + before + " and in " + file
                            + "; take it out of one of them");
                }
            }
            all = one.over(all);
        }
        return all;
    }

    /**
     * Keeps a part: its lines take the place of those it had, else go into a file of their own, called after it.
     *
     * @param lines the lines of one part
     * @return the part as the book has it now
     * @throws IOException where they are not the lines of one part, or cannot be written; the message says why
     */
    public PartType keep(String lines) throws IOException {
        List<PartType> types = PartBook.read(new StringReader(lines)).types();
        if (types.size() != 1) {
            throw new IOException("a part is kept one at a time, and these lines have " + types.size());
        }
        String name = types.get(0).name();
        Optional<Path> there = fileOf(name);
        if (there.isPresent()) {
            write(there.get(), PartLines.replaced(Files.readString(there.get()), name, lines));
        } else {
            write(newFile(name), lines.stripTrailing() + "\n");
        }
        return types.get(0);
    }

    /**
     * Forgets a part of the technician's own, so that the standard book counts again; a file that has nothing else is
     * deleted. Nothing happens where there is no such part.
     *
     * @throws IOException where the files cannot be read or written
     */
    public void drop(String name) throws IOException {
        Optional<Path> there = fileOf(name);
        if (there.isPresent()) {
            String rest = PartLines.replaced(Files.readString(there.get()), name, "");
            if (rest.isBlank()) {
                Files.delete(there.get());
            } else {
                write(there.get(), rest);
            }
        }
    }

    private Optional<Path> fileOf(String name) throws IOException {
        for (Path file : files()) {
            if (read(file).text(name).isPresent()) {
                return Optional.of(file);
            }
        }
        return Optional.empty();
    }

    /** A file name that any system takes, and that is not in use. */
    private Path newFile(String name) {
        String plain = name.replaceAll("[^A-Za-z0-9._+-]", "_");
        Path file = folder.resolve(plain + ENDING);
        for (int i = 2; Files.exists(file); i++) {
            file = folder.resolve(plain + "-" + i + ENDING);
        }
        return file;
    }

    private List<Path> files() throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(f -> f.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(ENDING))
                    .filter(f -> !f.getFileName().toString().equals(WEIGHTS))
                    .filter(Files::isRegularFile).sorted().toList();
        }
    }

    private static PartBook read(Path file) throws IOException {
        try {
            return PartBook.read(new StringReader(Files.readString(file)));
        } catch (CharacterCodingException e) {
            throw new IOException(file + ": is not UTF-8 text; save it as that", e);
        } catch (java.nio.file.FileSystemException e) {
            throw new IOException(file + ": cannot be read (" + e.getMessage() + ")", e);
        } catch (IOException e) {
            throw new IOException(file + ": " + e.getMessage(), e);
        }
    }

    /** The file is there whole, old or new, whenever the machine stops. */
    private void write(Path file, String text) throws IOException {
        Files.createDirectories(folder);
        Path fresh = Files.createTempFile(folder, "part", ".new");
        try {
            Files.write(fresh, text.getBytes(StandardCharsets.UTF_8));
            Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(fresh);
        }
    }
}
