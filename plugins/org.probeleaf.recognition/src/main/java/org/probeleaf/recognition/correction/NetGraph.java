// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.correction;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

import org.probeleaf.recognition.correction.Draft.Cut;
import org.probeleaf.recognition.correction.Draft.Link;
import org.probeleaf.recognition.correction.Draft.NetDraft;
import org.probeleaf.recognition.correction.Draft.PinRef;
import org.probeleaf.recognition.ink.Groups;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.LabelKind;
import org.probeleaf.schematic.netlist.NetLabel;

/**
 * What holds a net together: its pieces of wire, drawn pins and labels, joined where they touch, where they bear one
 * name, and where something else is known to join them. Pins that are not drawn are no part of it.
 */
final class NetGraph {

    /** Gaps that a reading may have bridged, tried in this order, in points. */
    private static final double[] GAPS = {1.5, 3, 6, 12};

    private final Draft draft;
    private final NetDraft net;
    private final List<Element> elements = new ArrayList<>();
    private final Groups groups;

    /** A piece of wire, a pin or a label; the latter two are points. */
    private record Element(Seg seg, PinRef pin, NetLabel label) {
    }

    /** What hangs together. */
    record Piece(List<Seg> segs, List<PinRef> pins, List<NetLabel> labels) {

        int size() {
            return segs.size() + pins.size() + labels.size();
        }

        boolean bears(String name) {
            return labels.stream().anyMatch(l -> l.text().equals(name));
        }
    }

    private NetGraph(Draft draft, NetDraft net) {
        this.draft = draft;
        this.net = net;
        net.segs.forEach(s -> elements.add(new Element(s, null, null)));
        for (PinRef p : draft.pinsOn(net)) {
            if (p.pin().at() != null) {
                elements.add(new Element(new Seg(p.pin().page(), p.pin().at(), p.pin().at()), p, null));
            }
        }
        net.labels.forEach(l -> elements.add(new Element(new Seg(l.page(), l.at(), l.at()), null, l)));
        groups = new Groups(elements.size());
        touch();
    }

    /** Joined by touching alone: runs of wire with what is on them. */
    static NetGraph runs(Draft draft, NetDraft net) {
        NetGraph g = new NetGraph(draft, net);
        g.links(true);
        return g;
    }

    /** Joined by all that joins but the names. */
    static NetGraph unnamed(Draft draft, NetDraft net) {
        NetGraph g = runs(draft, net);
        g.links(false);
        return g;
    }

    /** Joined by all that joins. */
    static NetGraph whole(Draft draft, NetDraft net) {
        NetGraph g = unnamed(draft, net);
        g.names();
        return g;
    }

    /** Sees to it that the net, which is one, hangs together: what joins it unseen is found and kept as links. */
    static void bind(Draft draft, NetDraft net) {
        NetGraph g = whole(draft, net);
        for (int i = 0; i < GAPS.length && !g.isOne(); i++) {
            g.bridge(GAPS[i]);
        }
        g.star();
    }

    private boolean isOne() {
        for (int i = 1; i < elements.size(); i++) {
            if (!groups.joined(0, i)) {
                return false;
            }
        }
        return true;
    }

    /** Something done to two elements, by their places. */
    @FunctionalInterface
    private interface Pair {
        void meet(int i, int j);
    }

    /**
     * Calls for every two wires or pins that may lie within a gap of each other and are not joined yet. A line sweeps
     * over them from left to right, so that a big supply net does not compare each with each.
     */
    private void neighbours(double gap, Pair pair) {
        List<Integer> order = IntStream.range(0, elements.size()).filter(i -> elements.get(i).label() == null).boxed()
                .sorted(Comparator.comparingDouble(this::left)).toList();
        List<Integer> active = new ArrayList<>();
        for (int i : order) {
            active.removeIf(j -> right(j) < left(i) - gap);
            for (int j : active) {
                if (!groups.joined(i, j)) {
                    pair.meet(i, j);
                }
            }
            active.add(i);
        }
    }

    private double left(int i) {
        return Math.min(elements.get(i).seg().a().x(), elements.get(i).seg().b().x());
    }

    private double right(int i) {
        return Math.max(elements.get(i).seg().a().x(), elements.get(i).seg().b().x());
    }

    private void touch() {
        neighbours(Draft.TOUCH, (i, j) -> {
            if (contact(elements.get(i).seg(), elements.get(j).seg(), Draft.TOUCH) != null) {
                groups.join(i, j);
            }
        });
        for (int i = 0; i < elements.size(); i++) {
            if (elements.get(i).label() != null) {
                hang(i);
            }
        }
    }

    /** A label belongs to what it is nearest to. */
    private void hang(int label) {
        int best = -1;
        double least = GAPS[GAPS.length - 1];
        for (int i = 0; i < elements.size(); i++) {
            Element e = elements.get(i);
            if (e.label() == null && e.seg().page() == elements.get(label).seg().page()) {
                double d = e.seg().distance(elements.get(label).seg().a());
                if (d < least) {
                    least = d;
                    best = i;
                }
            }
        }
        if (best >= 0) {
            groups.join(label, best);
        }
    }

    /** Where two pieces touch and are joined, or null. */
    private Point contact(Seg s, Seg t, double gap) {
        if (s.page() != t.page() || !near(s, t, gap)) {
            return null;
        }
        for (Point p : new Point[] {s.a(), s.b()}) {
            if (t.distance(p) <= gap && allowed(s, t, p)) {
                return p;
            }
        }
        for (Point p : new Point[] {t.a(), t.b()}) {
            if (s.distance(p) <= gap && allowed(s, t, p)) {
                return p;
            }
        }
        Point x = s.crossing(t);
        boolean dot = x != null && net.junctions.stream()
                .anyMatch(j -> j.page() == s.page() && j.at().distance(x) <= 2 * Draft.TOUCH);
        return dot && allowed(s, t, x) ? x : null;
    }

    private static boolean near(Seg s, Seg t, double gap) {
        return Math.max(s.a().x(), s.b().x()) + gap >= Math.min(t.a().x(), t.b().x())
                && Math.max(t.a().x(), t.b().x()) + gap >= Math.min(s.a().x(), s.b().x())
                && Math.max(s.a().y(), s.b().y()) + gap >= Math.min(t.a().y(), t.b().y())
                && Math.max(t.a().y(), t.b().y()) + gap >= Math.min(s.a().y(), s.b().y());
    }

    private boolean allowed(Seg s, Seg t, Point p) {
        for (Cut cut : draft.cuts) {
            if (cut.lies(s.page(), p) && (cut.all() || !runsOn(s, t, cut))) {
                return false;
            }
        }
        return true;
    }

    /** Whether two pieces hold together at a spot without a junction: straight runs do, and a pin with its stub. */
    private boolean runsOn(Seg s, Seg t, Cut cut) {
        if (s.length() > 0 && t.length() > 0) {
            return s.parallel(t);
        }
        return s.length() == 0 && t.length() == 0 || (s.length() == 0 ? t : s).equals(stub(cut));
    }

    /** The piece of wire that a pin at the spot belongs to: the one that ends there and does not run on; or null. */
    private Seg stub(Cut cut) {
        List<Seg> there = net.segs.stream()
                .filter(s -> s.page() == cut.page() && s.distance(cut.at()) <= Draft.TOUCH).toList();
        return there.stream().filter(s -> s.a().distance(cut.at()) <= Draft.TOUCH
                || s.b().distance(cut.at()) <= Draft.TOUCH)
                .min(Comparator.comparing(s -> there.stream().filter(s::parallel).count()))
                .or(() -> there.stream().findFirst()).orElse(null);
    }

    private void names() {
        Map<String, Integer> first = new HashMap<>();
        for (int i = 0; i < elements.size(); i++) {
            NetLabel label = elements.get(i).label();
            if (label != null && label.kind() != LabelKind.BUS) {
                Integer other = first.putIfAbsent(label.text(), i);
                if (other != null) {
                    groups.join(i, other);
                }
            }
        }
    }

    private void links(boolean gaps) {
        for (Link link : draft.links) {
            int a = link.gap() == gaps ? at(link.pageA(), link.a()) : -1;
            int b = a < 0 ? -1 : at(link.pageB(), link.b());
            if (b >= 0) {
                groups.join(a, b);
            }
        }
    }

    private int at(int page, Point p) {
        int best = -1;
        double least = Draft.TOUCH;
        for (int i = 0; i < elements.size(); i++) {
            double d = elements.get(i).seg().page() == page ? elements.get(i).seg().distance(p) : Double.MAX_VALUE;
            if (d < least) {
                least = d;
                best = i;
            }
        }
        return best;
    }

    private void bridge(double gap) {
        neighbours(gap, (i, j) -> {
            Point p = contact(elements.get(i).seg(), elements.get(j).seg(), gap);
            if (p != null) {
                link(i, j, p, true);
            }
        });
    }

    private void star() {
        for (int i = 1; i < elements.size(); i++) {
            if (!groups.joined(0, i)) {
                link(0, i, elements.get(0).seg().a(), false);
            }
        }
    }

    private void link(int i, int j, Point near, boolean gap) {
        groups.join(i, j);
        Seg a = elements.get(i).seg();
        Seg b = elements.get(j).seg();
        draft.links.add(new Link(a.page(), a.nearest(near), b.page(), b.nearest(near), gap));
    }

    /** The pieces, the biggest first. */
    List<Piece> pieces() {
        Map<Integer, Piece> pieces = new LinkedHashMap<>();
        for (int i = 0; i < elements.size(); i++) {
            Element e = elements.get(i);
            Piece piece = pieces.computeIfAbsent(groups.find(i),
                    k -> new Piece(new ArrayList<>(), new ArrayList<>(), new ArrayList<>()));
            if (e.pin() != null) {
                piece.pins().add(e.pin());
            } else if (e.label() != null) {
                piece.labels().add(e.label());
            } else {
                piece.segs().add(e.seg());
            }
        }
        return pieces.values().stream().sorted(Comparator.comparing((Piece p) -> -p.pins().size())
                .thenComparing(p -> -p.size())).toList();
    }
}
