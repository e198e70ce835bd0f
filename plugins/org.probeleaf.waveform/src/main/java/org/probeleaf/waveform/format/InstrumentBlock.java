// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.format;

import java.util.Arrays;

/**
 * A block of bytes as instruments send it (IEEE 488.2, arbitrary block data, 7.7.6 and 8.7.9; clauses from memory):
 * {@code #}, the number of digits, the length in so many digits, the bytes; or {@code #0}, the bytes, and a line end.
 */
final class InstrumentBlock {

    private InstrumentBlock() {
    }

    /** Whether bytes begin like a block. */
    static boolean begins(byte[] b) {
        return b.length >= 2 && b[0] == '#' && b[1] >= '0' && b[1] <= '9'
                && (b[1] == '0' || b.length > 2 && b[2] >= '0' && b[2] <= '9');
    }

    /**
     * The bytes inside.
     *
     * @throws CaptureException naming the byte where something else stands than was expected
     */
    static byte[] payload(byte[] b) throws CaptureException {
        if (b.length < 2 || b[0] != '#' || b[1] < '0' || b[1] > '9') {
            throw new CaptureException("byte " + (b.length > 0 && b[0] == '#' ? 1 : 0)
                    + ": a block of an instrument begins with # and a digit, which was expected");
        }
        int digits = b[1] - '0';
        if (digits == 0) {
            int end = b.length > 2 && b[b.length - 1] == '\n' ? b.length - 1 : b.length;
            return Arrays.copyOfRange(b, 2, end);
        }
        long length = 0;
        for (int i = 2; i < 2 + digits; i++) {
            if (i >= b.length || b[i] < '0' || b[i] > '9') {
                throw new CaptureException("byte " + i + ": " + digits + " digits of a length were expected");
            }
            length = length * 10 + b[i] - '0';
        }
        int from = 2 + digits;
        if (b.length - from < length) {
            throw new CaptureException("byte " + b.length + ": the block ends after " + (b.length - from) + " bytes, where "
                    + length + " were expected");
        }
        return Arrays.copyOfRange(b, from, from + (int) length);
    }
}
