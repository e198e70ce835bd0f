// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.format;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.probeleaf.waveform.capture.DigitalChannel;

/**
 * A variable of a VCD file while it is read: its changes. They are kept in pieces, so that a long file needs no more room
 * than its changes do.
 */
final class VcdVariable {

    private static final int LONGEST = 14;
    private static final int ROOM = 1 << 18;
    private static final int FIRST = 16;

    private final String code;
    private final boolean real;
    private final int width;
    /** The binary logarithm of the changes in a piece. */
    private final int shift;
    private final List<long[]> ticks = new ArrayList<>();
    private final List<byte[]> states = new ArrayList<>();
    private final List<double[]> values = new ArrayList<>();
    private int size;
    private Made made;

    VcdVariable(String code, boolean real, int width) {
        this.code = code;
        this.real = real;
        this.width = width;
        int fits = LONGEST;
        while (fits > 0 && (long) width << fits > ROOM) {
            fits--;
        }
        shift = fits;
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
        byte[] piece = states.get(place >> shift);
        byte fill = count < width && (given[0] == 'x' || given[0] == 'z') ? given[0] : (byte) '0';
        int from = within(place) * width;
        Arrays.fill(piece, from, from + width - count, fill);
        System.arraycopy(given, 0, piece, from + width - count, count);
        if (place > 0) {
            int before = within(place - 1) * width;
            if (Arrays.equals(states.get(place - 1 >> shift), before, before + width, piece, from, from + width)) {
                size--;
            }
        }
    }

    void value(long tick, double value) {
        int place = place(tick);
        values.get(place >> shift)[within(place)] = value;
        if (place > 0 && values.get(place - 1 >> shift)[within(place - 1)] == value) {
            size--;
        }
    }

    private int within(int place) {
        return place & (1 << shift) - 1;
    }

    /** Where a change goes: of two at one time the later counts. */
    private int place(long tick) {
        if (size > 0 && ticks.get(size - 1 >> shift)[within(size - 1)] == tick) {
            return size - 1;
        }
        int piece = size >> shift;
        int at = within(size);
        if (piece == ticks.size()) {
            // Most variables of a file change rarely: the first piece grows, the others are whole from the beginning.
            grow(piece, piece == 0 ? Math.min(FIRST, 1 << shift) : 1 << shift);
        } else if (at == ticks.get(piece).length) {
            grow(piece, at * 2);
        }
        ticks.get(piece)[at] = tick;
        return size++;
    }

    private void grow(int piece, int room) {
        if (piece == ticks.size()) {
            ticks.add(new long[room]);
            states.add(new byte[real ? 0 : room * width]);
            values.add(new double[real ? room : 0]);
        } else {
            ticks.set(piece, Arrays.copyOf(ticks.get(piece), room));
            states.set(piece, Arrays.copyOf(states.get(piece), real ? 0 : room * width));
            values.set(piece, Arrays.copyOf(values.get(piece), real ? room : 0));
        }
    }

    int size() {
        return size;
    }

    /** The changes as a channel; what was collected is let go piece by piece. */
    DigitalChannel digital(String name, double tick, long end) {
        if (made == null) {
            long[] at = new long[size];
            byte[] to = new byte[Math.multiplyExact(size, width)];
            for (int piece = 0; piece < ticks.size(); piece++) {
                int from = piece << shift;
                int n = Math.max(0, Math.min(size - from, ticks.get(piece).length));
                System.arraycopy(ticks.get(piece), 0, at, Math.min(from, size), n);
                System.arraycopy(states.get(piece), 0, to, Math.min(from, size) * width, n * width);
                ticks.set(piece, null);
                states.set(piece, null);
            }
            made = new Made(at, to);
        }
        return new DigitalChannel(name, width, tick, made.ticks, made.states, end);
    }

    double[] times(double tick) {
        double[] times = new double[size];
        for (int i = 0; i < size; i++) {
            times[i] = ticks.get(i >> shift)[within(i)] * tick;
        }
        return times;
    }

    double[] values() {
        double[] all = new double[size];
        for (int i = 0; i < size; i++) {
            all[i] = values.get(i >> shift)[within(i)];
        }
        return all;
    }

    /** All changes in one; several names may stand for the same variable. */
    private record Made(long[] ticks, byte[] states) {
    }
}
