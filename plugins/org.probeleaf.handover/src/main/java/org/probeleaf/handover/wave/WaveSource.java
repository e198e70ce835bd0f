// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover.wave;

import java.io.ByteArrayInputStream;
import java.io.IOException;

import org.probeleaf.job.mark.CaptureMark;
import org.probeleaf.waveform.format.CaptureReader;
import org.probeleaf.waveform.format.ImportWords;
import org.probeleaf.waveform.format.Imported;

/** Reads the file of a capture. Files of numbers are read by {@link #FILES}; who can read more gives a source of their own. */
@FunctionalInterface
public interface WaveSource {

    /** Text, VCD, WAV and instrument blocks, as the mark says that they are to be read. */
    WaveSource FILES = (mark, bytes) -> CaptureReader.read(new ByteArrayInputStream(bytes), ImportWords.parse(mark.readAs()));

    /**
     * Reads a capture.
     *
     * @throws IOException              with what is wrong, for a person
     * @throws IllegalArgumentException the same, where the mark says what cannot be
     */
    Imported read(CaptureMark mark, byte[] bytes) throws IOException;
}
