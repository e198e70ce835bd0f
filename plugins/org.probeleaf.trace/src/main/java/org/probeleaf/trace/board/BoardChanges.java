// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.board;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.probeleaf.schematic.board.BoardChange;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.PartUnit;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.trace.board.WorkingBoard.End;
import org.probeleaf.trace.board.WorkingPart.WorkingPin;

/** What each change does to a board. */
final class BoardChanges {

    /** How far the body of a fitted part reaches past its pins, in points. */
    private static final double BODY = 4;

    private final WorkingBoard board;

    private BoardChanges(WorkingBoard board) {
        this.board = board;
    }

    /** Puts changes to a board, cuts at spots first; what became of each, in the order of the changes. */
    static List<ChangeOutcome> apply(WorkingBoard board, List<BoardChange> changes) {
        BoardChanges doer = new BoardChanges(board);
        ChangeOutcome[] outcomes = new ChangeOutcome[changes.size()];
        for (int i = 0; i < outcomes.length; i++) {
            if (changes.get(i) instanceof BoardChange.Cut cut && cut.at() instanceof Place.OnPage spot
                    && doer.pinAt(spot) == null) {
                outcomes[i] = doer.tried(cut, () -> board.cutWire(cut, doer.spot(spot)));
            }
        }
        for (int i = 0; i < outcomes.length; i++) {
            BoardChange change = changes.get(i);
            if (outcomes[i] == null) {
                outcomes[i] = doer.tried(change, () -> doer.done(change));
            }
        }
        return List.of(outcomes);
    }

    /** One thing done to the board, which tells what it did. */
    private interface Deed {
        String go() throws RefusedException;
    }

    private ChangeOutcome tried(BoardChange change, Deed deed) {
        try {
            return new ChangeOutcome(change, true, deed.go());
        } catch (RefusedException e) {
            return new ChangeOutcome(change, false, e.getMessage());
        }
    }

    private String done(BoardChange change) throws RefusedException {
        if (change instanceof BoardChange.Lift lift) {
            return lift(lift);
        } else if (change instanceof BoardChange.Remove remove) {
            return remove(remove);
        } else if (change instanceof BoardChange.Fit fit) {
            return fit(fit);
        } else if (change instanceof BoardChange.Replace replace) {
            return replace(replace);
        } else if (change instanceof BoardChange.Link link) {
            return link(link);
        } else if (change instanceof BoardChange.Cut cut) {
            return cut(cut);
        }
        return value((BoardChange.Value) change);
    }

    private String lift(BoardChange.Lift lift) throws RefusedException {
        WorkingPart part = board.part(lift.pin().ref());
        WorkingPin pin = board.pin(part, lift.pin().pin());
        String name = part.part.ref() + "." + lift.pin().pin();
        if (pin.lifted) {
            throw new RefusedException(name + " is lifted already");
        }
        String off = title(pin.net());
        pin.lifted = true;
        pin.own = null;
        return off == null ? name + " is lifted; it was on no net" : name + " is lifted off " + off;
    }

    private String remove(BoardChange.Remove remove) throws RefusedException {
        WorkingPart part = board.known(remove.ref());
        if (part.out) {
            throw new RefusedException(part.part.ref() + " is out already");
        }
        part.out = true;
        return part.part.ref() + " is out";
    }

    private String fit(BoardChange.Fit fit) throws RefusedException {
        WorkingPart before = board.find(fit.ref()).orElse(null);
        if (before != null && !before.out) {
            throw new RefusedException(before.part.ref() + " is on the board already; remove it first, or replace it");
        }
        if (before == null && fit.at().isEmpty()) {
            throw new RefusedException("the drawing has no part " + fit.ref()
                    + "; name the places that its pins touch");
        }
        if (fit.at().isEmpty()) {
            before.out = false;
            before.value = fit.value() != null ? fit.value() : before.part.value();
            return before.part.ref() + " is in again" + of(fit.value());
        }
        return fitNew(fit);
    }

    private String fitNew(BoardChange.Fit fit) throws RefusedException {
        List<End> ends = new ArrayList<>();
        for (Place place : fit.at()) {
            ends.add(board.end(place));
        }
        List<Pin> pins = new ArrayList<>();
        for (End end : ends) {
            String net = board.netOf(end);
            Spot spot = spotOf(end, ends.get(ends.get(0) == end && ends.size() > 1 ? 1 : 0));
            pins.add(Pin.drawn(String.valueOf(pins.size() + 1), null, null, spot == null ? 1 : spot.page(),
                    spot == null ? null : spot.at(), net));
        }
        int page = pins.stream().filter(p -> p.at() != null).mapToInt(Pin::page).findFirst().orElse(1);
        List<Point> there = pins.stream().filter(p -> p.at() != null && p.page() == page).map(Pin::at).toList();
        Box box = there.isEmpty() ? new Box(0, 0, 0, 0) : Box.around(there).grow(BODY);
        board.put(new WorkingPart(new Part(fit.ref(), fit.value(), List.of(new PartUnit(null, page, box)), pins), true));
        return fit.ref() + of(fit.value()) + " is fitted between " + ends.stream().map(e -> e.place().text())
                .collect(Collectors.joining(", "));
    }

    private String replace(BoardChange.Replace replace) throws RefusedException {
        WorkingPart part = board.part(replace.ref());
        if (replace.value() != null) {
            part.value = replace.value();
        }
        return part.part.ref() + " is replaced" + (replace.value() == null ? "" : " by " + replace.value());
    }

    private String value(BoardChange.Value value) throws RefusedException {
        WorkingPart part = board.part(value.ref());
        part.value = value.value();
        return part.part.ref() + " is " + value.value()
                + (part.part.value() == null ? "" : ", drawn as " + part.part.value());
    }

    private String link(BoardChange.Link link) throws RefusedException {
        End from = board.end(link.from());
        End to = board.end(link.to());
        if (from.pin() != null && from.pin() == to.pin()) {
            throw new RefusedException("a link needs two places; both name " + link.from().text());
        }
        String ends = link.from().text() + " and " + link.to().text();
        boolean one = from.now() != null && to.now() != null
                && board.nets.current(from.now()).equals(board.nets.current(to.now()));
        Spot a = spotOf(from, to);
        Spot b = spotOf(to, from);
        String net = from.now() == null && to.now() != null ? board.netOf(to) : board.netOf(from);
        if (from.now() == null) {
            from.join(net);
        } else if (to.now() == null) {
            to.join(net);
        }
        net = board.nets.join(board.netOf(from), board.netOf(to), a != null ? a : b);
        board.links.add(new LinkMark(link, a, b, net));
        return one ? ends + " are linked; they were one net already"
                : ends + " are linked, on " + board.nets.net(net).title();
    }

    private String cut(BoardChange.Cut cut) throws RefusedException {
        WorkingPart part = null;
        WorkingPin pin = null;
        if (cut.at() instanceof Place.OfPin p) {
            part = board.known(p.ref());
            pin = board.pin(part, p.pin());
        } else if (cut.at() instanceof Place.OnPage spot) {
            pin = pinAt(spot);
            part = partOf(pin);
        } else {
            throw new RefusedException("a cut needs a pin or a spot on a wire, not " + cut.at().text());
        }
        String name = part.part.ref() + "." + pin.drawn.label();
        if (pin.cut) {
            throw new RefusedException("the track is cut at " + name + " already");
        }
        String off = title(pin.pad);
        pin.cut = true;
        pin.own = pin.lifted ? pin.own : null;
        board.cuts.add(new CutMark(cut, pin.spot(), pin.pad == null ? List.of() : List.of(pin.pad)));
        return off == null ? "the track is cut at " + name + "; it was on no net"
                : "the track is cut at " + name + ", which is off " + off;
    }

    private WorkingPart partOf(WorkingPin pin) {
        for (WorkingPart part : board.parts()) {
            if (part.pins.contains(pin)) {
                return part;
            }
        }
        throw new IllegalStateException();
    }

    /** The drawn pin that ends at a spot, or null. */
    private WorkingPin pinAt(Place.OnPage spot) {
        Point at = new Point(spot.x(), spot.y());
        WorkingPin best = null;
        double least = NetPieces.TOUCH;
        for (WorkingPart part : board.parts()) {
            for (WorkingPin pin : part.pins) {
                Point end = part.fitted || pin.drawn.page() != spot.page() ? null : pin.drawn.at();
                if (end != null && end.distance(at) <= least) {
                    least = end.distance(at);
                    best = pin;
                }
            }
        }
        return best;
    }

    private Spot spot(Place.OnPage spot) {
        return new Spot(spot.page(), new Point(spot.x(), spot.y()));
    }

    /** Where an end is drawn: of a net, the spot that is nearest to the other end, else any. */
    private Spot spotOf(End end, End other) {
        if (end.spot() != null || end.pin() != null) {
            return end.spot();
        }
        Net net = board.nets.net(end.now());
        Spot near = other.spot() == null ? null : NetCut.onWire(net, other.spot());
        if (near != null) {
            return near;
        }
        return net.wires().stream().findFirst().map(w -> new Spot(w.page(), w.points().get(0)))
                .or(() -> net.labels().stream().findFirst().map(l -> new Spot(l.page(), l.at()))).orElse(null);
    }

    private String title(String net) {
        return net == null ? null : board.nets.net(net).title();
    }

    private static String of(String value) {
        return value == null ? "" : " (" + value + ")";
    }
}
