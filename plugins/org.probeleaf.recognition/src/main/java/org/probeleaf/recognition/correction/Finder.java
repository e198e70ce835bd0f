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
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.NetLabel;
import org.probeleaf.schematic.netlist.PartUnit;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.place.Place;

/** Finds what is at a spot of the sheet. */
final class Finder {

    /** How far a spot may lie from what it means, in points. */
    static final double REACH = 6;
    /** A spot this near to the end of a pin means the pin, not its wire. */
    private static final double ON_PIN = 1.5;
    /** Things this much farther than the nearest count as just as near. */
    private static final double SAME = 0.5;

    /** Of wires as near, which comes first must not hang on the order in which they were read. */
    private static final Comparator<Seg> BY_PLACE = Comparator.comparingDouble((Seg s) -> s.a().x() + s.b().x())
            .thenComparing(s -> s.a().y() + s.b().y()).thenComparing(s -> Math.abs(s.a().x() - s.b().x()))
            .thenComparing(Seg::length);

    private final Draft draft;

    Finder(Draft draft) {
        this.draft = draft;
    }

    /**
     * What a spot means for nets.
     *
     * @param net the net there, or null for a pin on none
     * @param pin the pin there, or null for wire
     * @param at  the nearest point of it
     */
    record Hit(NetDraft net, PinRef pin, int page, Point at) {
    }

    /** A piece of wire. */
    record WireHit(NetDraft net, Seg seg, Point at) {
    }

    /** A drawn piece of a part. */
    record UnitHit(PartDraft part, PartUnit unit) {
    }

    /** The net or the lone pin at a spot; empty where there is none. */
    Optional<Hit> hit(Spot spot) {
        if (spot.place() instanceof Place.OfPin) {
            return pin(spot).map(this::hit);
        }
        if (spot.place() instanceof Place.OfPart) {
            return Optional.empty();
        }
        Optional<Hit> onPin = nearestPin(spot, ON_PIN).map(this::hit);
        return onPin.or(() -> wire(spot).map(w -> new Hit(w.net(), null, spot.page(), w.at())))
                .or(() -> label(spot)).or(() -> nearestPin(spot, REACH).map(this::hit)).or(() -> named(spot));
    }

    private Hit hit(PinRef pin) {
        return new Hit(draft.net(pin.pin().net()).orElse(null), pin, pin.pin().page(), pin.pin().at());
    }

    /** The pin that is meant: the named one at the spot, else the nearest there, else the named one elsewhere. */
    Optional<PinRef> pin(Spot spot) {
        Optional<PinRef> there = pinThere(spot);
        return there.isPresent() || !(spot.place() instanceof Place.OfPin p) ? there
                : draft.pins().stream().filter(q -> named(q, p)).findFirst();
    }

    /** As {@link #pin}, but never one that lies elsewhere; a pin that is not drawn goes by its name. */
    Optional<PinRef> pinThere(Spot spot) {
        if (spot.place() instanceof Place.OfPin p) {
            Optional<PinRef> named = draft.pins().stream().filter(q -> named(q, p))
                    .filter(q -> q.pin().at() == null || distance(q.pin(), spot) <= REACH)
                    .min(Comparator.comparingDouble(q -> distance(q.pin(), spot)));
            if (named.isPresent()) {
                return named;
            }
        }
        return nearestPin(spot, REACH);
    }

    private static double distance(Pin pin, Spot spot) {
        return pin.at() == null || pin.page() != spot.page() ? Double.MAX_VALUE : pin.at().distance(spot.at());
    }

    private static boolean named(PinRef ref, Place.OfPin place) {
        if (!ref.part().ref.equalsIgnoreCase(place.ref())) {
            return false;
        }
        Pin pin = ref.pin();
        boolean bare = pin.number() == null && pin.name() == null;
        return place.pin().equalsIgnoreCase(pin.number()) || place.pin().equalsIgnoreCase(pin.name())
                || bare && place.pin().equals(String.valueOf(ref.index() + 1));
    }

    private Optional<PinRef> nearestPin(Spot spot, double reach) {
        return draft.pins().stream().filter(q -> distance(q.pin(), spot) <= reach)
                .min(Comparator.comparingDouble(q -> distance(q.pin(), spot)));
    }

    /** The pieces of wire within reach of a spot, the nearest first. */
    List<WireHit> wires(int page, Point at, double reach) {
        List<WireHit> all = new ArrayList<>();
        for (NetDraft net : draft.nets) {
            for (Seg seg : net.segs) {
                if (seg.page() == page && seg.distance(at) <= reach) {
                    all.add(new WireHit(net, seg, seg.nearest(at)));
                }
            }
        }
        all.sort(Comparator.comparingDouble((WireHit w) -> w.at().distance(at)).thenComparing(WireHit::seg, BY_PLACE));
        return all;
    }

    /** The piece of wire at a spot; of several as near, the one whose net is named. */
    Optional<WireHit> wire(Spot spot) {
        List<WireHit> all = wires(spot.page(), spot.at(), REACH);
        String name = spot.place() instanceof Place.OfNet n ? n.net() : null;
        return all.stream().filter(w -> bears(w.net(), name)
                && w.at().distance(spot.at()) <= all.get(0).at().distance(spot.at()) + SAME).findFirst()
                .or(() -> all.stream().findFirst());
    }

    private Optional<Hit> label(Spot spot) {
        Hit best = null;
        for (NetDraft net : draft.nets) {
            for (NetLabel l : net.labels) {
                double d = l.page() == spot.page() ? l.at().distance(spot.at()) : Double.MAX_VALUE;
                if (d <= REACH && (best == null || d < best.at().distance(spot.at()))) {
                    best = new Hit(net, null, l.page(), l.at());
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** A net by its name, else by its id, wherever it lies. */
    private Optional<Hit> named(Spot spot) {
        if (!(spot.place() instanceof Place.OfNet n)) {
            return Optional.empty();
        }
        List<NetDraft> found = draft.nets.stream().filter(d -> bears(d, n.net())).toList();
        Optional<NetDraft> net = found.size() == 1 ? Optional.of(found.get(0))
                : found.isEmpty() ? draft.net(n.net()) : Optional.empty();
        return net.map(d -> new Hit(d, null, spot.page(), spot.at()));
    }

    private static boolean bears(NetDraft net, String name) {
        return name != null && name.equals(net.name);
    }

    /** The drawn piece of a part at a spot, the smallest where they nest, else the first piece of the named part. */
    Optional<UnitHit> unit(Spot spot) {
        Optional<UnitHit> there = unitThere(spot);
        return there.isPresent() || !(spot.place() instanceof Place.OfPart p) ? there
                : draft.part(p.ref()).filter(d -> !d.units.isEmpty()).map(d -> new UnitHit(d, d.units.get(0)));
    }

    /** As {@link #unit}, but never one that lies elsewhere. The piece of a pin is the one that the pin is drawn at. */
    Optional<UnitHit> unitThere(Spot spot) {
        if (spot.place() instanceof Place.OfPin) {
            return pinThere(spot).map(p -> new UnitHit(p.part(), home(p)));
        }
        String ref = spot.place() instanceof Place.OfPart p ? p.ref() : null;
        UnitHit best = null;
        double least = Double.MAX_VALUE;
        for (PartDraft part : draft.parts) {
            for (PartUnit unit : part.units) {
                Box box = unit.box().grow(3);
                double area = part.ref.equalsIgnoreCase(ref) ? -1 : box.width() * box.height();
                if (unit.page() == spot.page() && box.contains(spot.at()) && area < least) {
                    least = area;
                    best = new UnitHit(part, unit);
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** The pins of a drawn piece: those of its unit, and where two pieces bear one name, those nearest to it. */
    List<PinRef> pinsOf(UnitHit hit) {
        List<PinRef> pins = new ArrayList<>();
        for (int i = 0; i < hit.part().pins.size(); i++) {
            PinRef pin = new PinRef(hit.part(), i);
            if (home(pin).equals(hit.unit())) {
                pins.add(pin);
            }
        }
        return pins;
    }

    private static PartUnit home(PinRef ref) {
        Pin pin = ref.pin();
        return ref.part().units.stream().min(Comparator.comparing((PartUnit u) -> u.page() != pin.page())
                .thenComparing(u -> !Objects.equals(u.name(), pin.unit()))
                .thenComparing(u -> pin.at() == null ? 0 : u.box().distance(pin.at()))).orElseThrow();
    }
}
