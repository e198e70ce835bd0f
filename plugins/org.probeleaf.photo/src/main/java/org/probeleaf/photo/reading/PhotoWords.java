// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo.reading;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.photo.graticule.Corners;
import org.probeleaf.photo.graticule.Divisions;
import org.probeleaf.photo.trace.TraceColour;

/**
 * How a photograph is read, as one line of text, as a job keeps it: {@code photo volts=1.0 seconds=2.0E-5 divisions=10x8
 * corners=120.0,80.5;900.0,85.0;910.0,700.0;115.0,690.0 zero=-2.0 colour=#ffe000}. The first word tells it from the import
 * options of other captures; what is found by itself does not stand in it.
 */
public final class PhotoWords {

    private static final String FIRST = "photo";

    private PhotoWords() {
    }

    /** Whether a line tells how a photograph is read. */
    public static boolean are(String line) {
        return line.strip().equals(FIRST) || line.strip().startsWith(FIRST + " ");
    }

    /** The line. */
    public static String of(PhotoOptions options) {
        List<String> words = new ArrayList<>(List.of(FIRST));
        if (options.volts() > 0) {
            words.add("volts=" + options.volts());
        }
        if (options.seconds() > 0) {
            words.add("seconds=" + options.seconds());
        }
        if (options.divisions() != null) {
            words.add("divisions=" + options.divisions().text());
        }
        if (options.corners() != null) {
            words.add("corners=" + options.corners().text());
        }
        if (options.zero() != 0) {
            words.add("zero=" + options.zero());
        }
        if (options.colour() != null) {
            words.add("colour=" + options.colour().text());
        }
        return String.join(" ", words);
    }

    /**
     * Reads the line.
     *
     * @throws IllegalArgumentException with one sentence for a person where it is none
     */
    public static PhotoOptions parse(String line) {
        if (!are(line)) {
            throw new IllegalArgumentException("\"" + line + "\" does not tell how a photograph is read; photo volts=… is expected");
        }
        PhotoOptions options = PhotoOptions.none();
        String[] words = line.strip().split("\\s+");
        for (int i = 1; i < words.length; i++) {
            int is = words[i].indexOf('=');
            String value = words[i].substring(is + 1);
            try {
                options = switch (is < 0 ? "" : words[i].substring(0, is)) {
                    case "volts" -> options.withScale(Double.parseDouble(value), options.seconds());
                    case "seconds" -> options.withScale(options.volts(), Double.parseDouble(value));
                    case "divisions" -> options.withDivisions(Divisions.parse(value));
                    case "corners" -> options.withCorners(Corners.parse(value));
                    case "zero" -> options.withZero(Double.parseDouble(value));
                    case "colour" -> options.withColour(TraceColour.parse(value));
                    default -> throw new IllegalArgumentException("\"" + words[i] + "\" is no word about a photograph");
                };
            } catch (NumberFormatException e) {
                throw new IllegalArgumentException("\"" + words[i] + "\" has no number where one is expected");
            }
        }
        return options;
    }
}
