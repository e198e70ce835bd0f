// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.format;

import java.util.Arrays;

import org.probeleaf.waveform.capture.DigitalChannel;

/** A variable of a VCD file while it is read: its changes. */
final class VcdVariable {

    private final String code;
    private final boolean real;
    private final int width;
    private long[] ticks = new long[16];
    private byte[] states;
    private double[] values;
    private int size;

    VcdVariable(String code, boolean real, int width) {
        this.code = code;
        this.real = real;
        this.width = width;
        states = new byte[real ? 0 : 16 * width];
        values = new double[real ? 16 : 0];
    }

    boolean real() {
        return real;
    }

    int width() {
        return width;
    }

    String code() {
        return code;
    }

    /**
     * Notes a state.
     *
     * @param given the states of the lines; where there are fewer than lines, the first extends to the left: 0 and 1 by
     *              0, x and z by themselves (IEEE 1364-2001, 18.2.1; clause from memory)
     */
    void state(long tick, byte[] given, int count) {
        int place = place(tick);
        byte fill = count < width && (given[0] == 'x' || given[0] == 'z') ? given[0] : (byte) '0';
        int from = place * width;
        Arrays.fill(states, from, from + width - count, fill);
        System.arraycopy(given, 0, states, from + width - count, count);
        if (place > 0 && Arrays.equals(states, from - width, from, states, from, from + width)) {
            size--;
        }
    }

    void value(long tick, double value) {
        int place = place(tick);
        values[place] = value;
        if (place > 0 && values[place - 1] == value) {
            size--;
        }
    }

    /** Where a change goes: of two at one time the later counts. */
    private int place(long tick) {
        if (size > 0 && ticks[size - 1] == tick) {
            return size - 1;
        }
        if (size == ticks.length) {
            ticks = Arrays.copyOf(ticks, size * 2);
            states = real ? states : Arrays.copyOf(states, size * 2 * width);
            values = real ? Arrays.copyOf(values, size * 2) : values;
        }
        ticks[size] = tick;
        return size++;
    }

    int size() {
        return size;
    }

    DigitalChannel digital(String name, double tick, long end) {
        return new DigitalChannel(name, width, tick, Arrays.copyOf(ticks, size), Arrays.copyOf(states, size * width), end);
    }

    double[] times(double tick) {
        double[] times = new double[size];
        for (int i = 0; i < size; i++) {
            times[i] = ticks[i] * tick;
        }
        return times;
    }

    double[] values() {
        return Arrays.copyOf(values, size);
    }
}
