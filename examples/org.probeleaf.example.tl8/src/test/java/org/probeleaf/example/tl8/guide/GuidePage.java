// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A page of the guide, cut into commands with what they print, and the text between. Commands stand in fenced blocks
 * marked {@code console}, each on a line after {@code $}; what follows is the output, in which a line "…" stands for any
 * number of lines.
 */
record GuidePage(List<Piece> pieces) {
    private static final String FENCE = "```";

    /** A piece of the page; {@code command} is null for text. */
    record Piece(String command, List<String> lines) {
    }

    static GuidePage parse(List<String> lines) {
        List<Piece> pieces = new ArrayList<>();
        Piece piece = start(pieces, null);
        boolean console = false;
        for (String line : lines) {
            if (line.startsWith(FENCE)) {
                console = !console && line.equals(FENCE + "console");
                piece = piece.command() == null ? piece : start(pieces, null);
                piece.lines().add(line);
            } else if (console && line.startsWith("$ ")) {
                piece = start(pieces, line.substring(2));
            } else {
                piece.lines().add(line);
            }
        }
        return new GuidePage(pieces);
    }

    private static Piece start(List<Piece> pieces, String command) {
        Piece piece = new Piece(command, new ArrayList<>());
        pieces.add(piece);
        return piece;
    }

    /** Whether the output on the page fits what was printed. */
    static boolean fits(List<String> page, List<String> printed) {
        StringBuilder pattern = new StringBuilder();
        for (String line : page) {
            pattern.append(line.equals("…") ? "(?:.*\n)*" : Pattern.quote(masked(line) + "\n"));
        }
        String text = printed.isEmpty() ? "" : String.join("\n", printed.stream().map(GuidePage::masked).toList()) + "\n";
        return Pattern.matches(pattern.toString(), text);
    }

    /** Times and the folders that a checkout lies in change from run to run. */
    private static String masked(String line) {
        return line.replaceAll("\\d{4}-\\d\\d-\\d\\d \\d\\d:\\d\\d", "0000-00-00 00:00")
                .replaceAll("/\\S*/(?=probeleaf-demo/|examples/)", "/").stripTrailing();
    }

    /** The words of a command line; double quotes hold words together. */
    static List<String> words(String command) {
        List<String> words = new ArrayList<>();
        Matcher m = Pattern.compile("\"([^\"]*)\"|(\\S+)").matcher(command);
        while (m.find()) {
            words.add(m.group(1) != null ? m.group(1) : m.group(2));
        }
        return words;
    }

    /** The page with every output as it was printed. */
    List<String> rewritten(List<List<String>> outputs) {
        List<String> lines = new ArrayList<>();
        int next = 0;
        for (Piece piece : pieces) {
            if (piece.command() == null) {
                lines.addAll(piece.lines());
            } else {
                lines.add("$ " + piece.command());
                List<String> printed = outputs.get(next++);
                lines.addAll(fits(piece.lines(), printed) ? piece.lines() : printed);
            }
        }
        return lines;
    }
}
