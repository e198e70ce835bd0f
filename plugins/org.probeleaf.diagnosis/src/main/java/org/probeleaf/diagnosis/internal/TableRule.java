// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.internal;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

import org.probeleaf.diagnosis.circuit.Cell;
import org.probeleaf.diagnosis.circuit.Level;
import org.probeleaf.diagnosis.consistency.Rule;
import org.probeleaf.diagnosis.consistency.Values;

/**
 * What several cells make of a node together, or one cell whose function is no plain gate: forwards by the cells
 * themselves; backwards, while few inputs are open, by looking at all their levels.
 */
final class TableRule implements Rule {

    /** So many open inputs are looked through. */
    private static final int MOST_OPEN = 3;

    private final int[] in;
    private final int out;
    private final Table table;

    /** The level of the node for the levels of the inputs. */
    interface Table {
        int level(int[] levels);
    }

    /**
     * A rule.
     *
     * @param in variables of the inputs, in the order that the table expects
     */
    TableRule(int[] in, int out, Table table) {
        this.in = in;
        this.out = out;
        this.table = table;
    }

    /** The level that cells make of a node: what drives for certain, else what pulls. */
    static int together(List<Cell> cells, int[] levels) {
        int active = Level.OFF;
        int pull = Level.OFF;
        int at = 0;
        for (Cell cell : cells) {
            int out = cell.logic().drive(Arrays.copyOfRange(levels, at, at + cell.in().size()));
            at += cell.in().size();
            if (cell.kind() == Cell.Kind.PULL) {
                pull = meet(pull, out);
            } else {
                active = meet(active, out);
            }
        }
        return active != Level.OFF ? active : pull != Level.OFF ? pull : Level.UNKNOWN;
    }

    private static int meet(int a, int b) {
        return a == Level.OFF || a == b ? b : b == Level.OFF ? a : Level.UNKNOWN;
    }

    @Override
    public int[] variables() {
        return IntStream.concat(Arrays.stream(in), IntStream.of(out)).distinct().toArray();
    }

    @Override
    public void apply(Values values) {
        int[] levels = new int[in.length];
        for (int i = 0; i < in.length; i++) {
            levels[i] = values.known(in[i]) ? values.value(in[i]) : Level.UNKNOWN;
        }
        int level = table.level(levels);
        if (Level.known(level)) {
            values.conclude(out, level, Arrays.stream(in).filter(values::known).distinct().toArray());
        } else if (values.known(out)) {
            backwards(values, levels);
        }
    }

    @Override
    public int undecided(Values values) {
        if (!values.known(out)) {
            return -1;
        }
        int[] levels = new int[in.length];
        int open = -1;
        int count = 0;
        for (int i = 0; i < in.length; i++) {
            levels[i] = values.known(in[i]) ? values.value(in[i]) : Level.UNKNOWN;
            if (!values.known(in[i])) {
                open = in[i];
                count++;
            }
        }
        return count <= MOST_OPEN && !Level.known(table.level(levels)) ? open : -1;
    }

    /** What an open input must be so that the output can be what it is. */
    private void backwards(Values values, int[] levels) {
        int[] open = Arrays.stream(in).filter(v -> !values.known(v)).distinct().toArray();
        if (open.length > MOST_OPEN) {
            return;
        }
        boolean[][] possible = new boolean[open.length][2];
        for (int bits = 0; bits < 1 << open.length; bits++) {
            for (int i = 0; i < in.length; i++) {
                for (int o = 0; o < open.length; o++) {
                    if (in[i] == open[o]) {
                        levels[i] = bits >> o & 1;
                    }
                }
            }
            int level = table.level(levels);
            if (!Level.known(level) || level == values.value(out)) {
                for (int o = 0; o < open.length; o++) {
                    possible[o][bits >> o & 1] = true;
                }
            }
        }
        int[] because = IntStream.concat(Arrays.stream(in).filter(values::known), IntStream.of(out)).distinct().toArray();
        for (int o = 0; o < open.length; o++) {
            if (possible[o][0] != possible[o][1]) {
                values.conclude(open[o], possible[o][1] ? 1 : 0, because);
            }
        }
    }
}
