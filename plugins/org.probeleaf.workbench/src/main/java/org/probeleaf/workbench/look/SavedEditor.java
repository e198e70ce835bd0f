// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.look;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.ui.part.EditorPart;

/** An editor with nothing to save: each change is on disk before it shows, and a job stays where it is. */
public abstract class SavedEditor extends EditorPart {

    @Override
    public final void doSave(IProgressMonitor monitor) {
        // all is on disk
    }

    @Override
    public final void doSaveAs() {
        // a job stays where it is
    }

    @Override
    public final boolean isDirty() {
        return false;
    }

    @Override
    public final boolean isSaveAsAllowed() {
        return false;
    }
}
