// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.follow;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.probeleaf.schematic.board.BoardChange;
import org.probeleaf.schematic.netlist.NaturalOrder;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.trace.TracedPin;
import org.probeleaf.trace.UnknownPlaceException;

/**
 * What a signal reaches no longer when a pin is lifted or a part is out. It is what the signal reaches now less what it
 * would reach then; so a gate counts in its direction only. (Bridges and articulation points of an undirected graph say
 * the same where nothing but passive parts lies between, and less where gates do.)
 *
 * @param change what is done, a lift or a removal
 * @param nets   the nets that the signal does not reach any more, in the order it reached them
 * @param parts  the parts with pins that it does not reach any more; not the one that is out
 */
public record CutOff(BoardChange change, List<Net> nets, List<Separated> parts) {

    public CutOff {
        nets = List.copyOf(nets);
        parts = List.copyOf(parts);
    }

    /**
     * A part that is cut off, as a whole or with some of its pins.
     *
     * @param part the part
     * @param pins its pins that the signal does not reach any more
     */
    public record Separated(Part part, List<TracedPin> pins) {

        public Separated {
            pins = List.copyOf(pins);
        }
    }

    /** Whether anything is cut off besides the lifted pin itself. */
    public boolean separates() {
        return !nets.isEmpty() || parts.stream().mapToInt(s -> s.pins().size()).sum() > 1;
    }

    /**
     * What one change cuts off.
     *
     * @param from    the place that the signal comes from, or with the other flow goes to
     * @param options what it is followed through; of the limits only that of the nets counts
     * @param change  a lift or a removal
     * @throws UnknownPlaceException    where there is no such place, no net there, or a part on several nets
     * @throws IllegalArgumentException for another kind of change
     */
    public static CutOff by(SignalNetwork network, Place from, FollowOptions options, BoardChange change) {
        if (!(change instanceof BoardChange.Lift || change instanceof BoardChange.Remove)) {
            throw new IllegalArgumentException("only lifting and removing cut off");
        }
        Reach now = Reach.of(network, from, options, null);
        return by(network, now, now.pins(), from, options, change);
    }

    /**
     * All single lifts and removals that cut something off besides themselves, those that cut off most first. On a board
     * of thousands of parts this takes a second or two, so it is not for the display thread.
     *
     * @param from    as in {@link #by}
     * @param options as in {@link #by}
     */
    public static List<CutOff> all(SignalNetwork network, Place from, FollowOptions options) {
        Reach now = Reach.of(network, from, options, null);
        List<TracedPin> pins = now.pins();
        List<CutOff> all = new ArrayList<>();
        for (BoardChange change : now.changes()) {
            CutOff cut = by(network, now, pins, from, options, change);
            if (cut.separates()) {
                all.add(cut);
            }
        }
        all.sort(Comparator.comparingInt((CutOff c) -> -c.nets().size())
                .thenComparingInt(c -> -c.parts().size()).thenComparing(CutOff::subject, NaturalOrder.INSTANCE));
        return all;
    }

    /** What is lifted or out, as a place ({@code IC5.8}, {@code IC5}). */
    public String subject() {
        return change instanceof BoardChange.Lift lift ? lift.pin().text() : ((BoardChange.Remove) change).ref();
    }

    private static CutOff by(SignalNetwork network, Reach now, List<TracedPin> pins, Place from, FollowOptions options,
            BoardChange change) {
        Reach then = Reach.of(network, from, options, change);
        List<Net> nets = now.nets().stream().filter(n -> !then.nets().contains(n)).map(network::net).toList();
        Map<String, List<TracedPin>> lost = new LinkedHashMap<>();
        for (TracedPin pin : pins) {
            boolean out = change instanceof BoardChange.Remove r && r.ref().equalsIgnoreCase(pin.part().ref());
            if (!out && !then.reaches(pin)) {
                lost.computeIfAbsent(pin.part().ref(), r -> new ArrayList<>()).add(pin);
            }
        }
        return new CutOff(change, nets, lost.values().stream().map(p -> new Separated(p.get(0).part(), p)).toList());
    }
}
