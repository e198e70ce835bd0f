// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.capture;

import java.util.ArrayList;
import java.util.List;

/**
 * A trace of logic states: for each change its time and the new states of all its lines. Changes are in the order of time.
 * Held compactly: eight bytes and a byte for each line, for each change.
 */
public final class DigitalChannel {

    private final String name;
    private final int width;
    private final double tick;
    private final long[] ticks;
    private final byte[] states;
    private final long end;

    /**
     * @param name   as in the file, with its scopes ({@code top.data})
     * @param width  how many lines it has, 1 for a single one
     * @param tick   the unit of the times, in seconds
     * @param ticks  time of each change; never falling
     * @param states {@code 0}, {@code 1}, {@code x} or {@code z} of each line after each change, the most significant
     *               first
     * @param end    when the capture ends, in ticks; at least the last of {@code ticks}
     */
    public DigitalChannel(String name, int width, double tick, long[] ticks, byte[] states, long end) {
        if (states.length != (long) ticks.length * width) {
            throw new IllegalArgumentException("there must be " + width + " states for each change");
        }
        this.name = name;
        this.width = width;
        this.tick = tick;
        this.ticks = ticks;
        this.states = states;
        this.end = end;
    }

    public String name() {
        return name;
    }

    /** How many lines it has. */
    public int width() {
        return width;
    }

    /** How many changes there are, the first state counted. */
    public int size() {
        return ticks.length;
    }

    /** The time of a change, in seconds. */
    public double at(int change) {
        return ticks[change] * tick;
    }

    /** The smallest time that can be told apart, in seconds. */
    public double tick() {
        return tick;
    }

    /** When the capture ends, in seconds. */
    public double end() {
        return end * tick;
    }

    /** The states after a change, the most significant line first: {@code 0101}, {@code zz01}, {@code x}. */
    public String state(int change) {
        StringBuilder text = new StringBuilder(width);
        for (int line = 0; line < width; line++) {
            text.append(state(change, line));
        }
        return text.toString();
    }

    /** The state of one line after a change: {@code 0}, {@code 1}, {@code x} or {@code z}; line 0 is the most significant. */
    public char state(int change, int line) {
        return (char) states[change * width + line];
    }

    /**
     * The lines as channels of their own, the least significant last; {@code data[7]} down to {@code data[0]}. A channel
     * of one line is its own.
     */
    public List<DigitalChannel> lines() {
        if (width == 1) {
            return List.of(this);
        }
        List<DigitalChannel> lines = new ArrayList<>();
        for (int line = 0; line < width; line++) {
            lines.add(line(line));
        }
        return lines;
    }

    private DigitalChannel line(int line) {
        long[] at = new long[ticks.length];
        byte[] to = new byte[ticks.length];
        int n = 0;
        for (int i = 0; i < ticks.length; i++) {
            byte state = states[i * width + line];
            if (n == 0 || to[n - 1] != state) {
                at[n] = ticks[i];
                to[n++] = state;
            }
        }
        return new DigitalChannel(name + "[" + (width - 1 - line) + "]", 1, tick, java.util.Arrays.copyOf(at, n),
                java.util.Arrays.copyOf(to, n), end);
    }
}
