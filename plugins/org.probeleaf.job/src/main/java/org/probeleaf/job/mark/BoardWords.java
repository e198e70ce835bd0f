// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.mark;

import java.util.stream.Collectors;

import org.probeleaf.schematic.board.BoardChange;
import org.probeleaf.schematic.place.Place;

/** What is done to a board, in words. */
public final class BoardWords {

    private BoardWords() {
    }

    /** What was done ({@code "IC5.8 lifted"}). */
    public static String done(BoardChange change) {
        if (change instanceof BoardChange.Lift c) {
            return c.pin().text() + " lifted";
        }
        if (change instanceof BoardChange.Remove c) {
            return c.ref() + " removed";
        }
        if (change instanceof BoardChange.Fit c) {
            return c.ref() + value(c.value()) + " fitted" + (c.at().isEmpty() ? "" : " at "
                    + c.at().stream().map(Place::text).collect(Collectors.joining(" and ")));
        }
        if (change instanceof BoardChange.Replace c) {
            return c.ref() + " replaced" + (c.value() == null ? "" : " by " + c.value());
        }
        if (change instanceof BoardChange.Link c) {
            return c.from().text() + " linked to " + c.to().text();
        }
        if (change instanceof BoardChange.Cut c) {
            return "track cut at " + c.at().text();
        }
        BoardChange.Value c = (BoardChange.Value) change;
        return c.ref() + " is " + c.value();
    }

    /** What has to be done to put it back ({@code "solder IC5.8 down again"}). */
    public static String toPutBack(BoardChange change) {
        if (change instanceof BoardChange.Lift c) {
            return "put " + c.pin().text() + " back on its pad";
        }
        if (change instanceof BoardChange.Remove c) {
            return "fit " + c.ref() + " again";
        }
        if (change instanceof BoardChange.Fit c) {
            return "take " + c.ref() + " out";
        }
        if (change instanceof BoardChange.Replace c) {
            return "fit the former " + c.ref() + " again";
        }
        if (change instanceof BoardChange.Link c) {
            return "take the link from " + c.from().text() + " to " + c.to().text() + " off";
        }
        if (change instanceof BoardChange.Cut c) {
            return "bridge the cut at " + c.at().text();
        }
        return "give " + ((BoardChange.Value) change).ref() + " its former value";
    }

    private static String value(String value) {
        return value == null ? "" : " (" + value + ")";
    }
}
