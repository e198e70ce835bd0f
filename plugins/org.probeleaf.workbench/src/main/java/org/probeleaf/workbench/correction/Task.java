// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.correction;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

import org.probeleaf.job.mark.Board;
import org.probeleaf.recognition.correction.Correction;
import org.probeleaf.recognition.correction.Spot;
import org.probeleaf.schematic.board.BoardChange;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.PartUnit;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.workbench.session.Deed;
import org.probeleaf.workbench.session.Selection;

/** What is done on the sheet by pointing: corrections of the reading, and what was done to the board. */
public enum Task {
    /** Two places are on one net. */
    JOIN("Join", "join", List.of(new Step("Click a wire or a pin.", Aim.NET),
            new Step("Click the wire or the pin that it is joined to.", Aim.NET)), List.of(),
            (p, t) -> new Correction.Join(p.stream().map(Task::spot).toList())),
    /** A wire is cut. */
    SPLIT("Split", "split", List.of(new Step("Click the wire where it should come apart.", Aim.WIRE)), List.of(),
            (p, t) -> new Correction.Split(bare(p.get(0)))),
    /** A pin or a run of wire is not on its net. */
    DETACH("Take off the net", "detach", List.of(new Step("Click the pin, or the wire, that is not on this net.",
            Aim.NET)), List.of(), (p, t) -> new Correction.Detach(List.of(spot(p.get(0))))),
    /** Crossing wires are joined. */
    JUNCTION("Junction", "junction", List.of(new Step("Click where the wires cross: they are joined there.", Aim.SPOT)),
            List.of(), (p, t) -> new Correction.Junction(bare(p.get(0)), true)),
    /** Meeting wires pass each other. */
    NO_JUNCTION("No junction", "no-junction", List.of(new Step("Click where the wires meet: they pass each other there.",
            Aim.SPOT)), List.of(), (p, t) -> new Correction.Junction(bare(p.get(0)), false)),
    /** A net bears a name on the sheet. */
    NAME("Name as drawn", "name", List.of(new Step("Click the net that bears the name.", Aim.NET)),
            List.of(new Field("Name on the sheet", s -> s.net() == null ? "" : s.net().name())),
            (p, t) -> new Correction.Name(spot(p.get(0)), t.get(0))),
    /** A part has a pin that was not seen. */
    ADD_PIN("Add a pin", "pin-add", List.of(new Step("Click where the pin ends.", Aim.SPOT)),
            List.of(new Field("Part", s -> s.part() == null ? "" : s.part().ref()), new Field("Number", s -> ""),
                    new Field("Name", s -> "")),
            (p, t) -> new Correction.AddPin(bare(p.get(0)), t.get(0).strip(), t.get(1), t.get(2))),
    /** A pin ends elsewhere. */
    MOVE_PIN("Move a pin", "pin-move", List.of(new Step("Click the pin.", Aim.PIN),
            new Step("Click where it ends.", Aim.SPOT)), List.of(),
            (p, t) -> new Correction.MovePin(spot(p.get(0)), bare(p.get(1)))),
    /** A pin is lettered otherwise. */
    EDIT_PIN("Letter a pin", "letter", List.of(new Step("Click the pin.", Aim.PIN)),
            List.of(new Field("Number", s -> s.pin().number()), new Field("Name", s -> s.pin().name())),
            (p, t) -> new Correction.EditPin(spot(p.get(0)), t.get(0), t.get(1))),
    /** There is no such pin. */
    REMOVE_PIN("Remove a pin", "remove", List.of(new Step("Click the pin that is none.", Aim.PIN)), List.of(),
            (p, t) -> new Correction.RemovePin(spot(p.get(0)))),
    /** There is a part that was not seen. */
    ADD_PART("Add a part", "part-add", List.of(new Step("Click or drag from one corner of the part\u2026", Aim.CORNER),
            new Step("\u2026to the opposite corner.", Aim.CORNER)),
            List.of(new Field("Designator", s -> ""), new Field("Value", s -> ""), new Field("Unit", s -> "")),
            (p, t) -> new Correction.AddPart(p.get(0).page(), box(p), t.get(0), none(t.get(1)), none(t.get(2)))),
    /** A part is lettered otherwise. */
    EDIT_PART("Letter a part", "letter", List.of(new Step("Click the body of the part.", Aim.PART)),
            List.of(new Field("Designator", s -> s.part().ref()), new Field("Value", s -> s.part().value())),
            (p, t) -> new Correction.EditPart(spot(p.get(0)), t.get(0), t.get(1))),
    /** There is no such part. */
    REMOVE_PART("Remove a part", "remove", List.of(new Step("Click the body of the part that is none.", Aim.PART)),
            List.of(), (p, t) -> new Correction.RemovePart(spot(p.get(0)))),
    /** A drawn piece is a unit of a part. */
    UNIT("Unit of a part", "unit", List.of(new Step("Click the body of the unit.", Aim.PART)),
            List.of(new Field("Is of the part", s -> s.part().ref()), new Field("Unit", s -> "")),
            (p, t) -> new Correction.AssignUnit(spot(p.get(0)), t.get(0), none(t.get(1)))),
    /** What is drawn in a region does not count. */
    IGNORE("Ignore a region", "ignore", List.of(new Step("Click or drag from one corner of the region\u2026", Aim.CORNER),
            new Step("\u2026to the opposite corner.", Aim.CORNER)), List.of(),
            (p, t) -> new Correction.Ignore(p.get(0).page(), box(p))),
    /** What was doubted is right. */
    CONFIRM("Right as read", "confirm", List.of(new Step("Click the place that was doubted.", Aim.SPOT)), List.of(),
            (p, t) -> new Correction.Confirm(bare(p.get(0)))),
    /** A pin is off its pad. */
    LIFT("Lift a pin", "lift", true, List.of(new Step("Click the pin that is lifted.", Aim.PIN)), List.of(),
            (p, t) -> new BoardChange.Lift(BoardPlaces.pin(p.get(0)))),
    /** A part is out. */
    TAKE_OUT("Take a part out", "take-out", true, List.of(new Step("Click the body of the part that is out.",
            Aim.PART)), List.of(), (p, t) -> new BoardChange.Remove(BoardPlaces.ref(p.get(0)))),
    /** A wire joins two places. */
    LINK("Link", "link", true, List.of(new Step("Click the wire or the pin where the link begins.", Aim.NET),
            new Step("Click the wire or the pin where it ends.", Aim.NET)), List.of(),
            (p, t) -> new BoardChange.Link(BoardPlaces.place(p.get(0)), BoardPlaces.place(p.get(1)))),
    /** A track is cut. */
    CUT("Cut a track", "cut", true, List.of(new Step("Click the wire where its track is cut, or a pin to cut it off.",
            Aim.NET)), List.of(), (p, t) -> new BoardChange.Cut(BoardPlaces.place(p.get(0)))),
    /** Another specimen is in. */
    REPLACE("Replace a part", "replace", false, List.of(new Step("Click the body of the part that was replaced.",
            Aim.PART)), List.of(new Field("By", s -> s.part().value())),
            (p, t) -> new BoardChange.Replace(BoardPlaces.ref(p.get(0)), none(t.get(0)))),
    /** The part on the board has another value. */
    OTHER_VALUE("Other value", "other-value", false, List.of(new Step("Click the body of the part.", Aim.PART)),
            List.of(new Field("Value on the board", s -> s.part().value())),
            (p, t) -> new BoardChange.Value(BoardPlaces.ref(p.get(0)), BoardPlaces.said(t.get(0)))),
    /** A part is in that the drawing does not have. */
    FIT("Fit a part", "fit", false, List.of(new Step("Click the wire or the pin where one end goes.", Aim.NET),
            new Step("Click where the other end goes.", Aim.NET)),
            List.of(new Field("Designator", s -> ""), new Field("Value", s -> "")),
            (p, t) -> new BoardChange.Fit(BoardPlaces.designator(t.get(0)), none(t.get(1)),
                    p.stream().map(BoardPlaces::place).toList()));

    /** What is to be pointed at. */
    public enum Aim {
        /** A wire or a pin. */
        NET("There is no wire and no pin here."),
        /** A wire. */
        WIRE("There is no wire here."),
        /** A pin. */
        PIN("There is no pin here."),
        /** The body of a part. */
        PART("There is no part here."),
        /** Any spot. */
        SPOT(""),
        /** A corner of a rectangle. */
        CORNER("");

        private final String missing;

        Aim(String missing) {
            this.missing = missing;
        }

        /** What to say where there is no such thing. */
        String missing() {
            return missing;
        }
    }

    /**
     * One thing to point at.
     *
     * @param prompt what to do, for the person
     * @param aim    what is pointed at
     */
    public record Step(String prompt, Aim aim) {
    }

    /** One thing to type; what stands there first is taken from the place pointed at first. */
    record Field(String title, Function<Selection, String> first) {

        String firstText(Selection pick) {
            String text = first.apply(pick);
            return text == null ? "" : text;
        }
    }

    /** Makes something of places and texts. */
    @FunctionalInterface
    private interface Maker<T> {
        T make(List<Selection> picks, List<String> texts);
    }

    private final String title;
    private final String icon;
    private final List<Step> steps;
    private final List<Field> fields;
    private final boolean onBoard;
    private final boolean temporary;
    private final Maker<Correction> correction;
    private final Maker<BoardChange> change;

    /** A correction of the reading. */
    Task(String title, String icon, List<Step> steps, List<Field> fields, Maker<Correction> correction) {
        this(title, icon, steps, fields, false, correction, null);
    }

    /** Something done to the board; {@code temporary} says whether it is mostly done for now only. */
    Task(String title, String icon, boolean temporary, List<Step> steps, List<Field> fields,
            Maker<BoardChange> change) {
        this(title, icon, steps, fields, temporary, null, change);
    }

    Task(String title, String icon, List<Step> steps, List<Field> fields, boolean temporary,
            Maker<Correction> correction, Maker<BoardChange> change) {
        this.title = title;
        this.icon = icon;
        this.steps = steps;
        this.fields = fields;
        this.onBoard = change != null;
        this.temporary = temporary;
        this.correction = correction;
        this.change = change;
    }

    /** Whether it is done to the board, and is no correction of the reading. */
    public boolean onBoard() {
        return onBoard;
    }

    /** Whether what is done to the board is mostly done for now only. */
    boolean temporary() {
        return temporary;
    }

    /** What it is called. */
    public String title() {
        return title;
    }

    /** Name of the icon that stands for it. */
    public String icon() {
        return icon;
    }

    /** What is to be pointed at, in order; one or more. */
    public List<Step> steps() {
        return steps;
    }

    List<Field> fields() {
        return fields;
    }

    /**
     * What is done.
     *
     * @param board  which board something is done to; a correction has none to do with it
     * @param forNow whether what is done to the board is to be put back
     * @throws IllegalArgumentException with one sentence for a person where something is missing
     */
    Deed make(List<Selection> picks, List<String> texts, Board board, boolean forNow) {
        return onBoard ? new Deed.OnBoard(board, change.make(picks, texts), forNow)
                : new Deed.OnReading(correction.make(picks, texts));
    }

    private static Spot spot(Selection s) {
        return new Spot(s.place(), s.page(), s.at());
    }

    /** The spot alone, whatever else is there; a hand points no finer than a tenth of a point. */
    private static Spot bare(Selection s) {
        return Spot.of(s.page(), new Point(tenth(s.at().x()), tenth(s.at().y())));
    }

    private static double tenth(double points) {
        return Math.round(points * 10) / 10.0;
    }

    private static String none(String text) {
        return text.isBlank() ? null : text.strip();
    }

    private static Box box(List<Selection> p) {
        if (p.get(0).page() != p.get(1).page()) {
            throw new IllegalArgumentException("The two corners lie on different sheets; point at two on one sheet.");
        }
        return Box.of(tenth(p.get(0).at().x()), tenth(p.get(0).at().y()), tenth(p.get(1).at().x()),
                tenth(p.get(1).at().y()));
    }

    /** A part pointed at: where the place is none of its bodies, as at one of its pins, the body nearest to it. */
    static Selection part(Part part, Selection at) {
        Point spot = part.units().stream().filter(u -> u.page() == at.page()).map(PartUnit::box)
                .min(Comparator.comparingDouble(b -> b.distance(at.at())))
                .filter(b -> !b.contains(at.at())).map(Box::centre).orElse(at.at());
        return new Selection(at.page(), spot, new Place.OfPart(part.ref()), null, part, null);
    }

    /** Whether a pin is pointed at. */
    static boolean isPin(Selection s) {
        Pin pin = s.pin();
        return pin != null && s.part() != null;
    }
}
