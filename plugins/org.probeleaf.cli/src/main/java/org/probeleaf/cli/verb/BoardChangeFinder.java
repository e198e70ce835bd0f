// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.verb;

import java.nio.file.Path;
import java.util.List;

import org.probeleaf.cli.io.Problem;
import org.probeleaf.job.Boards;
import org.probeleaf.job.mark.Board;
import org.probeleaf.job.mark.KeptBoardChange;
import org.probeleaf.schematic.board.BoardChange;
import org.probeleaf.schematic.place.Place;

/** Finds which change of the board a person means. */
final class BoardChangeFinder {

    private BoardChangeFinder() {
    }

    /**
     * The change that a word means: by its number on the put-back list, else the latest that stands and is about the
     * place.
     *
     * @throws Problem where it means none
     */
    static KeptBoardChange find(Boards boards, String word, Path file) {
        List<KeptBoardChange> open = boards.open();
        if (word.matches("[1-9]\\d{0,5}")) {
            int index = Integer.parseInt(word) - 1;
            if (index < open.size()) {
                return open.get(index);
            }
            throw Problem.usage("the put-back list has " + (open.isEmpty() ? "nothing on it" : open.size()
                    + " on it") + "; probeleaf putback " + file + " shows it");
        }
        Place place = Verb.place(word);
        List<KeptBoardChange> about = boards.standing().stream()
                .filter(k -> k.board() == Board.THIS && isAbout(k.change(), place)).toList();
        if (about.isEmpty()) {
            throw Problem.usage("nothing that was done to the board is about " + word + "; probeleaf putback " + file
                    + " lists what is to be put back");
        }
        return about.stream().filter(KeptBoardChange::temporary).reduce((a, b) -> b)
                .orElse(about.get(about.size() - 1));
    }

    private static boolean isAbout(BoardChange change, Place place) {
        String text = place.text();
        if (change instanceof BoardChange.Lift c) {
            return c.pin().text().equalsIgnoreCase(text);
        }
        if (change instanceof BoardChange.Link c) {
            return c.from().text().equalsIgnoreCase(text) || c.to().text().equalsIgnoreCase(text);
        }
        if (change instanceof BoardChange.Cut c) {
            return c.at().text().equalsIgnoreCase(text);
        }
        return ref(change).equalsIgnoreCase(text);
    }

    private static String ref(BoardChange change) {
        if (change instanceof BoardChange.Remove c) {
            return c.ref();
        }
        if (change instanceof BoardChange.Fit c) {
            return c.ref();
        }
        return change instanceof BoardChange.Replace c ? c.ref() : ((BoardChange.Value) change).ref();
    }
}
