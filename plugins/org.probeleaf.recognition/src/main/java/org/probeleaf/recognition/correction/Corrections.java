// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.correction;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.recognition.correction.Draft.NetDraft;
import org.probeleaf.recognition.correction.Finder.WireHit;
import org.probeleaf.recognition.correction.Outcome.State;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.netlist.Doubt;
import org.probeleaf.schematic.netlist.Netlist;

/** Puts corrections to a netlist. */
public final class Corrections {

    /** The code of the doubt about a correction whose place is not in the reading. */
    public static final String NO_PLACE = "correction-without-place";
    /** The code of the doubt about a correction that something else stands against. */
    public static final String WITHOUT_EFFECT = "correction-without-effect";

    /** The confidence of a net whose doubts a person has answered. */
    private static final double ANSWERED = 0.98;
    /** How far a doubt may lie from what answers it, in points. */
    private static final double ABOUT = 8;

    private final Draft draft;
    private final NetEdits nets;
    private final JunctionEdits junctions;
    private final PartEdits parts;
    private final PinEdits pins;
    private final RegionEdit region;

    private Corrections(Netlist recognised) {
        this.draft = new Draft(recognised);
        this.nets = new NetEdits(draft);
        this.junctions = new JunctionEdits(draft, nets);
        this.parts = new PartEdits(draft);
        this.pins = new PinEdits(draft);
        this.region = new RegionEdit(draft, nets);
    }

    /**
     * Puts corrections to a netlist, one after another. It never fails: a correction whose place is not in the reading,
     * or that something else stands against, becomes a doubt.
     *
     * @param recognised  the sheets as they were read
     * @param corrections what a person says of it, in the order said
     * @return the netlist with the corrections; without corrections, the very same netlist
     */
    public static Corrected apply(Netlist recognised, List<Correction> corrections) {
        if (corrections.isEmpty()) {
            return new Corrected(recognised, List.of());
        }
        Corrections all = new Corrections(recognised);
        List<Outcome> outcomes = new ArrayList<>();
        for (Correction c : corrections) {
            outcomes.add(all.put(c));
        }
        for (int i = 0; i < outcomes.size(); i++) {
            outcomes.set(i, all.settled(corrections.get(i), outcomes.get(i)));
            all.doubt(corrections.get(i), outcomes.get(i));
        }
        return new Corrected(all.draft.netlist(), outcomes);
    }

    private Outcome put(Correction c) {
        Outcome outcome = edit(c);
        boolean answered = outcome.holds() && answer(c);
        return answered && outcome.state() == State.ALREADY ? Outcome.done() : outcome;
    }

    private Outcome edit(Correction c) {
        if (c instanceof Correction.Join j) {
            return nets.join(j);
        } else if (c instanceof Correction.Split s) {
            return nets.split(s);
        } else if (c instanceof Correction.Detach d) {
            return nets.detach(d);
        } else if (c instanceof Correction.Junction j) {
            return junctions.junction(j);
        } else if (c instanceof Correction.Name n) {
            return nets.name(n);
        } else if (c instanceof Correction.AddPin p) {
            return pins.add(p);
        } else if (c instanceof Correction.MovePin p) {
            return pins.move(p);
        } else if (c instanceof Correction.EditPin p) {
            return pins.edit(p);
        } else if (c instanceof Correction.RemovePin p) {
            return pins.remove(p);
        } else if (c instanceof Correction.AddPart p) {
            return parts.add(p);
        } else if (c instanceof Correction.EditPart p) {
            return parts.edit(p);
        } else if (c instanceof Correction.RemovePart p) {
            return parts.remove(p);
        } else if (c instanceof Correction.AssignUnit u) {
            return parts.assign(u);
        } else if (c instanceof Correction.Ignore i) {
            return region.ignore(i);
        }
        return Outcome.already("nothing is doubted at " + ((Correction.Confirm) c).at().text());
    }

    /** Takes away the doubts that a correction answers; returns whether there were any. */
    private boolean answer(Correction c) {
        List<Doubt> answered = draft.doubts.stream().filter(d -> d.at() != null && answers(c, d)).toList();
        draft.doubts.removeAll(answered);
        for (Doubt d : answered) {
            List<WireHit> about = new Finder(draft).wires(d.page(), d.at(), ABOUT);
            about.stream().map(WireHit::net).distinct().filter(n -> !doubted(n)).forEach(n -> {
                n.confidence = Math.max(n.confidence, ANSWERED);
                n.touched();
            });
        }
        return !answered.isEmpty();
    }

    private static boolean answers(Correction c, Doubt d) {
        if (c instanceof Correction.Ignore i) {
            return i.page() == d.page() && i.box().contains(d.at());
        }
        if (c instanceof Correction.AddPart p) {
            Box box = p.box();
            return p.page() == d.page() && box.contains(d.at());
        }
        return c.spots().stream().anyMatch(s -> s.page() == d.page() && s.at().distance(d.at()) <= ABOUT);
    }

    private boolean doubted(NetDraft net) {
        return draft.doubts.stream().filter(d -> d.at() != null).anyMatch(d -> net.segs.stream()
                .anyMatch(s -> s.page() == d.page() && s.distance(d.at()) <= Draft.TOUCH));
    }

    /** A cut that had no effect at first may have had it by the cuts after it. */
    private Outcome settled(Correction c, Outcome outcome) {
        if (outcome.state() != State.WITHOUT_EFFECT) {
            return outcome;
        }
        Spot spot = c.spots().get(0);
        boolean apart = draft.cuts.stream().filter(cut -> cut.page() == spot.page())
                .filter(cut -> cut.at().distance(spot.at()) <= Finder.REACH + 1)
                .anyMatch(cut -> new Finder(draft).wires(cut.page(), cut.at(), Draft.TOUCH).stream()
                        .map(WireHit::net).distinct().count() > 1);
        return apart ? Outcome.done() : outcome;
    }

    private void doubt(Correction c, Outcome outcome) {
        Spot at = c.spots().get(0);
        if (outcome.state() == State.NO_PLACE) {
            draft.doubts.add(new Doubt(NO_PLACE, at.page(), at.at(), "The correction \u201c" + c.words()
                    + "\u201d finds no place in this reading: " + outcome.why() + ". Make it anew, or take it back."));
        } else if (outcome.state() == State.WITHOUT_EFFECT) {
            draft.doubts.add(new Doubt(WITHOUT_EFFECT, at.page(), at.at(), "The correction \u201c" + c.words()
                    + "\u201d does not show: " + outcome.why() + ". Correct that too, or take it back."));
        }
    }
}
