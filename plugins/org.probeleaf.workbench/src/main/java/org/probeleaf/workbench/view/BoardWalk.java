// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.view;

import java.util.Optional;

import org.eclipse.ui.IWorkbenchPage;
import org.probeleaf.job.mark.Anchor;
import org.probeleaf.schematic.board.BoardChange;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.workbench.session.Facts;
import org.probeleaf.workbench.session.Selection;
import org.probeleaf.workbench.session.SheetSession;
import org.probeleaf.workbench.sheet.EntryKind;
import org.probeleaf.workbench.sheet.SheetEditor;

/** Goes to places from lists. */
final class BoardWalk {

    private BoardWalk() {
    }

    /** Selects what a change of the board is about and brings it into sight. */
    static void go(SheetSession session, BoardChange change) {
        if (change instanceof BoardChange.Lift c) {
            go(session, c.pin());
        } else if (change instanceof BoardChange.Cut c) {
            go(session, c.at());
        } else if (change instanceof BoardChange.Link c) {
            go(session, c.from());
        } else if (change instanceof BoardChange.Remove c) {
            go(session, new Place.OfPart(c.ref()));
        } else if (change instanceof BoardChange.Fit c) {
            go(session, c.at().isEmpty() ? new Place.OfPart(c.ref()) : c.at().get(0));
        } else if (change instanceof BoardChange.Replace c) {
            go(session, new Place.OfPart(c.ref()));
        } else if (change instanceof BoardChange.Value c) {
            go(session, new Place.OfPart(c.ref()));
        }
    }

    /** Selects a place and brings it into sight; nothing happens where there is no such place. */
    static boolean go(SheetSession session, Place place) {
        Optional<Selection> there = session == null ? Optional.empty() : session.facts().flatMap(f -> find(f, place));
        there.ifPresent(s -> {
            session.select(s);
            session.reveal(s.page(), Box.of(s.at()).grow(60));
        });
        return there.isPresent();
    }

    /** Goes to a place and opens the entry of a reading there. */
    static void measure(IWorkbenchPage page, SheetSession session, Place place) {
        if (go(session, place) && page.getActiveEditor() instanceof SheetEditor editor) {
            editor.setFocus();
            editor.enter(EntryKind.READING);
        }
    }

    /** What a place selects; parts that are out are found by the drawing. */
    static Optional<Selection> find(Facts facts, Place place) {
        if (!facts.recognised()) {
            return Optional.empty();
        }
        if (place instanceof Place.OfPin named) {
            Optional<Selection> pin = facts.netlist().part(named.ref()).or(() -> facts.board().drawn().part(named.ref()))
                    .flatMap(part -> pin(facts, part, named.pin()));
            if (pin.isPresent()) {
                return pin;
            }
        }
        if (place instanceof Place.OnPage spot) {
            return Optional.of(facts.at(spot.page(), new Point(spot.x(), spot.y()), 3));
        }
        Place asked = place instanceof Place.OfPin p ? new Place.OfPart(p.ref()) : place;
        return Anchor.of(asked, facts.netlist()).or(() -> Anchor.of(asked, facts.board().drawn())).map(a -> {
            Part part = asked instanceof Place.OfPart p ? facts.board().drawn().part(p.ref())
                    .or(() -> facts.netlist().part(p.ref())).orElse(null) : null;
            return part != null ? new Selection(a.page(), a.at(), asked, null, part, null)
                    : facts.at(a.page(), a.at(), 3);
        });
    }

    private static Optional<Selection> pin(Facts facts, Part part, String label) {
        Optional<Pin> pin = part.pins().stream().filter(p -> p.at() != null
                && (label.equals(p.number()) || label.equalsIgnoreCase(p.name()))).findFirst()
                .or(() -> part.pins().size() == 2 && label.matches("[12]")
                        ? Optional.of(part.pins().get(label.charAt(0) - '1')) : Optional.empty());
        return pin.filter(p -> p.at() != null).map(p -> {
            Net net = facts.net(p.net()).orElse(null);
            return Selection.pin(part, p, net);
        });
    }
}
