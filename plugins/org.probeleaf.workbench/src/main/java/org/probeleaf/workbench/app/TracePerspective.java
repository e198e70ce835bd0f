// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.app;

import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

/** The stage of tracing: the sheet, where the selected net goes, what is suspect, what was done to the board. */
public final class TracePerspective implements IPerspectiveFactory {

    @Override
    public void createInitialLayout(IPageLayout layout) {
        String editor = layout.getEditorArea();
        IFolderLayout left = layout.createFolder("left", IPageLayout.LEFT, 0.14f, editor);
        left.addView(Views.SHEETS);
        IFolderLayout right = layout.createFolder("right", IPageLayout.RIGHT, 0.70f, editor);
        right.addView(Views.WHERE);
        right.addView(Views.ROUND);
        right.addView(Views.PARTS);
        IFolderLayout below = layout.createFolder("below", IPageLayout.BOTTOM, 0.46f, "right");
        below.addView(Views.SUSPECTS);
        below.addView(Views.PUTBACK);
        below.addView(Views.BOARD);
    }
}
