// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.correction;

import java.util.List;

import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.place.Place;

/**
 * Something that a person says about the reading of a sheet. A correction is a value; what it does to a netlist is
 * done by {@link Corrections}.
 */
public sealed interface Correction {

    /** What it does, in a few words ({@code "join of IC4.21 and net:/RD"}). */
    String words();

    /** The spots it is about, the first one foremost; a box is told by its middle. */
    List<Spot> spots();

    /**
     * The places are on one net.
     *
     * @param spots two or more places of nets or pins
     */
    record Join(List<Spot> spots) implements Correction {
        public Join {
            spots = List.copyOf(spots);
            require(spots.size() > 1, "a join needs two places");
        }

        @Override
        public String words() {
            return "join of " + listed(spots);
        }
    }

    /**
     * The wire is cut here; the net falls apart into what is still connected on either side.
     *
     * @param at a spot on a wire; at a joint all wires come apart
     */
    record Split(Spot at) implements Correction {
        @Override
        public String words() {
            return "split at " + at.text();
        }

        @Override
        public List<Spot> spots() {
            return List.of(at);
        }
    }

    /**
     * The pins, or the runs of wire at the spots, are not on their net: they come off it into a net of their own. Those
     * of one net stay together; a pin alone is on no net.
     *
     * @param spots one or more pins, or spots on wires
     */
    record Detach(List<Spot> spots) implements Correction {
        public Detach {
            spots = List.copyOf(spots);
            require(!spots.isEmpty(), "nothing is named that is to come off its net");
        }

        @Override
        public String words() {
            return listed(spots) + " off the net";
        }
    }

    /**
     * Wires that meet or cross here are joined, or pass each other.
     *
     * @param at     the spot
     * @param joined whether there is a junction; without one only straight runs hold together
     */
    record Junction(Spot at, boolean joined) implements Correction {
        @Override
        public String words() {
            return (joined ? "junction at " : "no junction at ") + at.text();
        }

        @Override
        public List<Spot> spots() {
            return List.of(at);
        }
    }

    /**
     * The net bears a name. A name means the same net wherever it stands: one that bears it already is joined.
     *
     * @param at   a place on the net
     * @param name the name, never blank
     */
    record Name(Spot at, String name) implements Correction {
        public Name {
            name = name.strip();
            require(!name.isEmpty(), "there is no name; type what the net is called");
        }

        @Override
        public String words() {
            return "name " + name + " at " + at.text();
        }

        @Override
        public List<Spot> spots() {
            return List.of(at);
        }
    }

    /**
     * A part has a pin here. It is on the net of the wire at the spot.
     *
     * @param at     the spot
     * @param ref    the part
     * @param number the pin's number, or null where the sheet prints none
     * @param name   the pin's name, or null where the sheet prints none
     */
    record AddPin(Spot at, String ref, String number, String name) implements Correction {
        public AddPin {
            require(!ref.isBlank(), "no part is named that the pin belongs to");
        }

        @Override
        public String words() {
            return "pin " + ref + (number != null ? "." + number : name != null ? "." + name : "") + " at " + at.text();
        }

        @Override
        public List<Spot> spots() {
            return List.of(at);
        }
    }

    /**
     * A pin ends elsewhere; it is on the net of the wire there.
     *
     * @param pin the pin
     * @param to  where it ends
     */
    record MovePin(Spot pin, Spot to) implements Correction {
        @Override
        public String words() {
            return "move of pin " + pin.text() + " to " + to.text();
        }

        @Override
        public List<Spot> spots() {
            return List.of(pin, to);
        }
    }

    /**
     * A pin is lettered otherwise.
     *
     * @param pin    the pin
     * @param number its number; null leaves it as read, an empty one says that none is printed
     * @param name   its name, likewise
     */
    record EditPin(Spot pin, String number, String name) implements Correction {
        public EditPin {
            require(number != null || name != null, "neither a number nor a name is given for the pin");
        }

        @Override
        public String words() {
            return "lettering of pin " + pin.text();
        }

        @Override
        public List<Spot> spots() {
            return List.of(pin);
        }
    }

    /**
     * There is no such pin.
     *
     * @param pin the pin
     */
    record RemovePin(Spot pin) implements Correction {
        @Override
        public String words() {
            return "removal of pin " + pin.text();
        }

        @Override
        public List<Spot> spots() {
            return List.of(pin);
        }
    }

    /**
     * There is a part here. Ends of wires at its outline become its pins.
     *
     * @param page  1-based page
     * @param box   its body
     * @param ref   its designator, without a unit letter
     * @param value its value, or null
     * @param unit  the unit that is drawn here, or null for a part in one piece
     */
    record AddPart(int page, Box box, String ref, String value, String unit) implements Correction {
        public AddPart {
            ref = ref.strip();
            require(!ref.isEmpty(), "the part has no designator");
        }

        @Override
        public String words() {
            return "part " + ref + (unit == null ? "" : " (unit " + unit + ")") + " at " + spots().get(0).text();
        }

        @Override
        public List<Spot> spots() {
            return List.of(Spot.of(page, box.centre()));
        }
    }

    /**
     * A part is lettered otherwise.
     *
     * @param part  the part
     * @param ref   its designator; null leaves it as read. Where another part bears it, both become one
     * @param value its value; null leaves it as read, an empty one says that none is printed
     */
    record EditPart(Spot part, String ref, String value) implements Correction {
        public EditPart {
            require(ref != null || value != null, "neither a designator nor a value is given for the part");
            require(ref == null || !ref.isBlank(), "the designator is empty; type what the part is called");
        }

        @Override
        public String words() {
            return (ref == null ? "value " + value : ref) + " for " + part.text();
        }

        @Override
        public List<Spot> spots() {
            return List.of(part);
        }
    }

    /**
     * There is no such part.
     *
     * @param part the part
     */
    record RemovePart(Spot part) implements Correction {
        @Override
        public String words() {
            return "removal of part " + part.text();
        }

        @Override
        public List<Spot> spots() {
            return List.of(part);
        }
    }

    /**
     * The drawn piece is a unit of a part: of one that is there, which merges the two, or of one of its own.
     *
     * @param piece the drawn piece
     * @param ref   designator of the part, without a unit letter
     * @param unit  the unit's letter or number, or null for a part in one piece
     */
    record AssignUnit(Spot piece, String ref, String unit) implements Correction {
        public AssignUnit {
            ref = ref.strip();
            require(!ref.isEmpty(), "no part is named that the unit belongs to");
        }

        @Override
        public String words() {
            return (unit == null ? "piece" : "unit " + unit) + " of " + ref + " at " + piece.text();
        }

        @Override
        public List<Spot> spots() {
            return List.of(piece);
        }
    }

    /**
     * What is drawn in this region does not count.
     *
     * @param page 1-based page
     * @param box  the region
     */
    record Ignore(int page, Box box) implements Correction {
        @Override
        public String words() {
            return "ignored region " + new Place.OnPage(page, box.x0(), box.y0()).text() + " to "
                    + new Place.OnPage(page, box.x1(), box.y1()).text();
        }

        @Override
        public List<Spot> spots() {
            return List.of(Spot.of(page, new Point(box.centre().x(), box.centre().y())));
        }
    }

    /**
     * The reading is right here, whatever was doubted.
     *
     * @param at the place of the doubt
     */
    record Confirm(Spot at) implements Correction {
        @Override
        public String words() {
            return "right as read at " + at.text();
        }

        @Override
        public List<Spot> spots() {
            return List.of(at);
        }
    }

    private static void require(boolean fine, String otherwise) {
        if (!fine) {
            throw new IllegalArgumentException(otherwise);
        }
    }

    private static String listed(List<Spot> spots) {
        List<String> all = spots.stream().map(Spot::text).toList();
        return all.size() == 1 ? all.get(0)
                : String.join(", ", all.subList(0, all.size() - 1)) + " and " + all.get(all.size() - 1);
    }
}
