// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.correction;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.probeleaf.recognition.correction.Draft.Cut;
import org.probeleaf.recognition.correction.Draft.NetDraft;
import org.probeleaf.recognition.correction.Finder.WireHit;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Junction;

/** Junctions put to crossings and taken from joints. */
final class JunctionEdits {

    private final Draft draft;
    private final Finder finder;
    private final NetEdits nets;

    JunctionEdits(Draft draft, NetEdits nets) {
        this.draft = draft;
        this.finder = new Finder(draft);
        this.nets = nets;
    }

    Outcome junction(Correction.Junction c) {
        int page = c.at().page();
        Optional<Point> meeting = meeting(c.at());
        if (meeting.isEmpty()) {
            return Outcome.noPlace("no wires meet or cross at " + c.at().text());
        }
        List<WireHit> arms = finder.wires(page, meeting.get(), Draft.TOUCH);
        return c.joined() ? join(page, meeting.get(), arms) : part(page, meeting.get(), arms);
    }

    /** The nearest point at which wires of different directions meet or cross. */
    private Optional<Point> meeting(Spot spot) {
        List<WireHit> near = finder.wires(spot.page(), spot.at(), Finder.REACH);
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < near.size(); i++) {
            Seg s = near.get(i).seg();
            for (int j = 0; j < i; j++) {
                Seg t = near.get(j).seg();
                if (!s.parallel(t)) {
                    Stream.of(s.a(), s.b()).filter(p -> t.distance(p) <= Draft.TOUCH).forEach(points::add);
                    Stream.of(t.a(), t.b()).filter(p -> s.distance(p) <= Draft.TOUCH).forEach(points::add);
                    Stream.ofNullable(s.crossing(t)).forEach(points::add);
                }
            }
        }
        return points.stream().filter(p -> p.distance(spot.at()) <= Finder.REACH)
                .min(Comparator.comparingDouble(p -> p.distance(spot.at())));
    }

    private Outcome join(int page, Point at, List<WireHit> arms) {
        List<NetDraft> all = arms.stream().map(WireHit::net).distinct()
                .sorted(Comparator.comparing(n -> n.name == null)).toList();
        draft.cuts.removeIf(cut -> cut.lies(page, at));
        NetDraft net = nets.merge(all);
        boolean dotted = net.junctions.stream().anyMatch(j -> lies(j, page, at));
        if (!dotted) {
            net.junctions.add(new Junction(page, at));
        }
        return all.size() > 1 ? Outcome.done() : Outcome.already("the wires there are on one net, " + net.title());
    }

    private Outcome part(int page, Point at, List<WireHit> arms) {
        List<NetDraft> all = arms.stream().map(WireHit::net).distinct().toList();
        all.forEach(n -> NetGraph.bind(draft, n));
        draft.cuts.add(new Cut(page, at, false));
        boolean fell = false;
        for (NetDraft net : all) {
            if (net.junctions.removeIf(j -> lies(j, page, at))) {
                net.touched();
            }
            fell |= nets.resplit(net) > 1;
        }
        if (fell) {
            return Outcome.done();
        }
        boolean crossing = all.size() > 1 && arms.stream().allMatch(a -> arms.stream()
                .allMatch(b -> a.net() == b.net() == a.seg().parallel(b.seg())));
        return crossing ? Outcome.already("the wires there pass each other") : nets.apart(all.get(0));
    }

    private static boolean lies(Junction j, int page, Point at) {
        return j.page() == page && j.at().distance(at) <= 2 * Draft.TOUCH;
    }
}
