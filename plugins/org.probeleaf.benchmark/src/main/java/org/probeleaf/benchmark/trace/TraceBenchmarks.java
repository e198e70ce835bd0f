// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.trace;

import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;

import org.jgrapht.Graph;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.DirectedMultigraph;
import org.jgrapht.traverse.BreadthFirstIterator;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.trace.NetTrace;
import org.probeleaf.trace.TracedPin;
import org.probeleaf.trace.follow.FollowOptions;
import org.probeleaf.trace.follow.Followed;
import org.probeleaf.trace.follow.SignalNetwork;
import org.probeleaf.trace.follow.Step;

/** The measurements, run by {@link TraceCommand}. Nets are asked by id, so that finding a place takes no part. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class TraceBenchmarks {

    static final int PARTS = 3000;
    private static final int EVERYTHING = 1_000_000;

    private Netlist board;
    private SignalNetwork network;
    private Place largest;
    private Place largestSignal;
    private Graph<String, DefaultEdge> plain;

    /** Makes the board, its network, and a plain graph with the same nets and ways. */
    @Setup
    public void make() {
        board = MadeBoard.of(PARTS, 1);
        network = SignalNetwork.of(board, PartBook.standard());
        Comparator<Net> bySize = Comparator.comparing(n -> network.signals().pinsOn(n.id()).size());
        largest = place(board.nets().stream().max(bySize).orElseThrow());
        largestSignal = place(board.nets().stream().filter(n -> !network.kind(n.id()).isSupply()).max(bySize).orElseThrow());
        plain = new DirectedMultigraph<>(DefaultEdge.class);
        board.nets().forEach(n -> plain.addVertex(n.id()));
        for (Net net : board.nets()) {
            for (Step step : network.waysFrom(net.id())) {
                if (!network.kind(step.fromNet()).isSupply()) {
                    plain.addEdge(step.fromNet(), step.toNet());
                }
            }
        }
    }

    /** Reads the netlist into a network; the part book is at hand. */
    @Benchmark
    public SignalNetwork buildNetwork() {
        return SignalNetwork.of(board, PartBook.standard());
    }

    /** All pins of the largest net, ground, with their directions. */
    @Benchmark
    public NetTrace traceLargestNet() {
        return network.signals().trace(largest);
    }

    /** All loads of the largest net that carries a signal. */
    @Benchmark
    public List<TracedPin> allLoads() {
        return network.signals().trace(largestSignal).loads();
    }

    /** The largest signal followed through everything with the usual limits. */
    @Benchmark
    public Followed followLargest() {
        return network.follow(largestSignal, FollowOptions.all());
    }

    /** The largest signal followed through everything as far as it goes. */
    @Benchmark
    public Followed followLargestWithoutLimits() {
        return network.follow(largestSignal, FollowOptions.all().withEnables(true).withLimits(EVERYTHING, EVERYTHING,
                EVERYTHING));
    }

    /** The same graph walked by the library's own iterator, without reasons or ends. */
    @Benchmark
    public int plainBreadthFirst() {
        int count = 0;
        for (BreadthFirstIterator<String, DefaultEdge> i = new BreadthFirstIterator<>(plain,
                ((Place.OfNet) largestSignal).net()); i.hasNext(); i.next()) {
            count++;
        }
        return count;
    }

    /** What was made, for the head of the table. */
    String what() {
        make();
        Followed all = followLargestWithoutLimits();
        return String.format("%d parts, %d pins, %d nets, %d ways; %s has %d pins, %s has %d and leads to %d of %d nets", PARTS,
                board.parts().stream().mapToInt(p -> p.pins().size()).sum(), board.nets().size(),
                plain.edgeSet().size(), largest.text(), traceLargestNet().pins().size(), largestSignal.text(),
                network.signals().trace(largestSignal).pins().size(),
                all.nodes().stream().map(n -> n.net().id()).distinct().count(), plainBreadthFirst());
    }

    private static Place place(Net net) {
        return new Place.OfNet(net.id());
    }
}
