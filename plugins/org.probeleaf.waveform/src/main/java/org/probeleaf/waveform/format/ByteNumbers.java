// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.format;

import java.nio.charset.StandardCharsets;

/** Reads plain decimal numbers from bytes, as fast as it goes. Numbers of up to 15 digits come out exact to the last bit. */
final class ByteNumbers {

    private static final double[] TENS = new double[23];
    private static final int EXACT_DIGITS = 15;
    private static final int MANY = 1000;

    static {
        double ten = 1;
        for (int i = 0; i < TENS.length; i++) {
            TENS[i] = ten;
            ten *= 10;
        }
    }

    private final byte decimal;
    private int end;

    ByteNumbers(char decimal) {
        this.decimal = (byte) decimal;
    }

    /** Where the last number ended: the first byte behind it. */
    int end() {
        return end;
    }

    /**
     * Reads a number.
     *
     * @return it, or NaN where no plain number stands there; {@link #end} is then {@code from}
     */
    double read(byte[] b, int from, int to) {
        int i = from;
        boolean minus = i < to && b[i] == '-';
        if (minus || i < to && b[i] == '+') {
            i++;
        }
        long mantissa = 0;
        int digits = 0;
        int seen = 0;
        int scale = 0;
        boolean point = false;
        for (; i < to; i++) {
            int d = b[i] - '0';
            if (d >= 0 && d <= 9) {
                seen++;
                if (digits < 18) {
                    mantissa = mantissa * 10 + d;
                    digits += mantissa == 0 ? 0 : 1;
                    scale -= point ? 1 : 0;
                } else {
                    digits++;
                    scale += point ? 0 : 1;
                }
            } else if (b[i] == decimal && !point) {
                point = true;
            } else {
                break;
            }
        }
        end = from;
        if (seen == 0) {
            return Double.NaN;
        }
        if (i < to && (b[i] | 32) == 'e') {
            int k = i + 1;
            boolean down = k < to && b[k] == '-';
            k += down || k < to && b[k] == '+' ? 1 : 0;
            int exponent = 0;
            int first = k;
            for (; k < to && b[k] >= '0' && b[k] <= '9'; k++) {
                exponent = Math.min(MANY, exponent * 10 + b[k] - '0');
            }
            if (k == first) {
                return Double.NaN;
            }
            scale += down ? -exponent : exponent;
            i = k;
        }
        end = i;
        if (digits <= EXACT_DIGITS && scale > -TENS.length && scale < TENS.length) {
            double v = scale < 0 ? mantissa / TENS[-scale] : mantissa * TENS[scale];
            return minus ? -v : v;
        }
        String text = new String(b, from, i - from, StandardCharsets.ISO_8859_1);
        return Double.parseDouble(decimal == ',' ? text.replace(',', '.') : text);
    }
}
