// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.format;

import java.io.IOException;

/** A file that cannot be read as a capture; the message is one line that says where, what is wrong and what was expected. */
public final class CaptureException extends IOException {

    private static final long serialVersionUID = 1L;

    public CaptureException(String line) {
        super(line);
    }

    /** At a row of a text, counted from 1. */
    static CaptureException row(long row, String what) {
        return new CaptureException("row " + row + ": " + what);
    }
}
