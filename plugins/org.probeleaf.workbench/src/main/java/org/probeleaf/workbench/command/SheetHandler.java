// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.command;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.probeleaf.workbench.sheet.SheetEditor;

/** Does a {@link SheetAction} to the sheet in front. */
public final class SheetHandler extends AbstractHandler implements IExecutableExtension {

    private SheetAction action;

    @Override
    public void setInitializationData(IConfigurationElement config, String property, Object data) {
        action = SheetAction.valueOf(String.valueOf(data));
    }

    @Override
    public Object execute(ExecutionEvent event) {
        SheetEditor editor = front();
        if (editor != null && action.enabledFor(editor)) {
            action.run(editor);
        }
        return null;
    }

    @Override
    public boolean isEnabled() {
        SheetEditor editor = front();
        return editor != null && action.enabledFor(editor);
    }

    /** The sheet in front, or null. */
    static SheetEditor front() {
        IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
        IWorkbenchPage page = window == null ? null : window.getActivePage();
        return page != null && page.getActiveEditor() instanceof SheetEditor editor ? editor : null;
    }
}
