// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.format;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** The words of a VCD file, which white space keeps apart, with the line that each stands in. The file is streamed. */
final class VcdTokens {

    private static final int LONGEST = 1 << 20;

    private final InputStream in;
    private final byte[] buffer = new byte[1 << 16];
    private int at;
    private int filled;
    private long line = 1;
    private long tokenLine = 1;
    private byte[] token = new byte[256];
    private int length;

    VcdTokens(InputStream in) {
        this.in = in;
    }

    private int read() throws IOException {
        if (at == filled) {
            filled = in.read(buffer);
            at = 0;
            if (filled <= 0) {
                filled = 0;
                return -1;
            }
        }
        return buffer[at++];
    }

    /** Goes to the next word; false at the end of the file. */
    boolean next() throws IOException {
        int c = read();
        while (c >= 0 && c <= ' ') {
            line += c == '\n' ? 1 : 0;
            c = read();
        }
        length = 0;
        tokenLine = line;
        while (c > ' ' || c < -1) {
            if (length == token.length) {
                if (length >= LONGEST) {
                    throw CaptureException.row(line, "a word is longer than a million letters, where a value was expected");
                }
                token = java.util.Arrays.copyOf(token, length * 2);
            }
            token[length++] = (byte) c;
            c = read();
        }
        line += c == '\n' ? 1 : 0;
        return length > 0;
    }

    /** The line of the word, counted from 1. */
    long line() {
        return tokenLine;
    }

    int length() {
        return length;
    }

    char at(int index) {
        return (char) (token[index] & 0xff);
    }

    /** The word from a letter on. */
    String text(int from) {
        return new String(token, from, length - from, StandardCharsets.ISO_8859_1);
    }
}
