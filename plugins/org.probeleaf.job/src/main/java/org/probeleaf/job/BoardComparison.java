// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.probeleaf.job.mark.Board;
import org.probeleaf.schematic.netlist.NaturalOrder;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.trace.board.BoardState;
import org.probeleaf.trace.board.ChangedValue;
import org.probeleaf.trace.board.LoosePin;

/** Drawing, the board on the bench and a known-good one side by side: only where they are not the same. */
public final class BoardComparison {

    /**
     * One difference.
     *
     * @param what      a designator, or a link or cut in words
     * @param part      the designator, or null for a link or a cut
     * @param drawn     what the drawing says
     * @param thisBoard what the board on the bench has
     * @param knownGood what the known-good board has
     */
    public record Row(String what, String part, String drawn, String thisBoard, String knownGood) {

        /** Whether the board on the bench is otherwise than the known-good one. */
        public boolean differsFromKnownGood() {
            return !thisBoard.equals(knownGood);
        }
    }

    private static final String NOT_DRAWN = "not drawn";
    private static final String NOT_FITTED = "not fitted";

    private BoardComparison() {
    }

    /** The differences, parts in their order first; none before recognition. */
    public static List<Row> of(Boards boards) {
        if (boards.drawn() == null) {
            return List.of();
        }
        BoardState here = boards.state(Board.THIS);
        BoardState good = boards.state(Board.KNOWN_GOOD);
        Set<String> refs = new TreeSet<>(NaturalOrder.INSTANCE);
        Stream.of(here, good).forEach(b -> refs.addAll(changed(b)));
        List<Row> rows = new ArrayList<>();
        for (String ref : refs) {
            Optional<Part> drawn = boards.drawn().part(ref);
            rows.add(new Row(ref, ref, drawn.map(BoardComparison::value).orElse(NOT_DRAWN), on(here, ref, drawn),
                    on(good, ref, drawn)));
        }
        Map<String, String[]> rest = new LinkedHashMap<>();
        wires(here).forEach(w -> rest.computeIfAbsent(w, k -> new String[] {"no", "no"})[0] = "yes");
        wires(good).forEach(w -> rest.computeIfAbsent(w, k -> new String[] {"no", "no"})[1] = "yes");
        rest.forEach((w, on) -> rows.add(new Row(w, null, "no", on[0], on[1])));
        return rows;
    }

    private static List<String> changed(BoardState board) {
        return Stream.of(board.removed().stream().map(Part::ref), board.fitted().stream().map(Part::ref),
                board.values().stream().map(ChangedValue::ref), board.loosePins().stream().map(l -> l.part().ref()))
                .flatMap(s -> s).toList();
    }

    private static String on(BoardState board, String ref, Optional<Part> drawn) {
        if (board.removed().stream().anyMatch(p -> p.ref().equalsIgnoreCase(ref))) {
            return NOT_FITTED;
        }
        Optional<Part> there = board.netlist().part(ref);
        if (there.isEmpty()) {
            return drawn.isEmpty() ? NOT_FITTED : value(drawn.get());
        }
        List<LoosePin> loose = board.loosePins().stream().filter(l -> l.part().ref().equalsIgnoreCase(ref)).toList();
        String lifted = pins(loose, false);
        String cut = pins(loose, true);
        return value(there.get()) + (lifted.isEmpty() ? "" : ", " + lifted + " lifted")
                + (cut.isEmpty() ? "" : ", " + cut + " cut off");
    }

    private static String pins(List<LoosePin> loose, boolean cut) {
        List<String> labels = loose.stream().filter(l -> l.cut() == cut).map(l -> l.pin().label()).toList();
        return labels.isEmpty() ? "" : (labels.size() == 1 ? "pin " : "pins ")
                + labels.stream().collect(Collectors.joining(", "));
    }

    private static String value(Part part) {
        return part.value() == null || part.value().isBlank() ? "fitted" : part.value();
    }

    /** Links, and cuts of wires; cuts at pins stand with their parts. */
    private static List<String> wires(BoardState board) {
        return Stream.concat(board.links().stream().map(l -> "link " + l.change().from().text() + " to "
                + l.change().to().text()), board.cuts().stream().filter(c -> !(c.change().at()
                        instanceof Place.OfPin)).map(c -> "cut at "
                + c.change().at().text())).toList();
    }
}
