// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.TreeSet;

import org.probeleaf.drawing.primitive.Drawing;

/**
 * A sheet drawn at random, with its nets as {@link Reading#nets} writes them: three rows of three chips, neighbours
 * joined pin to pin by straight wires, through resistors or by label, some wires tied by upright ones with dots that
 * cross others without, and some pins on a supply.
 */
final class WiredSheet {

    private final Random random;
    private final Sketch sketch = new Sketch();
    /** For each pin, by its name, the pin that stands for its net. */
    private final Map<String, String> standsFor = new TreeMap<>();
    /** Names of nets by the pin that stood for them when they were named. */
    private final Map<String, String> names = new TreeMap<>();
    private int resistors;

    private WiredSheet(long seed) {
        random = new Random(seed);
        for (int row = 0; row < 3; row++) {
            double y = 100 + 150 * row;
            for (int column = 0; column < 3; column++) {
                sketch.chip(chip(row, column), 60 + 240 * column, y, 4, 4);
            }
            if (random.nextBoolean()) {
                sketch.wire(60, y, 40, y, 40, y - 30).supply("+5V", 40, y - 30);
                name(chip(row, 0) + ".1", "+5V");
            }
            wireUp(row, 0, y);
            wireUp(row, 1, y);
        }
    }

    static WiredSheet of(long seed) {
        return new WiredSheet(seed);
    }

    Drawing page() {
        return sketch.page(1);
    }

    private static String chip(int row, int column) {
        return "IC" + (3 * row + column + 1);
    }

    /** Draws what lies between a chip and the next one to the right. */
    private void wireUp(int row, int column, double y) {
        double x = 60 + 240 * column;
        boolean[] straight = new boolean[4];
        for (int i = 0; i < 4; i++) {
            double at = y + 10 * i;
            String left = chip(row, column) + "." + (5 + i);
            String right = chip(row, column + 1) + "." + (1 + i);
            switch (random.nextInt(5)) {
                case 0, 1 -> {
                    straight[i] = true;
                    sketch.wire(x + 100, at, x + 240, at);
                    join(left, right);
                }
                case 2 -> {
                    String label = "S" + random.nextInt(3) + "X";
                    sketch.wire(x + 100, at, x + 110 + 5 * i, at).text(label, x + 102, at - 1, 5);
                    name(left, label);
                }
                case 3 -> {
                    if (i == 0) {
                        String r = "R" + ++resistors;
                        sketch.wire(x + 100, at, x + 150, at).resistor(r, x + 150, at).wire(x + 190, at, x + 240, at);
                        join(left, r + ".?1");
                        join(right, r + ".?1 ");
                    }
                }
                default -> {
                    // left open
                }
            }
        }
        for (int i = 0; i < 2; i++) {
            if (straight[i] && straight[i + 2] && random.nextBoolean()) {
                double across = x + 205 + 12 * i;
                sketch.wire(across, y + 10 * i, across, y + 10 * i + 20).dot(across, y + 10 * i)
                        .dot(across, y + 10 * i + 20);
                join(chip(row, column) + "." + (5 + i), chip(row, column) + "." + (7 + i));
            }
        }
    }

    private String net(String pin) {
        String at = standsFor.computeIfAbsent(pin, k -> pin);
        return at.equals(pin) ? pin : net(at);
    }

    private void join(String a, String b) {
        String kept = net(a);
        String gone = net(b);
        standsFor.put(gone, kept);
    }

    private void name(String pin, String name) {
        String first = names.putIfAbsent(name, pin);
        join(pin, first == null ? pin : first);
    }

    /** What {@link Reading#nets} is to say. */
    String nets() {
        Map<String, TreeSet<String>> pins = new TreeMap<>();
        for (String pin : List.copyOf(standsFor.keySet())) {
            pins.computeIfAbsent(net(pin), k -> new TreeSet<>()).add(pin.strip());
        }
        Map<String, String> nameOf = new TreeMap<>();
        names.forEach((name, pin) -> nameOf.put(net(pin), name));
        List<String> lines = new ArrayList<>();
        pins.forEach((net, here) -> lines.add(nameOf.getOrDefault(net, "-") + ": " + String.join(" ", here)));
        return String.join("; ", new TreeSet<>(lines));
    }
}
