// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.command;

import java.nio.file.Path;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.HandlerUtil;
import org.probeleaf.workbench.start.Opening;

/** Asks for a sheet or a job and opens it. */
public final class OpenHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) {
        ask(HandlerUtil.getActiveWorkbenchWindow(event), "*.pdf;*.PDF;*.png;*.jpg;*.jpeg;*.tif;*.tiff;*.probeleaf");
        return null;
    }

    /** Asks for a file whose name fits {@code pattern} and opens it. */
    private static void ask(IWorkbenchWindow window, String pattern) {
        FileDialog dialog = new FileDialog(window.getShell(), SWT.OPEN);
        dialog.setText("Open a sheet or a job");
        dialog.setFilterExtensions(new String[] {pattern, "*"});
        dialog.setFilterNames(new String[] {"Sheets and jobs", "All files"});
        String name = dialog.open();
        if (name != null) {
            Opening.open(window.getActivePage(), Path.of(name));
        }
    }
}
