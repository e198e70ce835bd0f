// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.command;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.probeleaf.workbench.correction.Task;
import org.probeleaf.workbench.sheet.SheetEditor;

/** Takes a {@link Task} in hand on the sheet in front. Plugin.xml names it after the colon of this class. */
public final class CorrectHandler extends AbstractHandler implements IExecutableExtension {

    private Task task;

    @Override
    public void setInitializationData(IConfigurationElement config, String property, Object data) {
        task = Task.valueOf(String.valueOf(data));
    }

    @Override
    public Object execute(ExecutionEvent event) {
        SheetEditor editor = SheetHandler.front();
        if (editor != null) {
            // What was done to the board mostly is at what is selected; a correction is pointed at with care.
            editor.correcting().start(task, task.onBoard() ? editor.correcting().fitting(task,
                    editor.session().selection().orElse(null)) : null);
        }
        return null;
    }

    @Override
    public boolean isEnabled() {
        SheetEditor editor = SheetHandler.front();
        return editor != null && editor.correcting().possible();
    }
}
