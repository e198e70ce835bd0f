// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo.graticule;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The four corners of a graticule, in picture pixels. */
public record Corners(Spot topLeft, Spot topRight, Spot bottomRight, Spot bottomLeft) {

    private static final double LEAST = 8;

    /**
     * Of four places in any order.
     *
     * @throws IllegalArgumentException with one sentence for a person where they make no screen
     */
    public static Corners sorted(List<Spot> spots) {
        if (spots.size() != 4) {
            throw new IllegalArgumentException("a graticule has four corners, x,y each; " + spots.size() + " are given");
        }
        double cx = spots.stream().mapToDouble(Spot::x).average().orElseThrow();
        double cy = spots.stream().mapToDouble(Spot::y).average().orElseThrow();
        List<Spot> round = new ArrayList<>(spots);
        // Clockwise as seen, since y runs down.
        round.sort((a, b) -> Double.compare(Math.atan2(a.y() - cy, a.x() - cx), Math.atan2(b.y() - cy, b.x() - cx)));
        int first = 0;
        for (int i = 1; i < 4; i++) {
            if (round.get(i).x() + round.get(i).y() < round.get(first).x() + round.get(first).y()) {
                first = i;
            }
        }
        Corners corners = new Corners(round.get(first), round.get((first + 1) % 4), round.get((first + 2) % 4),
                round.get((first + 3) % 4));
        if (!corners.convex()) {
            throw new IllegalArgumentException("the four corners make no screen; mark the outermost corners of the graticule");
        }
        return corners;
    }

    /**
     * Reads {@code x,y;x,y;x,y;x,y}.
     *
     * @throws IllegalArgumentException with one sentence for a person
     */
    public static Corners parse(String text) {
        List<Spot> spots = new ArrayList<>();
        for (String pair : text.strip().split("[;\\s]+")) {
            String[] xy = pair.split(",");
            try {
                if (xy.length != 2) {
                    throw new NumberFormatException();
                }
                double x = Double.parseDouble(xy[0]);
                double y = Double.parseDouble(xy[1]);
                if (!(Math.abs(x) < 1e6 && Math.abs(y) < 1e6)) {
                    throw new NumberFormatException();
                }
                spots.add(new Spot(x, y));
            } catch (NumberFormatException e) {
                throw new IllegalArgumentException("\"" + pair + "\" is no corner; four corners as x,y;x,y;x,y;x,y are expected,"
                        + " in pixels from the top left");
            }
        }
        return sorted(spots);
    }

    private boolean convex() {
        List<Spot> s = list();
        for (int i = 0; i < 4; i++) {
            Spot a = s.get(i);
            Spot b = s.get((i + 1) % 4);
            Spot c = s.get((i + 2) % 4);
            double turn = (b.x() - a.x()) * (c.y() - b.y()) - (b.y() - a.y()) * (c.x() - b.x());
            if (!(turn > LEAST * LEAST) || a.distance(b) < LEAST) {
                return false;
            }
        }
        return true;
    }

    /** Clockwise from the top left. */
    public List<Spot> list() {
        return List.of(topLeft, topRight, bottomRight, bottomLeft);
    }

    /** As {@link #parse} reads it, to a tenth of a pixel. */
    public String text() {
        StringBuilder out = new StringBuilder();
        for (Spot s : list()) {
            out.append(out.isEmpty() ? "" : ";").append(String.format(Locale.ROOT, "%.1f,%.1f", s.x(), s.y()));
        }
        return out.toString();
    }

    /** The length of the longer of two sides that lie opposite each other, in pixels: the upper and the lower. */
    public double width() {
        return Math.max(topLeft.distance(topRight), bottomLeft.distance(bottomRight));
    }

    /** The same of the left and the right side. */
    public double height() {
        return Math.max(topLeft.distance(bottomLeft), topRight.distance(bottomRight));
    }
}
