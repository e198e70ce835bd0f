// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.start;

import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.probeleaf.workbench.session.RecentFiles;
import org.probeleaf.workbench.sheet.SheetEditor;
import org.probeleaf.workbench.sheet.SheetInput;

/** Opens files in the window. */
public final class Opening {

    private Opening() {
    }

    /** Opens a sheet or a job, or brings it to the front where it is open. */
    public static void open(IWorkbenchPage page, Path file) {
        Path whole = file.toAbsolutePath().normalize();
        try {
            IEditorPart editor = page.openEditor(new SheetInput(whole), SheetEditor.ID, true,
                    IWorkbenchPage.MATCH_INPUT | IWorkbenchPage.MATCH_ID);
            if (editor instanceof SheetEditor) {
                RecentFiles.OPENED.add(whole);
            }
        } catch (PartInitException e) {
            throw new IllegalStateException("the editor of plugin.xml cannot be made", e);
        }
    }

    /** The example that comes with the program; empty where it was left out. */
    public static Optional<Path> example() {
        String home = System.getProperty("probeleaf.home");
        if (home == null) {
            return Optional.empty();
        }
        Path sheet = Path.of(home, "examples", "tern-tl8", "tern-tl8.pdf");
        return java.nio.file.Files.isReadable(sheet) ? Optional.of(sheet) : Optional.empty();
    }
}
