// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.start;

import org.eclipse.ui.IEditorReference;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPartReference;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;

/** Puts the start page into the window while no sheet is open. */
public final class EmptyWindow {

    private EmptyWindow() {
    }

    /** From now on shows the start page when the last sheet is closed, and takes it away when one is opened. */
    public static void watch(IWorkbenchPage page) {
        page.addPartListener(new IPartListener2() {
            @Override
            public void partOpened(IWorkbenchPartReference ref) {
                if (ref instanceof IEditorReference && !ref.getId().equals(StartPage.ID)) {
                    later(() -> hide(page));
                }
            }

            @Override
            public void partClosed(IWorkbenchPartReference ref) {
                if (ref instanceof IEditorReference) {
                    later(() -> {
                        if (page.getEditorReferences().length == 0) {
                            show(page);
                        }
                    });
                }
            }
        });
    }

    private static void later(Runnable what) {
        PlatformUI.getWorkbench().getDisplay().asyncExec(() -> {
            if (PlatformUI.isWorkbenchRunning() && !PlatformUI.getWorkbench().isClosing()) {
                what.run();
            }
        });
    }

    /** Shows the start page. */
    public static void show(IWorkbenchPage page) {
        try {
            page.openEditor(new StartInput(), StartPage.ID);
        } catch (PartInitException e) {
            throw new IllegalStateException("the start page of plugin.xml cannot be made", e);
        }
    }

    private static void hide(IWorkbenchPage page) {
        for (IEditorReference ref : page.getEditorReferences()) {
            if (ref.getId().equals(StartPage.ID)) {
                page.closeEditors(new IEditorReference[] {ref}, false);
            }
        }
    }
}
