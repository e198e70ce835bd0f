// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.ink;

/** Sets of small whole numbers that are merged pair by pair (union-find with path halving). */
public final class Groups {

    private int[] parent;

    /** @param size numbers 0 to {@code size - 1}, each in a set of its own */
    public Groups(int size) {
        parent = new int[size];
        for (int i = 0; i < size; i++) {
            parent[i] = i;
        }
    }

    /** The number that stands for the set that holds {@code i}. */
    public int find(int i) {
        int at = i;
        while (parent[at] != at) {
            parent[at] = parent[parent[at]];
            at = parent[at];
        }
        return at;
    }

    /** Merges the sets that hold {@code a} and {@code b}; the lower standing number stays. */
    public void join(int a, int b) {
        int ra = find(a);
        int rb = find(b);
        if (ra != rb) {
            parent[Math.max(ra, rb)] = Math.min(ra, rb);
        }
    }

    public boolean joined(int a, int b) {
        return find(a) == find(b);
    }
}
