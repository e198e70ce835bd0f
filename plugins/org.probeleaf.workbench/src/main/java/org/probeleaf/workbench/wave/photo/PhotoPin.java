// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave.photo;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.widgets.Shell;
import org.probeleaf.job.change.ReadCaptureAs;
import org.probeleaf.job.mark.CaptureMark;
import org.probeleaf.photo.picture.PictureReader;
import org.probeleaf.photo.reading.PhotoOptions;
import org.probeleaf.photo.reading.PhotoReader;
import org.probeleaf.photo.reading.PhotoWords;
import org.probeleaf.waveform.format.CaptureException;
import org.probeleaf.workbench.session.Selection;
import org.probeleaf.workbench.session.SheetSession;

/** Pins photographs of screens, and reads pinned ones otherwise. Called on the display thread. */
public final class PhotoPin {

    private static final int HEAD = 16;

    private PhotoPin() {
    }

    /** Whether a file is a photograph by its first bytes; not where it cannot be read. */
    public static boolean isPhoto(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            return PhotoReader.isPhoto(in.readNBytes(HEAD));
        } catch (IOException e) {
            return false;
        }
    }

    /**
     * Asks how a photograph is to be read, and pins it to a place.
     *
     * @return whether it was pinned
     */
    public static boolean ask(Shell shell, SheetSession session, Selection at, Path file) {
        String name = file.getFileName().toString();
        try {
            byte[] bytes = Files.readAllBytes(file);
            PhotoDialog dialog = new PhotoDialog(shell, name + " at " + at.place().text(), "Pin", PictureReader.read(bytes),
                    PhotoOptions.none());
            if (dialog.open() == Window.OK) {
                session.captures().pin(name, bytes, PhotoWords.of(dialog.options()), dialog.reading().imported(), at);
                return true;
            }
        } catch (CaptureException e) {
            tell(shell, name + ": " + e.getMessage());
        } catch (IOException e) {
            tell(shell, name + " cannot be read; check the name");
        }
        return false;
    }

    /**
     * Asks how a photograph that is pinned is to be read from now on.
     *
     * @param bytes of its file, as the job keeps it
     */
    public static void again(Shell shell, SheetSession session, CaptureMark mark, byte[] bytes) {
        try {
            PhotoDialog dialog = new PhotoDialog(shell, mark.fileName() + " at " + mark.place().text(), "Read so",
                    PictureReader.read(bytes), PhotoWords.are(mark.readAs()) ? PhotoWords.parse(mark.readAs())
                            : PhotoOptions.none());
            if (dialog.open() == Window.OK && !PhotoWords.of(dialog.options()).equals(mark.readAs())) {
                session.apply(new ReadCaptureAs(mark.id(), PhotoWords.of(dialog.options()), Instant.now()));
            }
        } catch (CaptureException | IllegalArgumentException e) {
            tell(shell, mark.fileName() + ": " + e.getMessage());
        }
    }

    private static void tell(Shell shell, String sentence) {
        MessageDialog.openError(shell, "Pin a photograph", sentence);
    }
}
