// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;

/** The captures that lie beside the sheet are those that are made. */
class StrobeCaptureTest {

    private static final Path FOLDER = Path.of("..", "tern-tl8");

    @Test
    void files_areAsMade() throws IOException {
        assertEquals(StrobeCapture.text(false), Files.readString(FOLDER.resolve("inp-strobe.csv")));
        assertEquals(StrobeCapture.text(true), Files.readString(FOLDER.resolve("inp-strobe-good.csv")));
    }
}
