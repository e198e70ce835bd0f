// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.correction;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

import org.probeleaf.recognition.correction.Draft.Cut;
import org.probeleaf.recognition.correction.Draft.Link;
import org.probeleaf.recognition.correction.Draft.NetDraft;
import org.probeleaf.recognition.correction.Draft.PinRef;
import org.probeleaf.recognition.correction.Finder.Hit;
import org.probeleaf.recognition.correction.Finder.WireHit;
import org.probeleaf.recognition.correction.NetGraph.Piece;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.LabelKind;
import org.probeleaf.schematic.netlist.NetLabel;
import org.probeleaf.schematic.place.Place;

/** Corrections of nets: join, split, take off, name. */
final class NetEdits {

    /** The confidence of a net that is a person's alone. */
    private static final double SAID = 0.98;

    private final Draft draft;
    private final Finder finder;

    NetEdits(Draft draft) {
        this.draft = draft;
        this.finder = new Finder(draft);
    }

    Outcome join(Correction.Join c) {
        List<Hit> hits = new ArrayList<>();
        for (Spot spot : c.spots()) {
            Optional<Hit> hit = finder.hit(spot);
            if (hit.isEmpty()) {
                return Outcome.noPlace(nothingAt(spot));
            }
            hits.add(hit.get());
        }
        boolean one = hits.stream().map(Hit::net).distinct().count() == 1
                && (hits.get(0).net() != null || hits.stream().map(Hit::pin).distinct().count() == 1);
        Hit first = hits.get(0);
        for (Hit hit : hits) {
            if (hit.at() != null && first.at() != null && hit != first) {
                draft.links.add(new Link(first.page(), first.at(), hit.page(), hit.at(), false));
            }
        }
        if (one) {
            return Outcome.already("they are on one net" + (first.net() == null ? "" : ", " + first.net().title()));
        }
        NetDraft net = merge(hits.stream().map(Hit::net).filter(Objects::nonNull).distinct().toList());
        hits.stream().map(Hit::pin).filter(p -> p != null && p.pin().net() == null).forEach(p -> p.toNet(net.id));
        return Outcome.done();
    }

    /** Merges nets into the first, which keeps its id; with none a new one is made. */
    NetDraft merge(List<NetDraft> nets) {
        if (nets.isEmpty()) {
            return draft.newNet(null, null, SAID);
        }
        NetDraft first = nets.get(0);
        first.touched();
        nets.forEach(n -> NetGraph.bind(draft, n));
        for (NetDraft other : nets.subList(1, nets.size())) {
            draft.pinsOn(other).forEach(p -> p.toNet(first.id));
            first.name = first.name != null ? first.name : other.name;
            first.segs.addAll(other.segs);
            first.junctions.addAll(other.junctions);
            first.labels.addAll(other.labels);
            first.confidence = Math.min(first.confidence, other.confidence);
            draft.nets.remove(other);
        }
        return first;
    }

    Outcome split(Correction.Split c) {
        if (c.at().place() instanceof Place.OfPin) {
            return detach(new Correction.Detach(c.spots()));
        }
        Optional<WireHit> hit = finder.wire(c.at());
        if (hit.isEmpty()) {
            return Outcome.noPlace("there is no wire at " + c.at().text());
        }
        NetDraft net = hit.get().net();
        Seg seg = hit.get().seg();
        Point at = seg.a().distance(hit.get().at()) <= 1 ? seg.a()
                : seg.b().distance(hit.get().at()) <= 1 ? seg.b() : hit.get().at();
        NetGraph.bind(draft, net);
        divide(net, seg.page(), at);
        draft.cuts.add(new Cut(seg.page(), at, true));
        return apart(net);
    }

    /** Every piece of wire that runs through a point becomes two. */
    private static void divide(NetDraft net, int page, Point at) {
        net.touched();
        List<Seg> next = new ArrayList<>();
        for (Seg s : net.segs) {
            boolean through = s.page() == page && s.distance(at) <= Draft.TOUCH
                    && s.a().distance(at) > Draft.TOUCH && s.b().distance(at) > Draft.TOUCH;
            if (through) {
                next.add(new Seg(page, s.a(), at));
                next.add(new Seg(page, at, s.b()));
            } else {
                next.add(s);
            }
        }
        net.segs.clear();
        net.segs.addAll(next);
    }

    /** Lets a net fall apart, and says whether it did. */
    Outcome apart(NetDraft net) {
        if (resplit(net) > 1) {
            return Outcome.done();
        }
        boolean byName = NetGraph.unnamed(draft, net).pieces().size() > 1;
        return Outcome.withoutEffect(byName ? "both sides are still one net by the names on them"
                : "both sides are still one net, joined elsewhere");
    }

    /**
     * Makes each piece of a net a net. The one that bears the net's name, else the biggest, stays the net; pins that are
     * not drawn stay with it.
     *
     * @return how many there are now
     */
    int resplit(NetDraft net) {
        List<Piece> pieces = NetGraph.whole(draft, net).pieces();
        if (pieces.size() < 2) {
            return pieces.size();
        }
        Piece main = pieces.stream().filter(p -> net.name != null && p.bears(net.name)).findFirst()
                .orElse(pieces.get(0));
        List<Piece> others = pieces.stream().filter(p -> p != main).toList();
        net.touched();
        keep(net, main);
        for (int i = others.size() - 1; i >= 0; i--) {
            takeOff(net, others.get(i));
        }
        return pieces.size();
    }

    private static void keep(NetDraft net, Piece piece) {
        net.segs.clear();
        net.segs.addAll(piece.segs());
        net.labels.clear();
        net.labels.addAll(piece.labels());
    }

    /** Makes a piece a net of its own, or a pin alone. */
    private void takeOff(NetDraft net, Piece piece) {
        if (piece.segs().isEmpty() && piece.labels().isEmpty() && piece.pins().size() == 1) {
            piece.pins().get(0).toNet(null);
            return;
        }
        NetDraft off = draft.newNet(net, name(piece.labels()), net.confidence);
        off.segs.addAll(piece.segs());
        off.labels.addAll(piece.labels());
        net.junctions.stream().filter(j -> piece.segs().stream().anyMatch(s -> s.page() == j.page()
                && s.distance(j.at()) <= 2 * Draft.TOUCH)).forEach(off.junctions::add);
        net.junctions.removeAll(off.junctions);
        piece.pins().forEach(p -> p.toNet(off.id));
    }

    /** A supply's name wins, then the name that stands there most often. */
    private static String name(List<NetLabel> labels) {
        Map<String, Integer> votes = new LinkedHashMap<>();
        labels.forEach(l -> votes.merge(l.text(), l.kind() == LabelKind.POWER ? 1000 : 1, Integer::sum));
        return votes.entrySet().stream().max(Map.Entry.comparingByValue(Comparator.naturalOrder()))
                .map(Map.Entry::getKey).orElse(null);
    }

    Outcome detach(Correction.Detach c) {
        Map<NetDraft, Piece> off = new LinkedHashMap<>();
        boolean alone = true;
        for (Spot spot : c.spots()) {
            Optional<Hit> hit = finder.hit(spot);
            if (hit.isEmpty()) {
                return Outcome.noPlace(nothingAt(spot));
            }
            NetDraft net = hit.get().net();
            alone &= net == null;
            if (net != null) {
                Piece piece = off.computeIfAbsent(net,
                        k -> new Piece(new ArrayList<>(), new ArrayList<>(), new ArrayList<>()));
                if (hit.get().pin() != null) {
                    add(piece.pins(), List.of(hit.get().pin()));
                } else {
                    run(net, hit.get()).ifPresent(r -> {
                        add(piece.segs(), r.segs());
                        add(piece.pins(), r.pins());
                        add(piece.labels(), r.labels());
                    });
                }
            }
        }
        if (alone) {
            return Outcome.already(c.spots().size() == 1 ? "it is on no net" : "they are on no net");
        }
        int done = 0;
        for (Map.Entry<NetDraft, Piece> e : off.entrySet()) {
            done += detach(e.getKey(), e.getValue()) ? 1 : 0;
        }
        return done > 0 ? Outcome.done() : Outcome.already("nothing else is on that net");
    }

    private static <T> void add(List<T> to, List<T> more) {
        more.stream().filter(m -> !to.contains(m)).forEach(to::add);
    }

    private Optional<Piece> run(NetDraft net, Hit hit) {
        NetGraph.bind(draft, net);
        return NetGraph.runs(draft, net).pieces().stream()
                .filter(p -> p.segs().stream().anyMatch(s -> s.page() == hit.page() && s.distance(hit.at()) <= Draft.TOUCH)
                        || p.labels().stream().anyMatch(l -> l.page() == hit.page() && l.at().equals(hit.at())))
                .findFirst();
    }

    private boolean detach(NetDraft net, Piece off) {
        List<PinRef> restPins = new ArrayList<>(draft.pinsOn(net));
        restPins.removeAll(off.pins());
        boolean nothingLeft = restPins.isEmpty() && net.labels.size() == off.labels().size()
                && net.segs.size() == off.segs().size();
        if (nothingLeft) {
            return false;
        }
        net.touched();
        net.segs.removeAll(off.segs());
        net.labels.removeAll(off.labels());
        // What joined the run to the rest was a name; it is not the run's own.
        off.labels().removeIf(l -> l.text().equals(net.name)
                || net.labels.stream().anyMatch(o -> o.text().equals(l.text())));
        takeOff(net, off);
        return true;
    }

    Outcome name(Correction.Name c) {
        Optional<Hit> hit = finder.hit(c.at());
        if (hit.isEmpty()) {
            return Outcome.noPlace(nothingAt(c.at()));
        }
        NetDraft net = hit.get().net();
        if (net != null && c.name().equals(net.name)) {
            return Outcome.already("the net bears that name");
        }
        if (net == null) {
            net = draft.newNet(null, null, SAID);
            hit.get().pin().toNet(net.id);
        }
        label(net, c);
        Optional<NetDraft> same = draft.nets.stream().filter(n -> c.name().equals(n.name)).findFirst();
        net.name = c.name();
        NetDraft named = net;
        same.ifPresent(other -> merge(List.of(other, named)));
        return Outcome.done();
    }

    /** The old name at the spot gives way to the new one; without one there, the new one is put at the spot. */
    private static void label(NetDraft net, Correction.Name c) {
        net.touched();
        NetLabel label = new NetLabel(c.name(), c.at().page(), c.at().at(), LabelKind.LABEL);
        for (int i = 0; i < net.labels.size(); i++) {
            NetLabel old = net.labels.get(i);
            boolean here = old.page() == label.page() && old.at().distance(label.at()) <= 2 * Finder.REACH;
            if (here && old.text().equals(net.name)) {
                net.labels.set(i, new NetLabel(c.name(), old.page(), old.at(), old.kind()));
                return;
            }
        }
        net.labels.add(label);
    }

    static String nothingAt(Spot spot) {
        Place place = spot.place();
        return place instanceof Place.OfPart ? spot.text() + " is a part; name one of its pins"
                : place instanceof Place.OfPin ? "there is no pin " + spot.text()
                : "there is no net at " + spot.text();
    }
}
