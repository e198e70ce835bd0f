// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover.wave;

import java.io.IOException;

import org.probeleaf.job.mark.CaptureMark;
import org.probeleaf.photo.reading.CaptureFile;
import org.probeleaf.waveform.format.Imported;

/** Reads the file of a capture. */
@FunctionalInterface
public interface WaveSource {

    /** Text, VCD, WAV, instrument blocks and photographs of screens, as the mark says that they are to be read. */
    WaveSource FILES = (mark, bytes) -> CaptureFile.read(bytes, mark.readAs());

    /**
     * Reads a capture.
     *
     * @throws IOException              with what is wrong, for a person
     * @throws IllegalArgumentException the same, where the mark says what cannot be
     */
    Imported read(CaptureMark mark, byte[] bytes) throws IOException;
}
