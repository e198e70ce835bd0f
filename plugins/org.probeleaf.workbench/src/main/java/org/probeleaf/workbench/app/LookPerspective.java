// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.app;

import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

/** The stage of looking: the sheet, its pages, the job, what is doubted and what was corrected. */
public final class LookPerspective implements IPerspectiveFactory {

    @Override
    public void createInitialLayout(IPageLayout layout) {
        String editor = layout.getEditorArea();
        IFolderLayout left = layout.createFolder("left", IPageLayout.LEFT, 0.17f, editor);
        left.addView(Views.SHEETS);
        IFolderLayout right = layout.createFolder("right", IPageLayout.RIGHT, 0.75f, editor);
        right.addView(Views.JOB);
        right.addView(Views.PARTS);
        right.addView(Views.PART_BOOK);
        IFolderLayout below = layout.createFolder("below", IPageLayout.BOTTOM, 0.62f, "right");
        below.addView(Views.DOUBTS);
        below.addView(Views.CORRECTIONS);
        below.addView(Views.BOARDS);
    }
}
