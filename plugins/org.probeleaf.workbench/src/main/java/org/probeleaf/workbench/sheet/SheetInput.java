// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.sheet;

import java.nio.file.Path;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IPersistableElement;
import org.probeleaf.workbench.look.Look;

/**
 * A sheet or a job file to be opened.
 *
 * @param file absolute
 */
public record SheetInput(Path file) implements IEditorInput {

    @Override
    public boolean exists() {
        return true;
    }

    @Override
    public ImageDescriptor getImageDescriptor() {
        return Look.descriptor("sheet-file");
    }

    @Override
    public String getName() {
        return file.getFileName().toString().replaceFirst("\\.[^.]{1,9}$", "");
    }

    @Override
    public IPersistableElement getPersistable() {
        return null;
    }

    @Override
    public String getToolTipText() {
        return file.toString();
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        return null;
    }
}
