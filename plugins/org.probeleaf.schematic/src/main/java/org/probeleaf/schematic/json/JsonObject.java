// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.json;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/** One object of a read document, which knows where it stands so that a complaint can say so. */
record JsonObject(String where, Map<?, ?> map) {

    static JsonObject from(String where, Object value) throws IOException {
        if (value instanceof Map<?, ?> map) {
            return new JsonObject(where, map);
        }
        throw bad(where + " must be an object");
    }

    static IOException bad(String what) {
        return new IOException("is no sound netlist document: " + what);
    }

    /** The text under a key; numbers are taken as text, since designators and pins may be written so; or null. */
    String text(String key) throws IOException {
        Object v = map.get(key);
        if (v == null || v instanceof String) {
            return (String) v;
        }
        if (v instanceof Number n) {
            return n.toString();
        }
        throw bad(where + "." + key + " must be text");
    }

    String neededText(String key) throws IOException {
        String v = text(key);
        if (v == null) {
            throw bad(where + " has no \"" + key + "\"");
        }
        return v;
    }

    double number(String key, double otherwise) throws IOException {
        Object v = map.get(key);
        return v == null ? otherwise : finite(v, where + "." + key);
    }

    /** A 1-based page number. */
    int page(String key, int otherwise) throws IOException {
        Object v = map.get(key);
        return v == null ? otherwise : page(v, where + "." + key);
    }

    boolean flag(String key) {
        return Boolean.TRUE.equals(map.get(key));
    }

    /** The items of the list under a key; none where there is no such key. */
    List<?> items(String key) throws IOException {
        Object v = map.get(key);
        if (v == null) {
            return List.of();
        }
        if (v instanceof List<?> list) {
            return list;
        }
        throw bad(where + "." + key + " must be a list");
    }

    /** The objects of the list under a key, each made into something. */
    <T> List<T> objects(String key, Maker<T> maker) throws IOException {
        List<T> made = new ArrayList<>();
        int i = 0;
        for (Object item : items(key)) {
            made.add(maker.make(from((where.isEmpty() ? "" : where + ".") + key + "[" + i++ + "]", item)));
        }
        return made;
    }

    /** The point under a key, or null. */
    Point point(String key) throws IOException {
        Object v = map.get(key);
        return v == null ? null : point(v, where + "." + key);
    }

    Point neededPoint(String key) throws IOException {
        Point p = point(key);
        if (p == null) {
            throw bad(where + " has no \"" + key + "\"");
        }
        return p;
    }

    /** The points of the list under a key. */
    List<Point> points(String key) throws IOException {
        List<Point> points = new ArrayList<>();
        for (Object item : items(key)) {
            points.add(point(item, where + "." + key));
        }
        return points;
    }

    /** The box under a key, or null. */
    Box box(String key) throws IOException {
        List<?> v = items(key);
        if (v.isEmpty()) {
            return null;
        }
        String at = where + "." + key;
        if (v.size() != 4) {
            throw bad(at + " must be four numbers");
        }
        return Box.of(finite(v.get(0), at), finite(v.get(1), at), finite(v.get(2), at), finite(v.get(3), at));
    }

    static int page(Object value, String at) throws IOException {
        if (value instanceof Integer page && page >= 1) {
            return page;
        }
        throw bad(at + " must be a page number from 1");
    }

    private static Point point(Object value, String at) throws IOException {
        if (value instanceof List<?> list && list.size() == 2) {
            return new Point(finite(list.get(0), at), finite(list.get(1), at));
        }
        throw bad(at + " must be two numbers");
    }

    private static double finite(Object value, String at) throws IOException {
        if (value instanceof Number n && Double.isFinite(n.doubleValue())) {
            return n.doubleValue();
        }
        throw bad(at + " must be a number");
    }

    interface Maker<T> {
        T make(JsonObject object) throws IOException;
    }
}
