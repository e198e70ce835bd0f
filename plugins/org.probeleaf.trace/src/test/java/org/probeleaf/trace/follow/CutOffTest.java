// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.follow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.BiconnectivityInspector;
import org.jgrapht.alg.connectivity.ConnectivityInspector;
import org.jgrapht.graph.Multigraph;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import org.probeleaf.schematic.board.BoardChange;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.trace.Boards;
import org.probeleaf.trace.board.BoardState;

class CutOffTest {

    /** A driver over a gate onto two loads; a second way to one of them ends where an output drives it anyway. */
    private static final SignalNetwork NETWORK = network("IC1 Z80A 21=/RD", "IC3 74LS32 1=/RD 2=N9 3=N1 4=N1 5=N9 6=N2",
            "IC4 74LS04 1=N2 2=N3", "R1 1k 1=N1 2=N3", "IC5 74LS00 1=N3", "J1 - 1=N2", "TP1 - 1=N1");

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "net:/RD | lift IC3.3   | N1 N2 N3 | IC3.4 R1.1 TP1.1 IC3.6 IC4.1 J1.1 R1.2 IC4.2 IC5.1",
        "net:/RD | lift IC3.1   | N1 N2 N3 | IC3.1 IC3.3 IC3.4 R1.1 TP1.1 IC3.6 IC4.1 J1.1 R1.2 IC4.2 IC5.1",
        "net:/RD | remove IC3   | N1 N2 N3 | R1.1 TP1.1 IC4.1 J1.1 R1.2 IC4.2 IC5.1",
        "net:/RD | lift R1.1    |          | ",
        "net:/RD | remove IC4   |          | ",
        "net:/RD | lift IC3.6   | N2 N3    | IC4.1 J1.1 IC4.2 IC5.1",
        "IC3.3   | lift IC3.3   | N1 N2 N3 | IC3.4 R1.1 TP1.1 IC3.6 IC4.1 J1.1 R1.2 IC4.2 IC5.1",
        "R1.1    | lift R1.1    | N1 N2 N3 | IC3.3 IC3.4 TP1.1 IC3.6 IC4.1 J1.1 IC4.2 IC5.1",
        "net:N9  | lift IC5.1   |          | IC5.1"})
    void by_liftOrRemoval_isWhatIsNotReachedAnyMore(String from, String what, String nets, String pins) {
        CutOff cut = CutOff.by(NETWORK, Place.parse(from), FollowOptions.all(), change(what));
        assertEquals(nets == null ? Set.of() : Set.of(nets.split(" ")),
                cut.nets().stream().map(n -> n.title()).collect(Collectors.toSet()));
        assertEquals(pins == null ? Set.of() : Set.of(pins.split(" ")), cut.parts().stream()
                .flatMap(p -> p.pins().stream()).map(p -> p.place().text()).collect(Collectors.toSet()));
    }

    @Test
    void all_changesThatSeparate_mostFirst() {
        assertEquals("[IC3.1, IC3.3, IC3, IC3.4, IC3.6, IC4.1]", CutOff.all(NETWORK, Place.parse("net:/RD"), FollowOptions.all())
                .stream().map(c -> c.change() instanceof BoardChange.Lift l ? l.pin().text()
                : ((BoardChange.Remove) c.change()).ref()).toList().toString());
    }

    @Test
    void by_anotherChange_isRefused() {
        assertThrows(IllegalArgumentException.class, () -> CutOff.by(NETWORK, Place.parse("net:N1"), FollowOptions.all(),
                new BoardChange.Value("R1", "2k2")));
    }

    /** Where only resistors lie between, what separates is a bridge, as the graph library finds it. */
    @Property(tries = 300)
    void by_resistorsOnly_separatesWhereThereIsABridge(@ForAll("meshes") List<List<Integer>> mesh) {
        List<String> lines = new ArrayList<>();
        Graph<String, Integer> graph = new Multigraph<>(Integer.class);
        for (int i = 0; i < mesh.size(); i++) {
            String a = "N" + mesh.get(i).get(0);
            String b = "N" + mesh.get(i).get(1);
            lines.add("R" + i + " 1k 1=" + a + " 2=" + b);
            graph.addVertex(a);
            graph.addVertex(b);
            if (!a.equals(b)) {
                graph.addEdge(a, b, i);
            }
        }
        String from = graph.vertexSet().iterator().next();
        Set<String> joined = new ConnectivityInspector<>(graph).connectedSetOf(from);
        Set<Integer> bridges = new BiconnectivityInspector<>(graph).getBridges();
        SignalNetwork network = network(lines.toArray(String[]::new));
        for (int i = 0; i < mesh.size(); i++) {
            CutOff cut = CutOff.by(network, new Place.OfNet(from), FollowOptions.seriesOnly(), new BoardChange.Remove("R" + i));
            boolean bridge = bridges.contains(i) && joined.contains(graph.getEdgeSource(i));
            assertEquals(bridge, !cut.nets().isEmpty(), "R" + i + " of " + lines);
        }
    }

    /** What is cut off is what a trace on the board after the change does not show. */
    @Property(tries = 300)
    void by_anyChange_agreesWithTheTraceAfterIt(@ForAll("meshes") List<List<Integer>> mesh, @ForAll boolean lift) {
        List<String> lines = new ArrayList<>(List.of("TP1 - 1=N0", "IC1 74LS04 1=N0 2=N1 3=N2 4=N3 5=N4 6=N5"));
        for (int i = 0; i < mesh.size(); i++) {
            lines.add("R" + i + " 1k 1=N" + mesh.get(i).get(0) + " 2=N" + mesh.get(i).get(1));
        }
        Netlist board = Boards.of(lines.toArray(String[]::new));
        BoardChange change = lift ? new BoardChange.Lift(new Place.OfPin("R0", "1")) : new BoardChange.Remove("R0");
        FollowOptions options = FollowOptions.all();
        Netlist after = BoardState.of(board, List.of(change)).netlist();
        Set<String> expected = reached(SignalNetwork.of(board, PartBook.standard()));
        expected.removeAll(reached(SignalNetwork.of(after, PartBook.standard())));
        CutOff cut = CutOff.by(SignalNetwork.of(board, PartBook.standard()), Place.parse("TP1"), options, change);
        assertEquals(expected, cut.nets().stream().map(n -> n.id()).collect(Collectors.toSet()));
        assertTrue(cut.parts().stream().noneMatch(p -> change instanceof BoardChange.Remove && p.part().ref().equals("R0")));
    }

    private static Set<String> reached(SignalNetwork network) {
        FollowOptions options = FollowOptions.all().withLimits(1000, 1000, 1000);
        Set<String> nets = new HashSet<>();
        network.follow(Place.parse("TP1"), options).nodes().stream()
                .filter(n -> n.stops().stream().noneMatch(s -> s.kind() == StopKind.DRIVEN)).forEach(n -> nets.add(n.net().id()));
        return nets;
    }

    @Provide
    Arbitrary<List<List<Integer>>> meshes() {
        return Arbitraries.integers().between(0, 9).list().ofSize(2).list().ofMinSize(1).ofMaxSize(14);
    }

    private static BoardChange change(String text) {
        String[] words = text.strip().split(" ");
        return words[0].equals("lift") ? new BoardChange.Lift((Place.OfPin) Place.parse(words[1]))
                : new BoardChange.Remove(words[1]);
    }

    private static SignalNetwork network(String... lines) {
        return SignalNetwork.of(Boards.of(lines), PartBook.standard());
    }
}
