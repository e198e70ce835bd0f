// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave.importing;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.swt.widgets.Shell;
import org.probeleaf.photo.reading.PhotoReader;
import org.probeleaf.workbench.session.Selection;
import org.probeleaf.workbench.session.SheetSession;

/** Where photographs of a screen go on from the dialog for captures; they need other questions than a text. */
public final class PictureImport {

    /** Asks what a photograph needs and pins it; called on the display thread. */
    @FunctionalInterface
    public interface Asking {
        void ask(Shell parent, SheetSession session, Selection at, Path file);
    }

    private static Asking asking;

    private PictureImport() {
    }

    /** Says who asks for photographs. */
    public static void use(Asking how) {
        asking = how;
    }

    static boolean possible() {
        return asking != null;
    }

    /** Whether a file is a picture, by its first bytes. */
    static boolean picture(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            return PhotoReader.isPhoto(in.readNBytes(16));
        } catch (IOException e) {
            return false;
        }
    }

    static void ask(Shell parent, SheetSession session, Selection at, Path file) {
        asking.ask(parent, session, at, file);
    }
}
