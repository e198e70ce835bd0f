// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.command;

import java.nio.file.Path;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.probeleaf.workbench.sheet.SheetEditor;

/** Asks for a file and pins it as a capture to the selected place. */
final class CapturePin {

    private CapturePin() {
    }

    static void ask(SheetEditor editor) {
        FileDialog dialog = new FileDialog(editor.getSite().getShell(), SWT.OPEN);
        dialog.setText("Pin a capture to " + editor.session().selection().orElseThrow().place().text());
        editor.session().file().map(Path::getParent).ifPresent(folder -> dialog.setFilterPath(folder.toString()));
        dialog.setFilterNames(new String[] {"Captures", "All files"});
        dialog.setFilterExtensions(new String[] {"*.csv;*.txt;*.tsv;*.dat;*.vcd;*.wav;*.CSV;*.TXT;*.VCD;*.WAV", "*"});
        String name = dialog.open();
        if (name != null) {
            editor.session().pinCapture(Path.of(name));
        }
    }
}
