// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave.importing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import org.probeleaf.workbench.session.RecentFiles;

/** The files pinned last, and what lies in a folder that may be meant next. */
final class RecentCaptures {

    private static final Set<String> ENDINGS = Set.of("csv", "txt", "tsv", "dat", "vcd", "wav");

    private RecentCaptures() {
    }

    /** The newest captures of a folder, then those pinned last; files that are there, each once. */
    static List<Path> offered(Path folder) {
        Set<Path> all = new LinkedHashSet<>(newest(folder, 3));
        List<Path> pinned = RecentFiles.PINNED.list();
        pinned.stream().findFirst().map(Path::getParent).ifPresent(last -> all.addAll(newest(last, 3)));
        pinned.stream().filter(Files::isRegularFile).forEach(all::add);
        return all.stream().limit(RecentFiles.PINNED.most()).toList();
    }

    /** The captures of a folder by their names' endings, the newest first. */
    static List<Path> newest(Path folder, int most) {
        if (folder == null) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(RecentCaptures::capture).sorted(Comparator.comparing(RecentCaptures::time).reversed())
                    .limit(most).toList();
        } catch (IOException e) {
            return List.of();
        }
    }

    private static boolean capture(Path file) {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        return ENDINGS.contains(name.substring(name.lastIndexOf('.') + 1)) && Files.isRegularFile(file);
    }

    private static FileTime time(Path file) {
        try {
            return Files.getLastModifiedTime(file);
        } catch (IOException e) {
            return FileTime.fromMillis(0);
        }
    }

    /** The folder of the file pinned last. */
    static Optional<Path> lastFolder() {
        return RecentFiles.PINNED.list().stream().findFirst().map(Path::getParent);
    }
}
