// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.start;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IPersistableElement;
import org.probeleaf.workbench.look.Look;

/** Stands for the empty window. */
record StartInput() implements IEditorInput {

    @Override
    public boolean exists() {
        return true;
    }

    @Override
    public ImageDescriptor getImageDescriptor() {
        return Look.descriptor("probeleaf-16");
    }

    @Override
    public String getName() {
        return "Start";
    }

    @Override
    public IPersistableElement getPersistable() {
        return null;
    }

    @Override
    public String getToolTipText() {
        return "Open a sheet, a job or the example";
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        return null;
    }
}
