// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.command;

import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.swt.graphics.Point;
import org.probeleaf.workbench.session.Selection;
import org.probeleaf.workbench.sheet.SheetEditor;
import org.probeleaf.workbench.wave.importing.PinDialog;
import org.probeleaf.workbench.wave.photo.PhotoPin;

/** Pins captures to places of the sheet: to the selected one, or to where a file is dropped. */
public final class CapturePin {

    private static final double REACH = 5;

    private CapturePin() {
    }

    static void ask(SheetEditor editor) {
        editor.session().selection().ifPresent(at -> open(editor, at, null));
    }

    /**
     * A file was dropped on a sheet.
     *
     * @param spot where, on the display
     */
    public static void drop(SheetEditor editor, Path file, Point spot) {
        if (editor.session().readOnly() || editor.session().facts().isEmpty()) {
            return;
        }
        Point on = editor.canvas().toControl(spot);
        Optional<Selection> under = editor.canvas().frameAt(on.x, on.y).map(f -> editor.session().facts().orElseThrow()
                .at(f.page(), f.toPage(on.x, on.y), REACH));
        Optional<Selection> selected = editor.session().selection();
        boolean bare = under.isEmpty() || under.get().net() == null && under.get().part() == null;
        (bare && selected.isPresent() ? selected : under).ifPresent(at -> {
            editor.session().select(at);
            open(editor, at, file);
        });
    }

    private static void open(SheetEditor editor, Selection at, Path file) {
        if (file != null && PhotoPin.isPhoto(file)) {
            PhotoPin.ask(editor.getSite().getShell(), editor.session(), at, file);
        } else {
            new PinDialog(editor.getSite().getShell(), editor.session(), at, file).open();
        }
    }
}
