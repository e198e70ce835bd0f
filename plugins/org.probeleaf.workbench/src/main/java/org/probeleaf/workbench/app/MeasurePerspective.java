// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.app;

import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

/** The stage of measuring: the sheet, what was read there over time, and waveforms. */
public final class MeasurePerspective implements IPerspectiveFactory {

    @Override
    public void createInitialLayout(IPageLayout layout) {
        String editor = layout.getEditorArea();
        IFolderLayout under = layout.createFolder("under", IPageLayout.BOTTOM, 0.53f, editor);
        under.addView(Views.WAVES);
        IFolderLayout right = layout.createFolder("right", IPageLayout.RIGHT, 0.70f, editor);
        right.addView(Views.READINGS);
        right.addView(Views.ROUND);
        right.addView(Views.LOG);
        right.addView(Views.WHERE);
    }
}
