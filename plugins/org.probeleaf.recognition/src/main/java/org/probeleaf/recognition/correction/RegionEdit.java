// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.correction;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.recognition.correction.Draft.NetDraft;
import org.probeleaf.recognition.correction.Draft.PartDraft;
import org.probeleaf.recognition.correction.Draft.PinRef;
import org.probeleaf.recognition.correction.Finder.UnitHit;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.PartUnit;
import org.probeleaf.schematic.netlist.Pin;

/** Leaves out what is drawn in a region. */
final class RegionEdit {

    private final Draft draft;
    private final Finder finder;
    private final NetEdits nets;

    RegionEdit(Draft draft, NetEdits nets) {
        this.draft = draft;
        this.finder = new Finder(draft);
        this.nets = nets;
    }

    Outcome ignore(Correction.Ignore c) {
        boolean any = draft.doubts.stream()
                .anyMatch(d -> d.at() != null && d.page() == c.page() && c.box().contains(d.at()));
        List<NetDraft> touched = draft.nets.stream().filter(n -> touches(n, c)).toList();
        touched.forEach(n -> NetGraph.bind(draft, n));
        any |= dropUnits(c);
        any |= dropPins(c);
        for (NetDraft net : touched) {
            clear(net, c);
            nets.resplit(net);
        }
        return any || !touched.isEmpty() ? Outcome.done() : Outcome.already("nothing is read there");
    }

    private static boolean touches(NetDraft net, Correction.Ignore c) {
        return net.segs.stream().anyMatch(s -> s.page() == c.page() && inside(s, c.box()) != null)
                || net.labels.stream().anyMatch(l -> l.page() == c.page() && c.box().contains(l.at()));
    }

    /** Pieces whose middle lies in the region go, with their pins. */
    private boolean dropUnits(Correction.Ignore c) {
        boolean any = false;
        for (PartDraft part : List.copyOf(draft.parts)) {
            for (PartUnit unit : List.copyOf(part.units)) {
                if (unit.page() == c.page() && c.box().contains(unit.box().centre())) {
                    List<PinRef> pins = finder.pinsOf(new UnitHit(part, unit));
                    for (int i = pins.size() - 1; i >= 0; i--) {
                        drop(part, pins.get(i).index());
                    }
                    part.units.remove(unit);
                    any = true;
                }
            }
            if (part.units.isEmpty()) {
                part.pins.forEach(p -> draft.net(p.net()).ifPresent(NetDraft::touched));
                draft.parts.remove(part);
            }
        }
        return any;
    }

    private boolean dropPins(Correction.Ignore c) {
        boolean any = false;
        for (PartDraft part : draft.parts) {
            for (int i = part.pins.size() - 1; i >= 0; i--) {
                Pin pin = part.pins.get(i);
                if (pin.at() != null && pin.page() == c.page() && c.box().contains(pin.at())) {
                    drop(part, i);
                    any = true;
                }
            }
        }
        return any;
    }

    private void drop(PartDraft part, int index) {
        draft.net(part.pins.get(index).net()).ifPresent(NetDraft::touched);
        part.pins.remove(index);
    }

    private static void clear(NetDraft net, Correction.Ignore c) {
        net.touched();
        List<Seg> left = new ArrayList<>();
        for (Seg s : net.segs) {
            Seg in = s.page() == c.page() ? inside(s, c.box()) : null;
            if (in == null) {
                left.add(s);
            } else {
                rest(left, s.page(), s.a(), in.a());
                rest(left, s.page(), in.b(), s.b());
            }
        }
        net.segs.clear();
        net.segs.addAll(left);
        net.labels.removeIf(l -> l.page() == c.page() && c.box().contains(l.at()));
        net.junctions.removeIf(j -> j.page() == c.page() && c.box().contains(j.at()));
    }

    private static void rest(List<Seg> left, int page, Point a, Point b) {
        if (a.distance(b) > Draft.TOUCH) {
            left.add(new Seg(page, a, b));
        }
    }

    /** The stretch of a piece of wire that lies in a box, in the direction of the piece, or null. */
    private static Seg inside(Seg s, Box box) {
        double dx = s.b().x() - s.a().x();
        double dy = s.b().y() - s.a().y();
        double[] p = {-dx, dx, -dy, dy};
        double[] q = {s.a().x() - box.x0(), box.x1() - s.a().x(), s.a().y() - box.y0(), box.y1() - s.a().y()};
        double from = 0;
        double to = 1;
        for (int i = 0; i < 4; i++) {
            if (p[i] == 0 && q[i] < 0) {
                return null;
            }
            if (p[i] < 0) {
                from = Math.max(from, q[i] / p[i]);
            } else if (p[i] > 0) {
                to = Math.min(to, q[i] / p[i]);
            }
        }
        return from > to ? null : new Seg(s.page(), new Point(s.a().x() + from * dx, s.a().y() + from * dy),
                new Point(s.a().x() + to * dx, s.a().y() + to * dy));
    }
}
