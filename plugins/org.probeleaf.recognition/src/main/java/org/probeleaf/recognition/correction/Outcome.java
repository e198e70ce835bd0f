// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.correction;

/**
 * What became of a correction on one reading of the sheets.
 *
 * @param state what became of it
 * @param why   the reason, to stand after a colon; empty where it was simply done, never null
 */
public record Outcome(State state, String why) {

    /** What can become of a correction. */
    public enum State {
        /** It was put to the netlist. */
        DONE,
        /** The sheets are read that way already. */
        ALREADY,
        /** It was put to the netlist and something else stands against it still. */
        WITHOUT_EFFECT,
        /** What it is about is not in this reading. */
        NO_PLACE
    }

    static Outcome done() {
        return new Outcome(State.DONE, "");
    }

    static Outcome already(String why) {
        return new Outcome(State.ALREADY, why);
    }

    static Outcome withoutEffect(String why) {
        return new Outcome(State.WITHOUT_EFFECT, why);
    }

    static Outcome noPlace(String why) {
        return new Outcome(State.NO_PLACE, why);
    }

    /** Whether the sheets now read as the correction says. */
    public boolean holds() {
        return state == State.DONE || state == State.ALREADY;
    }
}
