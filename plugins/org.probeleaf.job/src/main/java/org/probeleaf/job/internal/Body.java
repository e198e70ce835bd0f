// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.internal;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.probeleaf.job.mark.Offset;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.place.Place;

/** A JSON object on its way out of or into the job file; reading a field that is missing or of another type fails. */
final class Body {

    private final Map<String, Object> fields;

    private Body(Map<String, Object> fields) {
        this.fields = fields;
    }

    static Body empty() {
        return new Body(new LinkedHashMap<>());
    }

    @SuppressWarnings("unchecked")
    static Body of(Object object) {
        if (object instanceof Map<?, ?> map) {
            return new Body((Map<String, Object>) map);
        }
        throw new IllegalArgumentException("an object is missing");
    }

    Map<String, Object> fields() {
        return fields;
    }

    /** Sets a field; null leaves it out. */
    Body with(String name, Object value) {
        if (value != null) {
            fields.put(name, value);
        }
        return this;
    }

    Body with(String name, Point p) {
        return with(name, List.of(p.x(), p.y()));
    }

    Body with(String name, Offset o) {
        return o == null ? this : with(name, List.of(o.dx(), o.dy()));
    }

    Body with(String name, Instant t) {
        return with(name, t.toString());
    }

    Body with(String name, Place p) {
        return with(name, p.text());
    }

    Body with(String name, Body inner) {
        return inner == null ? this : with(name, (Object) inner.fields);
    }

    boolean has(String name) {
        return fields.containsKey(name);
    }

    String text(String name) {
        if (fields.get(name) instanceof String s) {
            return s;
        }
        throw new IllegalArgumentException("the text \"" + name + "\" is missing");
    }

    /** The text, or null where the field is left out. */
    String textOrNull(String name) {
        return has(name) ? text(name) : null;
    }

    boolean flag(String name) {
        if (fields.get(name) instanceof Boolean b) {
            return b;
        }
        throw new IllegalArgumentException("the yes or no \"" + name + "\" is missing");
    }

    double number(String name) {
        return number(fields.get(name), name);
    }

    int whole(String name) {
        return (int) number(name);
    }

    Instant instant(String name) {
        return Instant.parse(text(name));
    }

    Place place(String name) {
        return Place.parse(text(name));
    }

    Point point(String name) {
        List<?> pair = pair(name);
        return new Point(number(pair.get(0), name), number(pair.get(1), name));
    }

    /** The offset, or null where the field is left out. */
    Offset offset(String name) {
        if (!has(name)) {
            return null;
        }
        List<?> pair = pair(name);
        return new Offset(number(pair.get(0), name), number(pair.get(1), name));
    }

    List<String> texts(String name) {
        if (fields.get(name) instanceof List<?> list) {
            return list.stream().map(String.class::cast).toList();
        }
        throw new IllegalArgumentException("the list \"" + name + "\" is missing");
    }

    /** A list of the given length of numbers. */
    List<Double> numbers(String name, int count) {
        if (fields.get(name) instanceof List<?> list && list.size() == count) {
            return list.stream().map(v -> number(v, name)).toList();
        }
        throw new IllegalArgumentException("the numbers \"" + name + "\" are missing");
    }

    List<Body> bodies(String name) {
        if (fields.get(name) instanceof List<?> list) {
            return list.stream().map(Body::of).toList();
        }
        throw new IllegalArgumentException("the list \"" + name + "\" is missing");
    }

    Body body(String name) {
        return of(fields.get(name));
    }

    private List<?> pair(String name) {
        if (fields.get(name) instanceof List<?> list && list.size() == 2) {
            return list;
        }
        throw new IllegalArgumentException("the pair \"" + name + "\" is missing");
    }

    private static double number(Object value, String name) {
        if (value instanceof Number n) {
            return n.doubleValue();
        }
        throw new IllegalArgumentException("the number \"" + name + "\" is missing");
    }
}
