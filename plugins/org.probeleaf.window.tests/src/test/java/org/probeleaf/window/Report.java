// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.window;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import com.fasterxml.jackson.jr.ob.JSON;

import org.probeleaf.schematic.geometry.Point;

/** What the window says of itself: where its pages stand on the screen and what is selected. */
record Report(Map<String, Object> values) {

    /** The latest report; empty before the first. */
    static Optional<Report> read(Path file) {
        try {
            return Files.exists(file) ? Optional.of(new Report(JSON.std.mapFrom(Files.readString(file))))
                    : Optional.empty();
        } catch (IOException e) {
            throw new IllegalStateException("the window wrote a report that cannot be read", e);
        }
    }

    boolean flag(String key) {
        return Boolean.TRUE.equals(values.get(key));
    }

    String text(String key) {
        return String.valueOf(values.get(key));
    }

    long number(String key) {
        return ((Number) values.get(key)).longValue();
    }

    /** The canvas on the screen: x, y, width, height. */
    int[] canvas() {
        return ((List<?>) values.get("canvas")).stream().mapToInt(n -> ((Number) n).intValue()).toArray();
    }

    /** Whether a row of a list or a label in sight has these words. */
    boolean shows(String words) {
        return row(words).isPresent();
    }

    /** What follows on these words in rows and labels in sight that begin with them. */
    Stream<String> rowsAfter(String words) {
        return ((List<?>) values.get("rows")).stream().map(r -> ((List<?>) r).get(0).toString())
                .filter(r -> r.startsWith(words)).map(r -> r.substring(words.length()));
    }

    /** Whether a field or a button in sight has these words in it. */
    boolean says(String words) {
        return ((Map<?, ?>) values.get("places")).keySet().stream().anyMatch(k -> k.toString().contains(words));
    }

    /** The middle of the first row or label in sight that has these words, on the screen. */
    Optional<Point> row(String words) {
        return ((List<?>) values.get("rows")).stream().map(r -> (List<?>) r)
                .filter(r -> r.get(0).toString().contains(words)).findFirst().map(r -> new Point(
                        ((Number) r.get(1)).doubleValue(), ((Number) r.get(2)).doubleValue()));
    }

    /** The middle of a tab, a button or a tool in sight, on the screen; empty where there is none of these words. */
    Optional<Point> place(String words) {
        return ((Map<?, ?>) values.get("places")).entrySet().stream().filter(e -> e.getKey().equals(words)).findFirst()
                .map(e -> (List<?>) e.getValue())
                .map(xy -> new Point(((Number) xy.get(0)).doubleValue(), ((Number) xy.get(1)).doubleValue()));
    }

    /** Where a spot of a page is on the screen; empty where the page is not in sight. */
    Optional<Point> onScreen(int page, Point at) {
        for (Object o : (List<?>) values.get("pages")) {
            Map<?, ?> p = (Map<?, ?>) o;
            if (((Number) p.get("page")).intValue() == page) {
                double zoom = ((Number) p.get("zoom")).doubleValue();
                return Optional.of(new Point(((Number) p.get("x")).doubleValue() + at.x() * zoom,
                        ((Number) p.get("y")).doubleValue() + at.y() * zoom));
            }
        }
        return Optional.empty();
    }
}
