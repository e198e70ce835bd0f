// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo.graticule;

/**
 * How many divisions a graticule has.
 *
 * @param across from left to right, 2 to 20
 * @param up     from bottom to top, 2 to 20
 */
public record Divisions(int across, int up) {

    /** The usual ones, the most usual first. */
    static final Divisions[] USUAL = {new Divisions(10, 8), new Divisions(12, 8), new Divisions(10, 10),
        new Divisions(14, 8), new Divisions(10, 6)};

    public Divisions {
        if (across < 2 || up < 2 || across > 20 || up > 20) {
            throw new IllegalArgumentException(across + "x" + up + ": a graticule has 2 to 20 divisions each way");
        }
    }

    /**
     * Reads {@code 10x8}.
     *
     * @throws IllegalArgumentException with one sentence for a person
     */
    public static Divisions parse(String text) {
        java.util.regex.Matcher m = java.util.regex.Pattern.compile("\\s*(\\d{1,3})\\s*[xX×*]\\s*(\\d{1,3})\\s*").matcher(text);
        if (!m.matches()) {
            throw new IllegalArgumentException("\"" + text + "\" is no number of divisions; 10x8 is expected, across by up");
        }
        return new Divisions(Integer.parseInt(m.group(1)), Integer.parseInt(m.group(2)));
    }

    /** As {@code 10x8}. */
    public String text() {
        return across + "x" + up;
    }
}
