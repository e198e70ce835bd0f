// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.circuit;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

import org.probeleaf.schematic.partbook.PartClass;

/**
 * Parts with two ends. One between two signals passes on from the end that is nearer to what drives; a resistor from a
 * rail pulls; the rest only loads.
 */
final class SeriesParts {

    private static final int FAR = Integer.MAX_VALUE;

    /** What a supply may come through. */
    private static final Set<PartClass> FEEDS = EnumSet.of(PartClass.LINK, PartClass.PROTECTION, PartClass.INDUCTOR,
            PartClass.FILTER, PartClass.DIODE, PartClass.SWITCH);
    private static final Set<PartClass> PULLS = EnumSet.of(PartClass.RESISTOR, PartClass.INDUCTOR, PartClass.LINK,
            PartClass.PROTECTION, PartClass.NETWORK);

    private final List<Ends> parts = new ArrayList<>();
    private final List<List<Ends>> at = new ArrayList<>();
    private final boolean[] rail;
    /** How many parts in series lie between a node and what drives it. */
    private final int[] away;

    SeriesParts(int nodes, boolean[] rail) {
        this.rail = rail;
        this.away = new int[nodes];
        for (int n = 0; n < nodes; n++) {
            at.add(new ArrayList<>());
            away[n] = FAR;
        }
    }

    private record Ends(int part, PartClass kind, Terminal a, Terminal b) {
    }

    void add(int part, PartClass kind, Terminal a, Terminal b) {
        if (a.node() != b.node()) {
            Ends ends = new Ends(part, kind, a, b);
            parts.add(ends);
            at.get(a.node()).add(ends);
            at.get(b.node()).add(ends);
        }
    }

    /** Something drives the node. */
    void driven(int node) {
        away[node] = 0;
    }

    boolean isDriven(int node) {
        return away[node] != FAR;
    }

    /** Finds what is driven through parts in series. */
    void spread() {
        Deque<Integer> next = new ArrayDeque<>();
        for (int n = 0; n < away.length; n++) {
            if (away[n] != FAR) {
                next.add(n);
            }
        }
        while (!next.isEmpty()) {
            int from = next.poll();
            for (Ends part : at.get(from)) {
                int to = part.a().node() == from ? part.b().node() : part.a().node();
                if (passes(part, from, to) && away[to] > away[from] + 1) {
                    away[to] = away[from] + 1;
                    next.add(to);
                }
            }
        }
    }

    private boolean passes(Ends part, int from, int to) {
        return !rail[from] && (!rail[to] || FEEDS.contains(part.kind()));
    }

    /** The cells, numbered from the given one. */
    List<Cell> cells(int first) {
        List<Cell> cells = new ArrayList<>();
        for (Ends part : parts) {
            Terminal a = part.a();
            Terminal b = part.b();
            if (rail[a.node()] != rail[b.node()] && PULLS.contains(part.kind()) && !feeds(part)) {
                Terminal in = rail[a.node()] ? a : b;
                cells.add(cell(first + cells.size(), part, in, in == a ? b : a, Cell.Kind.PULL));
            } else if (away[a.node()] != away[b.node()]) {
                Terminal in = away[a.node()] < away[b.node()] ? a : b;
                Terminal out = in == a ? b : a;
                if (passes(part, in.node(), out.node()) && away[in.node()] != FAR) {
                    cells.add(cell(first + cells.size(), part, in, out, Cell.Kind.SERIES));
                }
            }
        }
        return cells;
    }

    private boolean feeds(Ends part) {
        int node = rail[part.a().node()] ? part.a().node() : part.b().node();
        int other = node == part.a().node() ? part.b().node() : part.a().node();
        return FEEDS.contains(part.kind()) && away[other] < away[node];
    }

    private static Cell cell(int index, Ends part, Terminal in, Terminal out, Cell.Kind kind) {
        boolean levels = part.kind() != PartClass.CAPACITOR && part.kind() != PartClass.CRYSTAL;
        return new Cell(index, part.part(), out, List.of(in), List.of(), levels ? l -> l[0] : CellLogic.UNKNOWN,
                levels ? "BUF" : null, kind, true);
    }
}
