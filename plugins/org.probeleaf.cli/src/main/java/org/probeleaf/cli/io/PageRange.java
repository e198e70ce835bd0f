// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.io;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The pages that a person asks for: {@code 1-3,5}; none said means all. */
public final class PageRange {

    private static final Pattern PIECE = Pattern.compile("(\\d{1,6})(?:-(\\d{1,6})?)?");

    private final List<int[]> pieces;

    private PageRange(List<int[]> pieces) {
        this.pieces = pieces;
    }

    /** Every page. */
    public static PageRange all() {
        return new PageRange(List.of());
    }

    /**
     * Reads a range; {@code 4-} goes to the last page.
     *
     * @throws IllegalArgumentException with one sentence for a person where it is none
     */
    public static PageRange parse(String text) {
        List<int[]> pieces = new ArrayList<>();
        for (String piece : text.strip().split("\\s*,\\s*", -1)) {
            Matcher m = PIECE.matcher(piece);
            if (!m.matches()) {
                throw new IllegalArgumentException("\"" + text + "\" is no list of pages; write them as 1-3,5");
            }
            int first = Integer.parseInt(m.group(1));
            int last = m.group(2) != null ? Integer.parseInt(m.group(2))
                    : piece.endsWith("-") ? Integer.MAX_VALUE : first;
            if (first < 1 || last < first) {
                throw new IllegalArgumentException("\"" + text
                        + "\" is no list of pages; they count from 1 and rise, as in 1-3,5");
            }
            pieces.add(new int[] {first, last});
        }
        return new PageRange(pieces);
    }

    /**
     * The pages of a file that are meant, rising, each once. A page beyond its end is among them, so that whoever
     * opens it can say so.
     */
    public List<Integer> of(int pageCount) {
        Set<Integer> pages = new TreeSet<>();
        for (int[] piece : pieces.isEmpty() ? List.of(new int[] {1, pageCount}) : pieces) {
            int last = piece[1] == Integer.MAX_VALUE ? Math.max(piece[0], pageCount) : piece[1];
            for (int page = piece[0]; page <= last; page++) {
                pages.add(page);
                if (page > pageCount) {
                    break;
                }
            }
        }
        return List.copyOf(pages);
    }
}
