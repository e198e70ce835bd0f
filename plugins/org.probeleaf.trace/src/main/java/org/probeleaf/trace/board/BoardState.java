// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.probeleaf.schematic.board.BoardChange;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.place.Place;

/**
 * The board as it is: what its drawing says, with what was done to the board. Immutable; any thread may use it.
 *
 * <p>A change that the board does not allow (a part that is not there, a pin that is lifted already) changes nothing and
 * says so in its outcome. Cuts at a spot of a wire come first, wherever they stand in the list, since the spot is one
 * of the drawing; the rest follows in its order. Places name pins, parts, nets and spots of the drawing, and parts that
 * changes brought. A pin that is off its pad means the pin itself; a pin of a part that is out means its pad.
 */
public final class BoardState {

    private final Netlist drawn;
    private final Netlist netlist;
    private final List<BoardChange> changes;
    private final List<ChangeOutcome> outcomes;
    private final List<LoosePin> loosePins;
    private final List<Part> removed;
    private final List<Part> fitted;
    private final List<ChangedValue> values;
    private final List<LinkMark> links;
    private final List<CutMark> cuts;

    private BoardState(Netlist drawn, List<BoardChange> changes) {
        this.drawn = drawn;
        this.changes = List.copyOf(changes);
        WorkingBoard board = new WorkingBoard(drawn);
        this.outcomes = BoardChanges.apply(board, this.changes);
        BoardWriter writer = new BoardWriter(board);
        this.netlist = writer.netlist();
        this.loosePins = writer.loosePins();
        this.removed = writer.removed();
        this.fitted = writer.fitted();
        this.values = writer.values();
        this.links = writer.links();
        this.cuts = writer.cuts();
    }

    /**
     * The board after changes.
     *
     * @param drawn   what its drawing says
     * @param changes in the order they were made; none gives the drawing itself
     */
    public static BoardState of(Netlist drawn, List<BoardChange> changes) {
        return new BoardState(drawn, changes);
    }

    /** The board after one more change. */
    public BoardState with(BoardChange change) {
        List<BoardChange> all = new ArrayList<>(changes);
        all.add(change);
        return new BoardState(drawn, all);
    }

    /** What would become of one more change. */
    public ChangeOutcome tried(BoardChange change) {
        List<ChangeOutcome> all = with(change).outcomes;
        return all.get(all.size() - 1);
    }

    /** What the drawing says. */
    public Netlist drawn() {
        return drawn;
    }

    /** The board as it is; the same object as {@link #drawn} where nothing is changed. */
    public Netlist netlist() {
        return netlist;
    }

    public List<BoardChange> changes() {
        return changes;
    }

    /** What became of each change, in the order of the changes. */
    public List<ChangeOutcome> outcomes() {
        return outcomes;
    }

    /** The pins that touch their pads or tracks no longer, in the order of the drawing. */
    public List<LoosePin> loosePins() {
        return loosePins;
    }

    /**
     * The pin that a place names, where it is off its pad or cut off.
     *
     * @param pin by number or name, letter case ignored
     */
    public Optional<LoosePin> loosePin(Place.OfPin pin) {
        List<LoosePin> there = loosePins.stream().filter(l -> l.part().ref().equalsIgnoreCase(pin.ref())).toList();
        return there.isEmpty() ? Optional.empty() : WorkingBoard.pinOf(there.get(0).part(), pin.pin())
                .flatMap(found -> there.stream().filter(l -> l.pin() == found).findFirst());
    }

    /** Whether a pin is lifted. */
    public boolean isLifted(String ref, String pin) {
        return loosePin(new Place.OfPin(ref, pin)).filter(l -> !l.cut()).isPresent();
    }

    /** The parts of the drawing that are not where it has them, as drawn. */
    public List<Part> removed() {
        return removed;
    }

    /** The parts that changes brought, as they are in {@link #netlist}. */
    public List<Part> fitted() {
        return fitted;
    }

    /** The parts whose value is another than the drawing's. */
    public List<ChangedValue> values() {
        return values;
    }

    /** The links. */
    public List<LinkMark> links() {
        return links;
    }

    /** The cut tracks, at wires and at pins. */
    public List<CutMark> cuts() {
        return cuts;
    }

    /** Where to measure on both sides of a lifted or cut-off pin; empty for any other place. */
    public Optional<BothSides> bothSides(Place place) {
        return place instanceof Place.OfPin pin ? loosePin(pin).map(l -> BothSides.of(l, netlist)) : Optional.empty();
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof BoardState b && drawn.equals(b.drawn) && changes.equals(b.changes);
    }

    @Override
    public int hashCode() {
        return Objects.hash(drawn, changes);
    }
}
