// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.command;

import java.util.Map;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.commands.IElementUpdater;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.menus.UIElement;
import org.probeleaf.job.JobState;
import org.probeleaf.workbench.sheet.SheetEditor;

/** Undoes or redoes the last change of the job in front, and names it in the menu. */
public final class UndoHandler extends AbstractHandler implements IElementUpdater {

    private final boolean redo;

    private UndoHandler(boolean redo) {
        this.redo = redo;
    }

    /**
     * Lets undo and redo work in a window. Done by hand and not in plugin.xml: a handler that is first loaded while the
     * tool bar is being filled upsets the list of elements to be updated.
     */
    public static void activate(IWorkbenchWindow window) {
        IHandlerService handlers = window.getService(IHandlerService.class);
        handlers.activateHandler("org.eclipse.ui.edit.undo", new UndoHandler(false));
        handlers.activateHandler("org.eclipse.ui.edit.redo", new UndoHandler(true));
    }

    @Override
    public Object execute(ExecutionEvent event) {
        SheetEditor editor = SheetHandler.front();
        if (editor != null && redo) {
            editor.session().redo();
        } else if (editor != null) {
            editor.session().undo();
        }
        return null;
    }

    @Override
    public boolean isEnabled() {
        Control focus = Display.getCurrent() == null ? null : Display.getCurrent().getFocusControl();
        return name() != null && !(focus instanceof Text) && !(focus instanceof Combo);
    }

    @Override
    public void updateElement(UIElement element, @SuppressWarnings("rawtypes") Map parameters) {
        String name = name();
        String verb = redo ? "Redo" : "Undo";
        element.setText(name == null ? verb : verb + " " + name.replace("&", "&&"));
        element.setTooltip(name == null ? "Nothing to " + verb.toLowerCase(java.util.Locale.ROOT) : verb + " " + name);
    }

    /** What would be undone or redone, or null. */
    private String name() {
        SheetEditor editor = SheetHandler.front();
        if (editor == null || editor.session().readOnly() || editor.session().facts().isEmpty()) {
            return null;
        }
        JobState state = editor.session().facts().get().state();
        return redo ? state.redoName() : state.undoName();
    }
}
