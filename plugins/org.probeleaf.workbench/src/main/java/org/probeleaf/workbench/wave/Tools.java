// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.layout.RowData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;

/** Makes the small tools of the view. */
final class Tools {

    private Tools() {
    }

    static Button check(Composite parent, String words, String tip, Runnable changed) {
        Button check = new Button(parent, SWT.CHECK);
        check.setText(words);
        check.setToolTipText(tip);
        check.addListener(SWT.Selection, e -> changed.run());
        return check;
    }

    static void button(Composite parent, Image icon, String tip, Runnable action) {
        Button button = new Button(parent, SWT.PUSH);
        button.setImage(icon);
        button.setToolTipText(tip);
        button.addListener(SWT.Selection, e -> action.run());
    }

    /** Shows a button of a row, or hides it without leaving a gap. */
    static void shows(Button button, boolean visible) {
        if (button.getVisible() != visible || button.getLayoutData() == null) {
            RowData data = new RowData();
            data.exclude = !visible;
            button.setLayoutData(data);
            button.setVisible(visible);
            button.getParent().getParent().layout(true, true);
        }
    }
}
