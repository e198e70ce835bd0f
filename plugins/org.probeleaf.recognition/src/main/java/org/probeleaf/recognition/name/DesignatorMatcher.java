// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.name;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

import org.jgrapht.Graph;
import org.jgrapht.alg.matching.MaximumWeightBipartiteMatching;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;
import org.probeleaf.drawing.primitive.Text;
import org.probeleaf.recognition.ink.PageInk;
import org.probeleaf.recognition.ink.SpatialIndex;
import org.probeleaf.recognition.name.DesignatorGrammar.Designator;
import org.probeleaf.recognition.symbol.Body;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/**
 * Gives each symbol its designator. Texts of the right form compete for the symbols near them: a known class of part,
 * the style that the page sets its designators in, and closeness speak for a pair. Texts inside a symbol with many
 * pins are its pin names and do not compete.
 */
final class DesignatorMatcher {

    private static final double FARTHEST = 6;
    /** Classes of part that have two pins at least. */
    private static final Set<String> NEVER_ONE_PIN = Set.of("R", "C", "L", "D", "Q", "F", "FB", "Y", "RN", "RR", "VR", "RV",
            "ZD");
    private static final double SIDE_WEIGHT = 1.0;
    /** What speaks against a text that is one of a column of like ones beside the symbol. */
    private static final double IN_COLUMN = 2;
    /** What it costs to leave a text and a symbol unpaired. */
    private static final double UNPAIRED = 10;

    private final PageInk page;
    private final List<Body> bodies;
    private final Map<Integer, Integer> pinCount;
    private final TextPool pool;
    private final Map<Integer, Text> chosen = new HashMap<>();
    private final Map<TextStyle, Double> styleTrust = new HashMap<>();

    private record Pair(Text text, int body, double cost) {
    }

    /**
     * @param pinCount contacts of each body, by id
     */
    DesignatorMatcher(PageInk page, List<Body> bodies, Map<Integer, Integer> pinCount, TextPool pool) {
        this.page = page;
        this.bodies = bodies;
        this.pinCount = pinCount;
        this.pool = pool;
    }

    /** Names the symbols with two pins or more; returns the designator texts by id of the body, which grow later. */
    Map<Integer, Text> matchParts(Set<Integer> candidates) {
        judgeStyles();
        List<Body> parts = bodies.stream().filter(b -> candidates.contains(b.id()) && pinCount.get(b.id()) > 1)
                .toList();
        matchAmong(parts, false);
        matchInside(parts);
        matchUnusualNames(parts);
        return chosen;
    }

    /**
     * Names symbols with many pins that have no designator beside them but one inside: with little else there but a
     * value, or of a class that names chips and plugs only.
     */
    private void matchInside(List<Body> able) {
        for (Body b : able) {
            if (!chosen.containsKey(b.id()) && b.outline() != null && pinCount.get(b.id()) >= 4) {
                List<Text> inside = pool.freeIn(b.outline()).stream()
                        .filter(t -> t.text().matches("(U|IC|CN|CON|X?J)\\d{1,3}") || isAlone(t, b.outline())).toList();
                if (inside.size() == 1) {
                    chosen.put(b.id(), inside.get(0));
                    pool.take(inside.get(0));
                }
            }
        }
    }

    private boolean isAlone(Text t, Box outline) {
        Designator d = DesignatorGrammar.parse(t.text());
        long others = pool.all().stream().filter(o -> o != t && outline.contains(o.box().centre())).count();
        return d != null && d.strong() && others < 3 && outline.grow(-0.6 * page.pitch()).contains(t.box());
    }

    /** Names symbols with one pin, such as test points, with known classes of part only. */
    void matchSinglePins(Set<Integer> candidates, Set<Integer> spoken) {
        matchAmong(bodies.stream().filter(b -> candidates.contains(b.id()) && pinCount.get(b.id()) == 1
                && !spoken.contains(b.id()) && !Shapes.isCross(b)).toList(), true);
    }

    private void matchAmong(List<Body> able, boolean knownClassOnly) {
        SpatialIndex<Body> index = new SpatialIndex<>(able, Body::box);
        List<Pair> pairs = new ArrayList<>();
        for (Text t : pool.free()) {
            Designator d = DesignatorGrammar.parse(t.text());
            if (d == null || knownClassOnly && !mayHaveOnePin(d) || insideManyPins(t, index)) {
                continue;
            }
            for (Body b : index.touching(t.box().grow(FARTHEST * page.pitch()))) {
                double cost = cost(t, d, b) + (isInColumn(t, d, b) ? IN_COLUMN : 0);
                if (cost < FARTHEST) {
                    pairs.add(new Pair(t, b.id(), cost));
                }
            }
        }
        assign(pairs);
    }

    /**
     * Whether a text stands beside a symbol in a column, or above or below it in a row, with another that differs in
     * its number only: the names of its pins, drawn outside.
     */
    private boolean isInColumn(Text t, Designator d, Body b) {
        if (b.outline() == null || pinCount.getOrDefault(b.id(), 0) < 2) {
            return false;
        }
        Box o = b.outline();
        Point c = t.box().centre();
        boolean beside = c.y() > o.y0() && c.y() < o.y1() && !o.contains(c);
        boolean above = c.x() > o.x0() && c.x() < o.x1() && !o.contains(c);
        String letters = DesignatorGrammar.letters(d.ref());
        double apart = 2.2 * page.pitch();
        for (Text u : pool.freeIn(t.box().grow(apart))) {
            Point e = u.box().centre();
            boolean column = beside && e.y() > o.y0() && e.y() < o.y1()
                    && (Math.abs(u.box().x0() - t.box().x0()) <= page.reach()
                    || Math.abs(u.box().x1() - t.box().x1()) <= page.reach());
            boolean row = above && e.x() > o.x0() && e.x() < o.x1() && Math.abs(e.y() - c.y()) <= page.reach();
            if (u != t && (column || row) && TextStyle.of(u).equals(TextStyle.of(t))
                    && u.text().matches(Pattern.quote(letters) + "\\d+") && !u.text().equals(t.text())) {
                return true;
            }
        }
        return false;
    }

    private static boolean mayHaveOnePin(Designator d) {
        return d.strong() && !NEVER_ONE_PIN.contains(DesignatorGrammar.letters(d.ref()));
    }

    private void judgeStyles() {
        Map<TextStyle, Integer> all = new HashMap<>();
        Map<TextStyle, Set<String>> strong = new HashMap<>();
        for (Text t : pool.free()) {
            Designator d = DesignatorGrammar.parse(t.text());
            if (d != null) {
                TextStyle style = TextStyle.of(t);
                all.merge(style, 1, Integer::sum);
                if (d.strong() && !d.ref().matches("D\\d+")) {
                    strong.computeIfAbsent(style, k -> new HashSet<>()).add(t.text());
                }
            }
        }
        int most = strong.values().stream().mapToInt(Set::size).max().orElse(0);
        for (Map.Entry<TextStyle, Integer> e : all.entrySet()) {
            int count = strong.getOrDefault(e.getKey(), Set.of()).size();
            double share = (double) count / e.getValue();
            double weight = most == 0 ? 0 : Math.min(1, 3.0 * count / most);
            styleTrust.put(e.getKey(), share * weight);
        }
    }

    private boolean insideManyPins(Text t, SpatialIndex<Body> index) {
        for (Body b : index.touching(t.box())) {
            boolean inside = b.outline() != null && b.outline().grow(0.1 * page.pitch()).contains(t.box().centre());
            if (inside && pinCount.getOrDefault(b.id(), 0) >= 4 && holdsOtherTexts(b, t)) {
                return true;
            }
        }
        return false;
    }

    private boolean holdsOtherTexts(Body b, Text t) {
        return pool.all().stream().anyMatch(o -> o != t && b.outline().contains(o.box().centre()));
    }

    private double cost(Text t, Designator d, Body b) {
        double pitch = page.pitch();
        double gap = b.box().distance(t.box()) / pitch;
        double centre = 0.12 * Math.min(8, b.box().distance(t.box().centre()) / pitch);
        int pins = pinCount.getOrDefault(b.id(), 0);
        double cost = gap + centre + (d.strong() ? 0 : 1.5) + 2 * (1 - styleTrust.getOrDefault(TextStyle.of(t), 0.0));
        return cost + unlikelihood(d, pins, b.box()) + Shapes.misfit(DesignatorGrammar.letters(d.ref()), b, pitch);
    }

    private double unlikelihood(Designator d, int pins, Box box) {
        String letters = DesignatorGrammar.letters(d.ref());
        double large = Math.max(box.width(), box.height()) / page.pitch();
        return switch (letters) {
            case "R", "C", "L", "D", "F", "FB" -> pins == 2 ? 0 : pins > 3 || pins < 1 ? 2 : 0.8;
            case "Q", "T" -> pins == 3 ? 0 : pins < 2 || pins > 8 ? 1.5 : 0.4;
            case "U", "IC" -> pins < 2 ? 1.5 : large < 2 ? 1 : 0;
            case "TP" -> pins == 1 ? 0 : 1;
            default -> pins == 1 ? 1 : pins == 0 ? 1.5 : 0;
        };
    }

    /**
     * Pages set designators on the same side of like symbols. The side is learnt from the closest pairs and weighs on
     * all: between two rows of resistors a designator belongs to the row that the other designators speak for.
     */
    private List<Pair> preferSides(List<Pair> pairs) {
        Map<Text, Pair> closest = new HashMap<>();
        pairs.forEach(p -> closest.merge(p.text(), p, (a, b) -> a.cost() <= b.cost() ? a : b));
        Map<String, Integer> votes = new HashMap<>();
        closest.values().forEach(p -> votes.merge(side(p), 1, Integer::sum));
        Map<String, Integer> total = new HashMap<>();
        votes.forEach((k, v) -> total.merge(k.substring(1), v, Integer::sum));
        return pairs.stream().map(p -> {
            String side = side(p);
            double share = (double) votes.getOrDefault(side, 0) / Math.max(1, total.getOrDefault(side.substring(1), 0));
            return new Pair(p.text(), p.body(), p.cost() + SIDE_WEIGHT * (1 - share));
        }).toList();
    }

    /** The side a text is on, with the lie of the symbol behind it. */
    private String side(Pair p) {
        Box b = bodies.get(p.body()).box();
        double dx = p.text().box().centre().x() - b.centre().x();
        double dy = p.text().box().centre().y() - b.centre().y();
        double w = b.width() / 2 + page.pitch();
        double h = b.height() / 2 + page.pitch();
        String where = Math.abs(dx) / w > Math.abs(dy) / h ? dx > 0 ? "E" : "W" : dy > 0 ? "S" : "N";
        return where + (b.width() > 1.3 * b.height() ? "-" : b.height() > 1.3 * b.width() ? "|" : "+");
    }

    /**
     * Pairs texts and symbols so that all pairs together cost least and as many as can be are paired: where a text
     * stands between two symbols, the whole row decides.
     */
    private void assign(List<Pair> found) {
        Map<String, Integer> copies = new HashMap<>();
        found.stream().map(Pair::text).distinct().forEach(t -> copies.merge(t.text(), 1, Integer::sum));
        Graph<Object, DefaultWeightedEdge> graph = new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
        Map<DefaultWeightedEdge, Pair> pairOf = new HashMap<>();
        Set<Object> texts = new LinkedHashSet<>();
        Set<Object> symbols = new LinkedHashSet<>();
        for (Pair p : preferSides(found)) {
            boolean remoteCopy = copies.get(p.text().text()) > 1 && p.cost() > 3;
            if (remoteCopy || chosen.containsKey(p.body()) || p.cost() >= UNPAIRED) {
                continue;
            }
            texts.add(p.text());
            symbols.add(p.body());
            graph.addVertex(p.text());
            graph.addVertex(p.body());
            DefaultWeightedEdge edge = graph.addEdge(p.text(), p.body());
            if (edge == null) {
                // The same text drawn twice at one place is one text.
                continue;
            }
            graph.setEdgeWeight(edge, Math.round(1000 * (UNPAIRED - p.cost())));
            pairOf.put(edge, p);
        }
        if (!texts.isEmpty()) {
            for (DefaultWeightedEdge e : new MaximumWeightBipartiteMatching<>(graph, texts, symbols).getMatching()) {
                Pair p = pairOf.get(e);
                chosen.put(p.body(), p.text());
                pool.take(p.text());
            }
        }
    }

    /** Some parts bear a plain word; a symbol with pins left over takes the word set like the designators beside it. */
    private void matchUnusualNames(List<Body> able) {
        Set<TextStyle> styles = new HashSet<>();
        chosen.values().forEach(t -> styles.add(TextStyle.of(t)));
        for (Body b : able) {
            int pins = pinCount.getOrDefault(b.id(), 0);
            boolean large = pins > 2
                    ? Math.max(b.box().width(), b.box().height()) > 1.8 * page.pitch()
                            && Math.min(b.box().width(), b.box().height()) > 0.6 * page.pitch()
                    : b.box().width() > 1.8 * page.pitch() && b.box().height() > 1.4 * page.pitch();
            if (chosen.containsKey(b.id()) || pins < 2 || !large) {
                continue;
            }
            Text best = null;
            for (Text t : pool.freeIn(b.box().grow(1.6 * page.pitch()))) {
                boolean word = t.text().matches(pins > 2 ? "[\\p{L}][\\p{L}\\p{N}_+./-]{0,15}" : "\\p{Lu}+\\d?")
                        && !t.text().matches(".*(GND|VCC|VDD|VSS|VEE).*");
                boolean outside = !b.box().grow(-0.3 * page.pitch()).contains(t.box().centre());
                if (word && outside && styles.contains(TextStyle.of(t)) && (best == null
                        || rank(t, b) < rank(best, b))) {
                    best = t;
                }
            }
            if (best != null) {
                chosen.put(b.id(), best);
                pool.take(best);
            }
        }
    }

    /** Of two words at a symbol the upper, else the left one, is its name, unless it is full of digits like a type. */
    private static double rank(Text t, Body b) {
        long digits = t.text().chars().filter(Character::isDigit).count();
        return digits * 1.1 + place(t, b);
    }

    private static double place(Text t, Body b) {
        return t.box().centre().y() < b.box().y0() ? 0 : t.box().centre().x() < b.box().x0() ? 1
                : t.box().centre().x() > b.box().x1() ? 2 : 3;
    }
}
