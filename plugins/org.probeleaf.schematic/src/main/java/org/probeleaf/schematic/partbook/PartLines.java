// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.partbook;

import java.util.ArrayList;
import java.util.List;

/** Edits the text of a part book, leaving what is not meant as it is written. */
final class PartLines {

    private PartLines() {
    }

    /**
     * The text with other lines for a part.
     *
     * @param text  of a part book
     * @param name  a part in it; without one of that name the text stays as it is
     * @param lines what takes the place of its lines; empty to take it out. Comments that begin their line stay
     */
    static String replaced(String text, String name, String lines) {
        List<String> kept = new ArrayList<>();
        boolean within = false;
        for (String line : text.lines().toList()) {
            boolean top = !line.isBlank() && !Character.isWhitespace(line.charAt(0)) && !line.startsWith("#");
            if (top) {
                String[] words = line.split("\\s+");
                within = words.length > 1 && words[0].equals("part") && words[1].equals(name);
                if (within && !lines.isBlank()) {
                    lines.stripTrailing().lines().forEach(kept::add);
                    kept.add("");
                }
            }
            if (!within || line.startsWith("#")) {
                kept.add(line);
            }
        }
        return kept.isEmpty() ? "" : String.join("\n", kept).stripTrailing() + "\n";
    }
}
