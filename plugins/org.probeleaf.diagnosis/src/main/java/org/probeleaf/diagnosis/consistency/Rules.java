// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.consistency;

import java.util.Arrays;
import java.util.stream.IntStream;

/** Rules of common components. */
public final class Rules {

    private Rules() {
    }

    /** out = a + b, in every direction. */
    public static Rule sum(int a, int b, int out) {
        return rule(values -> {
            if (values.known(a) && values.known(b)) {
                values.conclude(out, values.value(a) + values.value(b), a, b);
            }
            if (values.known(out) && values.known(a)) {
                values.conclude(b, values.value(out) - values.value(a), out, a);
            }
            if (values.known(out) && values.known(b)) {
                values.conclude(a, values.value(out) - values.value(b), out, b);
            }
        }, a, b, out);
    }

    /** out = a b; backwards where it divides without rest. */
    public static Rule product(int a, int b, int out) {
        return rule(values -> {
            if (values.known(a) && values.known(b)) {
                values.conclude(out, values.value(a) * values.value(b), a, b);
            }
            divide(values, out, a, b);
            divide(values, out, b, a);
        }, a, b, out);
    }

    private static void divide(Values values, int out, int by, int result) {
        if (values.known(out) && values.known(by) && values.value(by) != 0 && values.value(out) % values.value(by) == 0) {
            values.conclude(result, values.value(out) / values.value(by), out, by);
        }
    }

    /** out follows in, or is its opposite; levels 0 and 1. */
    public static Rule follow(int in, int out, boolean inverted) {
        return rule(values -> {
            if (values.known(in)) {
                values.conclude(out, turned(values.value(in), inverted), in);
            }
            if (values.known(out)) {
                values.conclude(in, turned(values.value(out), inverted), out);
            }
        }, in, out);
    }

    /**
     * A gate whose output is settled by one input: AND and NAND by a low, OR and NOR by a high.
     *
     * @param settling the level at one input that settles the output
     * @param then     the output's level then; the other one where no input settles it
     */
    public static Rule settled(int[] in, int out, int settling, int then) {
        return new SettledRule(in.clone(), out, settling, then);
    }

    public static Rule and(int out, int... in) {
        return settled(in, out, 0, 0);
    }

    public static Rule nand(int out, int... in) {
        return settled(in, out, 0, 1);
    }

    public static Rule or(int out, int... in) {
        return settled(in, out, 1, 1);
    }

    public static Rule nor(int out, int... in) {
        return settled(in, out, 1, 0);
    }

    /** out is 1 where an odd number of inputs is; with {@code inverted}, where an even number is. */
    public static Rule parity(int[] in, int out, boolean inverted) {
        return new ParityRule(in.clone(), out, IntStream.concat(Arrays.stream(in), IntStream.of(out)).toArray(), inverted);
    }

    public static Rule xor(int out, int... in) {
        return parity(in, out, false);
    }

    static int turned(int level, boolean inverted) {
        return inverted ? 1 - level : level;
    }

    private static Rule rule(java.util.function.Consumer<Values> apply, int... variables) {
        return new Rule() {
            @Override
            public int[] variables() {
                return variables;
            }

            @Override
            public void apply(Values values) {
                apply.accept(values);
            }
        };
    }

    private record SettledRule(int[] in, int out, int settling, int then) implements Rule {

        @Override
        public int[] variables() {
            return IntStream.concat(Arrays.stream(in), IntStream.of(out)).toArray();
        }

        @Override
        public void apply(Values values) {
            int open = -1;
            int count = 0;
            for (int i : in) {
                if (!values.known(i)) {
                    open = i;
                    count++;
                } else if (values.value(i) == settling) {
                    values.conclude(out, then, i);
                    return;
                }
            }
            if (count == 0) {
                values.conclude(out, 1 - then, in);
            } else if (values.known(out)) {
                if (values.value(out) != then) {
                    for (int i : in) {
                        if (!values.known(i)) {
                            values.conclude(i, 1 - settling, out);
                        }
                    }
                } else if (count == 1) {
                    int last = open;
                    int[] because = IntStream.concat(Arrays.stream(in).filter(i -> i != last), IntStream.of(out))
                            .toArray();
                    values.conclude(last, settling, because);
                }
            }
        }

        @Override
        public int undecided(Values values) {
            if (!values.known(out) || values.value(out) != then) {
                return -1;
            }
            int open = -1;
            for (int i : in) {
                if (!values.known(i)) {
                    open = i;
                } else if (values.value(i) == settling) {
                    return -1;
                }
            }
            return open;
        }
    }

    private record ParityRule(int[] in, int out, int[] all, boolean inverted) implements Rule {

        @Override
        public int[] variables() {
            return all;
        }

        @Override
        public void apply(Values values) {
            int open = -1;
            int sum = inverted ? 1 : 0;
            for (int v : all) {
                if (values.known(v)) {
                    sum ^= values.value(v);
                } else if (open >= 0) {
                    return;
                } else {
                    open = v;
                }
            }
            int last = open < 0 ? out : open;
            int level = open < 0 ? sum ^ values.value(out) : sum;
            values.conclude(last, level, Arrays.stream(all).filter(v -> v != last).toArray());
        }

        @Override
        public int undecided(Values values) {
            if (values.known(out)) {
                for (int i : in) {
                    if (!values.known(i)) {
                        return i;
                    }
                }
            }
            return -1;
        }
    }
}
