// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.correction;

import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;

import org.probeleaf.recognition.correction.Draft.NetDraft;
import org.probeleaf.recognition.correction.Draft.PartDraft;
import org.probeleaf.recognition.correction.Draft.PinRef;
import org.probeleaf.schematic.netlist.PartUnit;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.place.Place;

/** Corrections of pins. */
final class PinEdits {

    private final Draft draft;
    private final Finder finder;

    PinEdits(Draft draft) {
        this.draft = draft;
        this.finder = new Finder(draft);
    }

    Outcome add(Correction.AddPin c) {
        Optional<PartDraft> found = draft.part(c.ref());
        if (found.isEmpty()) {
            return Outcome.noPlace("there is no part " + c.ref());
        }
        PartDraft part = found.get();
        String unit = part.units.stream().min(Comparator.comparing((PartUnit u) -> u.page() != c.at().page())
                .thenComparing(u -> u.box().distance(c.at().at()))).map(PartUnit::name).orElse(null);
        Pin pin = PartEdits.onWire(finder, c.at(), Pin.drawn(blank(c.number()), blank(c.name()), unit, 0, null, null));
        for (int i = 0; i < part.pins.size(); i++) {
            Pin old = part.pins.get(i);
            boolean here = old.at() != null && old.page() == pin.page() && old.at().distance(pin.at()) <= 2;
            boolean sameNumber = pin.number() != null && pin.number().equals(old.number());
            if (here && (sameNumber || old.number() == null || pin.number() == null)) {
                return Outcome.already("part " + part.ref + " has a pin there");
            }
            if (sameNumber && old.at() != null) {
                return Outcome.noPlace("part " + part.ref + " has a pin " + pin.number() + " at "
                        + new Place.OnPage(old.page(), old.at().x(), old.at().y()).text() + "; move that one");
            }
            if (sameNumber) {
                part.pins.set(i, pin);
                return Outcome.done();
            }
        }
        part.pins.add(pin);
        touched(pin);
        return Outcome.done();
    }

    private static String blank(String text) {
        return text == null || text.isBlank() ? null : text.strip();
    }

    Outcome move(Correction.MovePin c) {
        Optional<PinRef> hit = finder.pin(c.pin());
        if (hit.isEmpty()) {
            return Outcome.noPlace("there is no pin " + c.pin().text());
        }
        Pin old = hit.get().pin();
        Pin moved = PartEdits.onWire(finder, c.to(), old);
        boolean there = old.at() != null && old.page() == moved.page() && old.at().distance(moved.at()) <= Draft.TOUCH;
        if (there && Objects.equals(old.net(), moved.net())) {
            return Outcome.already("the pin is there");
        }
        touched(old);
        touched(moved);
        hit.get().part().pins.set(hit.get().index(), moved);
        return Outcome.done();
    }

    Outcome edit(Correction.EditPin c) {
        Optional<PinRef> hit = finder.pin(c.pin());
        if (hit.isEmpty()) {
            return Outcome.noPlace("there is no pin " + c.pin().text());
        }
        Pin p = hit.get().pin();
        String number = c.number() == null ? p.number() : blank(c.number());
        String name = c.name() == null ? p.name() : blank(c.name());
        if (Objects.equals(number, p.number()) && Objects.equals(name, p.name())) {
            return Outcome.already("it is lettered that way");
        }
        hit.get().part().pins.set(hit.get().index(),
                new Pin(number, name, p.unit(), p.page(), p.at(), p.net(), p.implied()));
        return Outcome.done();
    }

    Outcome remove(Correction.RemovePin c) {
        Optional<PinRef> hit = finder.pinThere(c.pin());
        if (hit.isEmpty()) {
            return Outcome.already("there is no pin " + c.pin().text());
        }
        touched(hit.get().pin());
        hit.get().part().pins.remove(hit.get().index());
        return Outcome.done();
    }

    private void touched(Pin pin) {
        draft.net(pin.net()).ifPresent(NetDraft::touched);
    }
}
