// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.symbol;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Tells which edges of a graph lie on no cycle (bridges), after R. E. Tarjan, "A note on finding the bridges of a
 * graph", Information Processing Letters 2 (1974) 160-161; written without recursion, so that long chains do not
 * exhaust the stack.
 */
final class Bridges {

    private final List<List<int[]>> edgesAt = new ArrayList<>();
    private int edgeCount;

    Bridges(int nodes) {
        for (int i = 0; i < nodes; i++) {
            edgesAt.add(new ArrayList<>(4));
        }
    }

    /** Adds an edge and returns its number, from 0. */
    int add(int from, int to) {
        edgesAt.get(from).add(new int[] {to, edgeCount});
        edgesAt.get(to).add(new int[] {from, edgeCount});
        return edgeCount++;
    }

    /** For each edge, whether it lies on no cycle. */
    boolean[] find() {
        int n = edgesAt.size();
        int[] order = new int[n];
        int[] low = new int[n];
        int[] next = new int[n];
        int[] via = new int[n];
        boolean[] bridge = new boolean[edgeCount];
        Arrays.fill(order, -1);
        int[] stack = new int[n];
        int clock = 0;
        for (int root = 0; root < n; root++) {
            if (order[root] >= 0) {
                continue;
            }
            int depth = 0;
            stack[depth++] = root;
            via[root] = -1;
            order[root] = low[root] = clock++;
            while (depth > 0) {
                int v = stack[depth - 1];
                if (next[v] < edgesAt.get(v).size()) {
                    int[] e = edgesAt.get(v).get(next[v]++);
                    if (e[1] == via[v]) {
                        continue;
                    }
                    if (order[e[0]] < 0) {
                        order[e[0]] = low[e[0]] = clock++;
                        via[e[0]] = e[1];
                        stack[depth++] = e[0];
                    } else {
                        low[v] = Math.min(low[v], order[e[0]]);
                    }
                } else {
                    depth--;
                    if (depth > 0) {
                        int parent = stack[depth - 1];
                        low[parent] = Math.min(low[parent], low[v]);
                        bridge[via[v]] = low[v] > order[parent];
                    }
                }
            }
        }
        return bridge;
    }
}
