// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.view;

import org.eclipse.swt.widgets.Composite;
import org.probeleaf.workbench.session.SheetSession;
import org.probeleaf.workbench.sheet.ThumbnailList;

/** The pages as thumbnails, each with its marks counted; a click goes there. */
public final class SheetsView extends SessionView {

    private ThumbnailList list;

    @Override
    protected void createContent(Composite parent) {
        list = new ThumbnailList(parent);
    }

    @Override
    protected void refresh() {
        if (!list.isDisposed()) {
            list.show(session().orElse((SheetSession) null));
        }
    }

    @Override
    public void sheetsReady() {
        refresh();
    }

    @Override
    public void selectionChanged() {
        list.redraw();
    }

    @Override
    public void pageChanged() {
        list.redraw();
    }

    @Override
    public void setFocus() {
        list.setFocus();
    }
}
