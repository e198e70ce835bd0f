// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.io;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Names documents after the drawings they come from: after the file ({@code board.pdf} gives {@code board}), or after
 * its folder where several drawings bear the same file name. Files that differ only in their ending keep it; what is
 * still the same is numbered.
 */
public final class OutputNames {

    private OutputNames() {
    }

    /** One name for each drawing, in order, all different also where letter case does not count. */
    public static List<String> of(List<Path> drawings) {
        Map<String, List<Path>> byStem = drawings.stream().collect(Collectors.groupingBy(p -> key(stem(p))));
        List<String> names = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        for (Path drawing : drawings) {
            String wanted = wanted(drawing, byStem.get(key(stem(drawing))));
            String name = wanted;
            for (int i = 2; !taken.add(key(name)); i++) {
                name = wanted + "-" + i;
            }
            names.add(name);
        }
        return names;
    }

    private static String wanted(Path drawing, List<Path> alike) {
        if (alike.size() == 1) {
            return stem(drawing);
        }
        boolean sameName = alike.stream().map(p -> key(fileName(p))).distinct().count() < alike.size();
        Path folder = drawing.toAbsolutePath().normalize().getParent();
        return sameName && folder != null && folder.getFileName() != null ? folder.getFileName().toString()
                : fileName(drawing);
    }

    private static String fileName(Path p) {
        return p.getFileName() == null ? "drawing" : p.getFileName().toString();
    }

    private static String stem(Path p) {
        String name = fileName(p);
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }

    private static String key(String name) {
        return name.toLowerCase(Locale.ROOT);
    }
}
