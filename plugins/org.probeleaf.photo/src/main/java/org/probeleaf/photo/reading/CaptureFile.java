// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo.reading;

import java.io.ByteArrayInputStream;
import java.io.IOException;

import org.probeleaf.waveform.format.CaptureReader;
import org.probeleaf.waveform.format.ImportWords;
import org.probeleaf.waveform.format.Imported;

/** Reads a capture of any kind, photographs among them, as a job keeps it: its bytes, and how they are read. */
public final class CaptureFile {

    private CaptureFile() {
    }

    /**
     * Reads a file.
     *
     * @param bytes  of the file
     * @param readAs {@link PhotoWords} of a photograph, {@link ImportWords} of any other; empty where nothing was said
     * @throws org.probeleaf.waveform.format.CaptureException where it is no capture that can be read; one line says why
     * @throws IllegalArgumentException where {@code readAs} is neither; one sentence says why
     */
    public static Imported read(byte[] bytes, String readAs) throws IOException {
        if (PhotoReader.isPhoto(bytes)) {
            return PhotoReader.read(bytes, readAs.isBlank() ? PhotoOptions.none() : PhotoWords.parse(readAs)).imported();
        }
        return CaptureReader.read(new ByteArrayInputStream(bytes), ImportWords.parse(readAs));
    }
}
