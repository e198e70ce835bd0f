// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.follow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;

import org.probeleaf.schematic.board.BoardChange;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.netlist.Wire;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.trace.Boards;
import org.probeleaf.trace.board.BoardState;
import org.probeleaf.trace.drive.Drivers;
import org.probeleaf.trace.follow.Followed.Node;

/** A trace follows the board: random boards, random lists of changes, held against {@link PlainEditor}. */
class BoardTraceTest {

    private static final List<String> PARTS = List.of("IC1 74LS08 1 2 3 4 5 6", "IC2 74LS04 1 2 3 4", "IC3 74LS244 1 2 18",
            "IC4 74LS74 1 2 3 5", "IC5 27C128 22 11", "R1 1k 1 2", "R2 10k 1 2", "R3 33 1 2", "C1 1n 1 2",
            "D1 1N4148 1:A 2:K", "Q1 BC548 1:B 2:C 3:E", "J1 - 1 2", "TP1 - 1");
    private static final FollowOptions OPTIONS = FollowOptions.all();

    /** A board with the pins of each net in a row; what is done to it. */
    record Case(Netlist board, Map<String, List<String>> rows, List<BoardChange> changes) {
    }

    @Property(tries = 200)
    void trace_onTheChangedBoard_isThatOfANetlistEditedTheSameWay(@ForAll("cases") Case c) {
        BoardState state = BoardState.of(c.board(), c.changes());
        Netlist edited = PlainEditor.edited(c.board(), c.rows(), c.changes());
        SignalNetwork one = SignalNetwork.of(state.netlist(), PartBook.standard());
        SignalNetwork other = SignalNetwork.of(edited, PartBook.standard());
        int followed = 0;
        for (Place from : pins(edited)) {
            assertEquals(told(other, from), told(one, from), () -> from.text() + " after " + c.changes());
            followed += one.follow(from, OPTIONS).nodes().size() > 1 ? 1 : 0;
        }
        assertEquals(pins(edited), pins(state.netlist()));
        Statistics.collect(followed > 0 ? "leads on" : "leads nowhere");
    }

    @Property(tries = 100)
    void trace_lastChangeDropped_isExactlyTheEarlierOne(@ForAll("cases") Case c) {
        List<BoardChange> done = new ArrayList<>();
        List<List<Object>> before = new ArrayList<>(List.of(traces(c.board(), done)));
        for (BoardChange change : c.changes()) {
            done.add(change);
            before.add(traces(c.board(), done));
        }
        for (int i = done.size() - 1; i >= 0; i--) {
            done.remove(i);
            assertEquals(before.get(i), traces(c.board(), done));
        }
        assertTrue(BoardState.of(c.board(), done).netlist() == c.board());
    }

    private static List<Object> traces(Netlist board, List<BoardChange> changes) {
        SignalNetwork network = SignalNetwork.of(BoardState.of(board, changes).netlist(), PartBook.standard());
        List<Object> all = new ArrayList<>();
        for (Place from : pins(board)) {
            if (network.signals().netAt(from).isPresent()) {
                all.add(network.follow(from, OPTIONS));
                all.add(network.follow(from, OPTIONS.with(Flow.UPSTREAM)));
            }
        }
        return all;
    }

    /** All that is told of a place, without the names of nets, which the two ways give as they like. */
    private static List<String> told(SignalNetwork network, Place from) {
        List<String> lines = new ArrayList<>();
        String net = network.signals().trace(from).net().id();
        lines.add(network.signals().trace(from).pins().stream().map(p -> p.place().text() + " " + p.direction() + " " + p.name())
                .toList().toString());
        lines.add(Drivers.of(network, net).kind().toString());
        for (Flow flow : Flow.values()) {
            for (boolean gates : List.of(true, false)) {
                add(network.follow(from, OPTIONS.withGates(gates).with(flow)).root(), lines);
            }
        }
        if (network.signals().netlist().part("J1").stream().anyMatch(p -> p.pins().get(0).net() != null)) {
            network.paths(from, Place.parse("J1.1"), OPTIONS.withEnables(true), 8).forEach(p -> lines.add(p.places().stream()
                    .map(x -> x instanceof Place.OfNet ? "net" : x.text()).toList().toString()));
        }
        return lines;
    }

    private static void add(Node node, List<String> lines) {
        lines.add("  ".repeat(node.depth()) + node.pins().stream().map(p -> p.place().text()).toList() + " " + node.kind()
                + (node.step() == null ? "" : " " + node.step().reason())
                + node.stops().stream().map(s -> s.kind() + (s.at() == null ? "" : "@" + s.at().place().text())).toList());
        node.next().forEach(n -> add(n, lines));
    }

    private static List<Place> pins(Netlist board) {
        return board.parts().stream().flatMap(p -> p.pins().stream().filter(q -> q.net() != null)
                .map(q -> (Place) new Place.OfPin(p.ref(), q.number()))).toList();
    }

    /** The spot of a wire half way between two pins that are drawn next to each other. */
    static Place between(Netlist board, String a, String b) {
        Point p = at(board, a);
        Point q = at(board, b);
        return new Place.OnPage(1, (p.x() + q.x()) / 2, (p.y() + q.y()) / 2);
    }

    private static Point at(Netlist board, String pin) {
        Place.OfPin place = (Place.OfPin) Place.parse(pin);
        return board.part(place.ref()).orElseThrow().pins().stream().filter(p -> p.number().equals(place.pin())).findFirst()
                .orElseThrow().at();
    }

    @Provide
    Arbitrary<Case> cases() {
        int pins = PARTS.stream().mapToInt(p -> p.split(" ").length - 2).sum();
        Arbitrary<String> net = Arbitraries.of("N1", "N2", "N3", "N4", "N5", "N6", "N7", "N8", "N9", "GND", "+5V", "");
        return net.list().ofSize(pins).flatMap(nets -> {
            Netlist plain = wired(nets);
            Map<String, List<String>> rows = rows(plain);
            Netlist board = drawn(plain, rows);
            return changes(board, rows).list().ofMinSize(1).ofMaxSize(7).map(changes -> new Case(board, rows, changes));
        });
    }

    private static Netlist wired(List<String> nets) {
        List<String> lines = new ArrayList<>();
        int next = 0;
        for (String part : PARTS) {
            String[] words = part.split(" ");
            StringBuilder line = new StringBuilder(words[0] + " " + words[1]);
            for (int i = 2; i < words.length; i++) {
                String net = nets.get(next++);
                line.append(' ').append(words[i]).append(net.isEmpty() ? "" : "=" + net);
            }
            lines.add(line.toString());
        }
        return Boards.of(lines.toArray(String[]::new));
    }

    private static Map<String, List<String>> rows(Netlist board) {
        Map<String, List<String>> rows = new TreeMap<>();
        board.parts().forEach(part -> part.pins().stream().filter(p -> p.net() != null)
                .forEach(p -> rows.computeIfAbsent(p.net(), n -> new ArrayList<>()).add(part.ref() + "." + p.number())));
        return rows;
    }

    /** The board with each net as a row of pins, twenty points apart, and wires between neighbours. */
    private static Netlist drawn(Netlist board, Map<String, List<String>> rows) {
        Map<String, Point> places = new LinkedHashMap<>();
        List<String> order = List.copyOf(rows.keySet());
        rows.forEach((net, pins) -> pins.forEach(p -> places.put(p, new Point(20 * pins.indexOf(p), 50 * order.indexOf(net)))));
        List<Part> parts = new ArrayList<>();
        for (Part part : board.parts()) {
            List<Pin> pins = part.pins().stream().map(p -> Pin.drawn(p.number(), p.name(), null, 1,
                    places.getOrDefault(part.ref() + "." + p.number(), new Point(-500, p.at().y())), p.net())).toList();
            parts.add(new Part(part.ref(), part.value(), part.units(), pins));
        }
        List<Net> nets = board.nets().stream().map(n -> new Net(n.id(), n.name(), n.pages(), wires(rows.get(n.id()), places),
                List.of(), n.labels(), 1)).toList();
        return new Netlist("", "", List.of(), parts, nets, List.of());
    }

    private static List<Wire> wires(List<String> row, Map<String, Point> places) {
        List<Wire> wires = new ArrayList<>();
        for (int i = 1; i < row.size(); i++) {
            wires.add(new Wire(1, List.of(places.get(row.get(i - 1)), places.get(row.get(i)))));
        }
        return wires;
    }

    /** Lifts, removals, parts put in again, links between pins, cuts at pins and of wires that carry a signal. */
    private static Arbitrary<BoardChange> changes(Netlist board, Map<String, List<String>> rows) {
        Arbitrary<Place.OfPin> pin = Arbitraries.of(board.parts().stream().flatMap(p -> p.pins().stream()
                .map(q -> new Place.OfPin(p.ref(), q.number()))).toList());
        Arbitrary<String> ref = Arbitraries.of(board.parts().stream().map(Part::ref).toList());
        List<Place> wires = new ArrayList<>();
        rows.forEach((net, pins) -> {
            for (int i = 1; i < pins.size() && net.startsWith("N"); i++) {
                wires.add(between(board, pins.get(i - 1), pins.get(i)));
            }
        });
        List<Arbitrary<? extends BoardChange>> kinds = new ArrayList<>(List.of(pin.map(BoardChange.Lift::new),
                ref.map(BoardChange.Remove::new), ref.map(r -> new BoardChange.Fit(r, null, List.of())),
                Combinators.combine(pin, pin).as(BoardChange.Link::new), pin.map(BoardChange.Cut::new)));
        if (!wires.isEmpty()) {
            kinds.add(Arbitraries.of(new TreeSet<>(wires.stream().map(Place::text).toList())).map(Place::parse)
                    .map(BoardChange.Cut::new));
        }
        return Arbitraries.oneOf(kinds.stream().map(a -> a.map(c -> (BoardChange) c)).flatMap(Stream::of).toList());
    }
}
