// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.format;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/** All values of one channel in one row, as instruments answer a query: it is read as if each stood in a row of its own. */
final class OneRow {

    private static final int LEAST = 9;

    private OneRow() {
    }

    /**
     * The delimiter of a text that has only one row, of plain numbers.
     *
     * @param head  its first bytes
     * @param whole whether they are all
     * @return 0 where it is another text
     */
    static byte delimiter(byte[] head, boolean whole) {
        int end = head.length;
        while (whole && end > 0 && head[end - 1] <= ' ') {
            end--;
        }
        int commas = 0;
        int semicolons = 0;
        for (int i = 0; i < end; i++) {
            byte b = head[i];
            boolean plain = b >= '0' && b <= '9' || b == '.' || b == '-' || b == '+' || b == 'e' || b == 'E' || b == ' ';
            commas += b == ',' ? 1 : 0;
            semicolons += b == ';' ? 1 : 0;
            if (!plain && b != ',' && b != ';') {
                return 0;
            }
        }
        return semicolons >= LEAST ? (byte) ';' : commas >= LEAST ? (byte) ',' : 0;
    }

    /** Turns delimiters into line ends. */
    static void turn(byte[] b, int to, byte delimiter) {
        for (int i = 0; i < to; i++) {
            b[i] = b[i] == delimiter ? (byte) '\n' : b[i];
        }
    }

    /** A stream with its delimiters turned. */
    static InputStream turned(InputStream in, byte delimiter) {
        return new FilterInputStream(in) {
            @Override
            public int read(byte[] b, int off, int len) throws IOException {
                int got = super.read(b, off, len);
                for (int i = off; i < off + got; i++) {
                    b[i] = b[i] == delimiter ? (byte) '\n' : b[i];
                }
                return got;
            }
        };
    }
}
