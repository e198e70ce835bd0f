// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.ink;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.probeleaf.drawing.primitive.Text;
import org.probeleaf.recognition.ink.Segment.Shape;
import org.probeleaf.schematic.geometry.Point;

/**
 * Finds out which line styles are wires and which are buses. Wires are what junction dots sit on: a style is a wire
 * style where dots lie on its lines and nearly all of its ink is open straight lines. A bus is a style much thicker
 * than wires, of open straight lines only.
 */
final class StyleRoles {

    /** What a style is used for. */
    enum Role {
        WIRE, BUS, SYMBOL
    }

    private static final int SAME_COLOUR = 5;
    private static final int OTHER_COLOUR = 4;
    /** The least share of the long lines of the style that has most of them that wires have. */
    private static final double LEAST_LONG = 0.25;

    private final Role[] roles;

    StyleRoles(List<Segment> segments, List<Style> styles, List<Dot> dots, List<Text> texts, double pitch,
            double reach) {
        int n = styles.size();
        roles = new Role[n];
        Arrays.fill(roles, Role.SYMBOL);
        double[] straight = new double[n];
        double[] other = new double[n];
        double[] longest = new double[n];
        double[] longInk = new double[n];
        measure(segments, pitch, straight, other, longest, longInk);
        boolean[] open = new boolean[n];
        for (int i = 0; i < n; i++) {
            open[i] = straight[i] > 0 && other[i] <= 0.08 * (straight[i] + other[i]) && !styles.get(i).dashed()
                    && longest[i] > 2 * pitch;
        }
        List<int[]> junctions = junctions(segments, styles, dots, reach, pitch);
        if (!chooseByDots(junctions, open)) {
            chooseByLength(aloof(longInk, segments, reach), straight, other, styles, open);
        }
        boolean[] leads = LeadStyles.find(segments, texts, pitch, n);
        for (int i = 0; i < n; i++) {
            // Leads and wires of one style: it is no style of wires alone.
            roles[i] = leads[i] ? Role.SYMBOL : roles[i];
        }
        findBuses(segments, styles, open, reach);
    }

    /** Takes the style that explains most junctions, then the next for what that one leaves, and so on. */
    private boolean chooseByDots(List<int[]> junctions, boolean[] open) {
        int all = junctions.size();
        List<int[]> left = new ArrayList<>(junctions);
        boolean found = false;
        while (!left.isEmpty()) {
            int best = -1;
            int most = 0;
            for (int i = 0; i < open.length; i++) {
                int style = i;
                int explained = open[i] ? left.stream().mapToInt(j -> j[style]).sum() : 0;
                if (explained > most) {
                    most = explained;
                    best = i;
                }
            }
            if (best < 0 || most < SAME_COLOUR * Math.max(2, 0.25 * all)) {
                return found;
            }
            roles[best] = Role.WIRE;
            found = true;
            int chosen = best;
            left.removeIf(j -> j[chosen] > 0);
        }
        return found;
    }

    /**
     * Each style's ink weighed by the share of its lines that keep off closed outlines: leads end on the symbols they
     * belong to, wires end on leads.
     */
    private static double[] aloof(double[] ink, List<Segment> segments, double reach) {
        SpatialIndex<Segment> closed = SpatialIndex.ofSegments(
                segments.stream().filter(s -> s.shape() == Shape.CLOSED).toList());
        int[] lines = new int[ink.length];
        int[] leads = new int[ink.length];
        for (Segment s : segments) {
            if (s.shape() == Shape.LINE && s.upright()) {
                lines[s.style()]++;
                boolean ends = onAny(s.a(), closed, reach) || onAny(s.b(), closed, reach);
                leads[s.style()] += ends ? 1 : 0;
            }
        }
        double[] weighed = ink.clone();
        for (int i = 0; i < ink.length; i++) {
            weighed[i] *= 1 - 0.9 * leads[i] / Math.max(1, lines[i]);
        }
        return weighed;
    }

    private static boolean onAny(Point end, SpatialIndex<Segment> index, double reach) {
        return index.near(end, reach).stream().anyMatch(t -> t.distance(end) <= reach);
    }

    /**
     * Without dots to go by, the open style with most long lines is taken for wires, unless it is thicker than the
     * style that most of the page is drawn in: then wires and symbols share that one, and no style is wires alone.
     */
    private void chooseByLength(double[] longInk, double[] straight, double[] other, List<Style> styles,
            boolean[] open) {
        int best = -1;
        int commonest = -1;
        for (int i = 0; i < open.length; i++) {
            if (open[i] && (best < 0 || longInk[i] > longInk[best])) {
                best = i;
            }
            if (commonest < 0 || straight[i] + other[i] > straight[commonest] + other[commonest]) {
                commonest = i;
            }
        }
        boolean enough = best >= 0 && longInk[best] >= LEAST_LONG * Arrays.stream(longInk).max().orElse(0);
        if (enough && styles.get(best).width() <= 1.5 * Math.max(1, styles.get(commonest).width())) {
            roles[best] = Role.WIRE;
        }
    }

    /** A bus is thicker than a wire, has no closed shapes and free ends, and thinner lines end on its side. */
    private void findBuses(List<Segment> segments, List<Style> styles, boolean[] open, double reach) {
        double wireWidth = wireWidth(segments, styles);
        List<Segment> thick = new ArrayList<>();
        List<Segment> thin = new ArrayList<>();
        boolean anyWires = Arrays.asList(roles).contains(Role.WIRE);
        for (Segment s : segments) {
            if (open[s.style()] && s.width() > 1.7 * wireWidth && s.width() > 0.4
                    && roles[s.style()] != Role.WIRE) {
                thick.add(s);
            } else if (anyWires ? roles[s.style()] == Role.WIRE : s.shape() == Shape.LINE) {
                thin.add(s);
            }
        }
        SpatialIndex<Segment> index = SpatialIndex.ofSegments(thick, s -> s.width() / 2);
        int[] entries = new int[styles.size()];
        int[] freeEnds = new int[styles.size()];
        int[] ends = new int[styles.size()];
        for (Segment w : thin) {
            countMeetings(w, index, reach, entries);
        }
        for (Segment t : thick) {
            for (Point end : new Point[] {t.a(), t.b()}) {
                ends[t.style()]++;
                boolean met = index.near(end, reach).stream().anyMatch(u -> u != t && u.distance(end) <= reach);
                freeEnds[t.style()] += met ? 0 : 1;
            }
        }
        for (int i = 0; i < entries.length; i++) {
            if (entries[i] >= 4 && freeEnds[i] >= 0.15 * ends[i]) {
                roles[i] = Role.BUS;
            }
        }
    }

    private static void countMeetings(Segment w, SpatialIndex<Segment> thick, double reach, int[] entries) {
        for (Point end : new Point[] {w.a(), w.b()}) {
            for (Segment t : thick.near(end, reach)) {
                if (t.distance(end) <= reach + t.width() / 2) {
                    entries[t.style()] += isPlate(t, end, thick, reach) ? 0 : 1;
                    break;
                }
            }
        }
    }

    /** Whether a thick line that is met right in its middle has its like right opposite: the plates of a capacitor. */
    private static boolean isPlate(Segment t, Point met, SpatialIndex<Segment> thick, double reach) {
        boolean central = Math.abs(met.distance(t.a()) - met.distance(t.b())) <= 2 * reach;
        return central && thick.touching(t.box().grow(0.6 * t.length())).stream().anyMatch(u -> u != t
                && u.style() == t.style() && u.horizontal() == t.horizontal()
                && Math.abs(u.length() - t.length()) <= reach
                && Math.abs(u.distance(t.a()) - u.distance(t.b())) <= reach && u.distance(t.a()) > reach
                && t.distance(u.a()) <= u.distance(t.a()) + reach);
    }

    Role role(int style) {
        return roles[style];
    }

    /** The width of the widest wire style, or of the commonest line style where no style is wires alone. */
    private double wireWidth(List<Segment> segments, List<Style> styles) {
        double width = 0;
        int[] count = new int[roles.length];
        int commonest = 0;
        for (Segment s : segments) {
            count[s.style()]++;
            commonest = count[s.style()] > count[commonest] ? s.style() : commonest;
        }
        for (int i = 0; i < roles.length; i++) {
            if (roles[i] == Role.WIRE) {
                width = Math.max(width, styles.get(i).width() / 20.0);
            }
        }
        return width > 0 || styles.isEmpty() ? width : Math.max(0, styles.get(commonest).width() / 20.0);
    }

    private static void measure(List<Segment> segments, double pitch, double[] straight, double[] other,
            double[] longest, double[] longInk) {
        for (Segment s : segments) {
            // A wire with a rounded corner or a hop, in one stroke with them, is straight for the most part.
            if (s.shape() == Shape.LINE || s.shape() == Shape.CURVED && s.upright() && s.length() > 2 * pitch) {
                straight[s.style()] += s.length();
                longest[s.style()] = Math.max(longest[s.style()], s.length());
                if (s.upright() && s.length() > 2 * pitch) {
                    longInk[s.style()] += s.length();
                }
            } else {
                other[s.style()] += s.length();
            }
        }
    }

    /**
     * For each dot on which three or more line ends meet: a weight for each style with a line under it, more where
     * the line is of the dot's own colour.
     */
    private static List<int[]> junctions(List<Segment> segments, List<Style> styles, List<Dot> dots, double reach,
            double pitch) {
        SpatialIndex<Segment> index = SpatialIndex.ofSegments(segments);
        List<int[]> junctions = new ArrayList<>();
        List<Double> radii = new ArrayList<>();
        for (Dot dot : dots) {
            if (dot.radius() > 0.6 * pitch) {
                continue;
            }
            int[] under = new int[styles.size()];
            int lines = 0;
            for (Segment s : index.near(dot.at(), reach)) {
                if (s.shape() == Shape.LINE && s.upright() && s.distance(dot.at()) <= reach) {
                    lines += s.nearerEnd(dot.at()).distance(dot.at()) > reach ? 2 : 1;
                    boolean same = styles.get(s.style()).rgb() == dot.rgb();
                    under[s.style()] = same ? SAME_COLOUR : OTHER_COLOUR;
                }
            }
            if (lines >= 3) {
                junctions.add(under);
                radii.add(dot.radius());
            }
        }
        return ofCommonestSize(junctions, radii);
    }

    /** Junction dots on a page are of one size; spots of another size belong to symbols. */
    private static List<int[]> ofCommonestSize(List<int[]> junctions, List<Double> radii) {
        double common = 0;
        long most = 0;
        for (double r : radii) {
            long alike = radii.stream().filter(q -> Math.abs(q - r) < 0.15 * r).count();
            if (alike > most) {
                most = alike;
                common = r;
            }
        }
        List<int[]> kept = new ArrayList<>();
        for (int i = 0; i < junctions.size(); i++) {
            if (Math.abs(radii.get(i) - common) < 0.15 * common) {
                kept.add(junctions.get(i));
            }
        }
        return kept;
    }
}
