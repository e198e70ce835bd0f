// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.correction;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.probeleaf.recognition.correction.Draft.NetDraft;
import org.probeleaf.recognition.correction.Draft.PartDraft;
import org.probeleaf.recognition.correction.Draft.PinRef;
import org.probeleaf.recognition.correction.Finder.UnitHit;
import org.probeleaf.recognition.correction.Finder.WireHit;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.NaturalOrder;
import org.probeleaf.schematic.netlist.PartUnit;
import org.probeleaf.schematic.netlist.Pin;

/** Corrections of parts and their drawn pieces. */
final class PartEdits {

    /** How far a wire may end from the outline of a part and still be meant for it, in points. */
    private static final double AT_OUTLINE = 4;

    private final Draft draft;
    private final Finder finder;

    PartEdits(Draft draft) {
        this.draft = draft;
        this.finder = new Finder(draft);
    }

    Outcome add(Correction.AddPart c) {
        Optional<PartDraft> known = draft.part(c.ref());
        if (known.isPresent()) {
            PartDraft part = known.get();
            boolean here = part.units.stream().anyMatch(u -> u.page() == c.page() && u.box().intersects(c.box()));
            if (here) {
                return Outcome.already("the part " + part.ref + " is there");
            }
            if (c.unit() == null || part.units.stream().anyMatch(u -> c.unit().equals(u.name()))) {
                return Outcome.noPlace("there is a part " + part.ref + " elsewhere; name the unit that is drawn here");
            }
        }
        PartDraft part = known.orElseGet(() -> newPart(c.ref()));
        part.value = c.value() != null && !c.value().isBlank() ? c.value() : part.value;
        part.units.add(new PartUnit(c.unit(), c.page(), c.box()));
        part.pins.addAll(looseEnds(c));
        return Outcome.done();
    }

    private PartDraft newPart(String ref) {
        PartDraft part = new PartDraft(ref, null);
        int at = 0;
        while (at < draft.parts.size() && NaturalOrder.INSTANCE.compare(draft.parts.get(at).ref, ref) < 0) {
            at++;
        }
        draft.parts.add(at, part);
        return part;
    }

    /** The wires that end at the outline, or within it, and at no pin of another part. */
    private List<Pin> looseEnds(Correction.AddPart c) {
        Box reach = c.box().grow(AT_OUTLINE);
        List<LooseEnd> ends = new ArrayList<>();
        for (NetDraft net : draft.nets) {
            for (Seg seg : net.segs) {
                for (Point end : List.of(seg.a(), seg.b())) {
                    boolean loose = seg.page() == c.page() && reach.contains(end) && net.segs.stream()
                            .noneMatch(o -> o != seg && o.page() == c.page() && o.distance(end) <= Draft.TOUCH);
                    boolean taken = loose && draft.pins().stream().anyMatch(p -> p.pin().at() != null
                            && p.pin().page() == c.page() && p.pin().at().distance(end) <= 2 * Draft.TOUCH);
                    if (loose && !taken) {
                        Point far = end == seg.a() ? seg.b() : seg.a();
                        ends.add(new LooseEnd(Pin.drawn(null, null, c.unit(), c.page(), end, net.id), far));
                    }
                }
            }
        }
        // Ends of two nets may meet at a spot: where they come from tells them apart, not how the nets are numbered.
        ends.sort(Comparator.comparing((LooseEnd e) -> e.pin().at().y()).thenComparing(e -> e.pin().at().x())
                .thenComparing(e -> e.far().y()).thenComparing(e -> e.far().x()));
        return ends.stream().map(LooseEnd::pin).toList();
    }

    /** A pin at the end of a wire, and where that wire comes from. */
    private record LooseEnd(Pin pin, Point far) {
    }

    Outcome edit(Correction.EditPart c) {
        Optional<UnitHit> hit = finder.unit(c.part());
        if (hit.isEmpty()) {
            return Outcome.noPlace(noPart(c.part()));
        }
        PartDraft part = hit.get().part();
        String ref = c.ref() == null ? part.ref : c.ref().strip();
        String value = c.value() == null ? part.value : c.value().isBlank() ? null : c.value().strip();
        if (ref.equals(part.ref) && Objects.equals(value, part.value)) {
            return Outcome.already("it is lettered that way");
        }
        Optional<PartDraft> other = draft.part(ref).filter(p -> p != part);
        part.value = value;
        if (other.isPresent()) {
            pour(part, other.get());
        } else {
            part.ref = ref;
            draft.parts.sort(Comparator.comparing(p -> p.ref, NaturalOrder.INSTANCE));
        }
        return Outcome.done();
    }

    /** All of one part becomes the other's. */
    private void pour(PartDraft from, PartDraft into) {
        into.units.addAll(from.units);
        into.pins.addAll(from.pins);
        into.value = into.value != null ? into.value : from.value;
        draft.parts.remove(from);
    }

    Outcome remove(Correction.RemovePart c) {
        Optional<UnitHit> hit = finder.unitThere(c.part());
        if (hit.isEmpty()) {
            return Outcome.already(noPart(c.part()));
        }
        hit.get().part().pins.forEach(this::left);
        draft.parts.remove(hit.get().part());
        return Outcome.done();
    }

    private void left(Pin pin) {
        draft.net(pin.net()).ifPresent(NetDraft::touched);
    }

    Outcome assign(Correction.AssignUnit c) {
        Optional<UnitHit> found = finder.unit(c.piece());
        if (found.isEmpty()) {
            return Outcome.noPlace(noPart(c.piece()));
        }
        UnitHit hit = found.get();
        if (hit.part().ref.equalsIgnoreCase(c.ref()) && Objects.equals(hit.unit().name(), c.unit())) {
            return Outcome.already("it is that unit");
        }
        List<Pin> pins = new ArrayList<>();
        List<PinRef> refs = finder.pinsOf(hit);
        for (int i = refs.size() - 1; i >= 0; i--) {
            Pin p = refs.get(i).pin();
            pins.add(0, new Pin(p.number(), p.name(), c.unit(), p.page(), p.at(), p.net(), p.implied()));
            hit.part().pins.remove(refs.get(i).index());
        }
        hit.part().units.remove(hit.unit());
        PartDraft part = draft.part(c.ref()).orElseGet(() -> newPart(c.ref()));
        part.units.add(new PartUnit(c.unit(), hit.unit().page(), hit.unit().box()));
        part.pins.addAll(pins);
        part.value = part.value != null ? part.value : hit.part().value;
        if (hit.part().units.isEmpty()) {
            // Pins that are not drawn have nowhere else to go.
            part.pins.addAll(hit.part().pins);
            draft.parts.remove(hit.part());
        }
        return Outcome.done();
    }

    private static String noPart(Spot spot) {
        return "there is no part at " + spot.text();
    }

    /** Where a pin set at a spot ends, and its net: on the wire there, at its end where that is near. */
    static Pin onWire(Finder finder, Spot spot, Pin pin) {
        Optional<WireHit> wire = finder.wire(spot);
        if (wire.isEmpty()) {
            return Pin.drawn(pin.number(), pin.name(), pin.unit(), spot.page(), spot.at(), null);
        }
        Seg seg = wire.get().seg();
        Point near = wire.get().at();
        Point end = seg.a().distance(near) < seg.b().distance(near) ? seg.a() : seg.b();
        Point at = end.distance(spot.at()) <= Finder.REACH ? end : near;
        return Pin.drawn(pin.number(), pin.name(), pin.unit(), spot.page(), at, wire.get().net().id);
    }
}
