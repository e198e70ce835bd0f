// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;
import org.probeleaf.workbench.sheet.VerdictPainter;

/** What is said of a capture, one block below the other: a sign by shape and colour, a title, and sentences. */
final class FindingsPane {

    private static final int SIGN = 16;
    private static final int MARGIN = 10;

    private final ScrolledComposite scroll;
    private final Composite content;
    private final Look look;
    private List<Finding> shown = List.of();

    FindingsPane(Composite parent) {
        scroll = new ScrolledComposite(parent, SWT.V_SCROLL);
        scroll.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        look = new Look(scroll);
        scroll.setBackground(look.colour(Palette.WHITE));
        content = new Composite(scroll, SWT.NONE);
        content.setBackground(look.colour(Palette.WHITE));
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = MARGIN;
        layout.marginHeight = MARGIN;
        layout.verticalSpacing = 3;
        content.setLayout(layout);
        scroll.setContent(content);
        scroll.addListener(SWT.Resize, e -> fit());
    }

    void show(List<Finding> findings) {
        if (scroll.isDisposed() || findings.equals(shown)) {
            return;
        }
        shown = findings;
        for (Control c : content.getChildren()) {
            c.dispose();
        }
        for (Finding f : findings) {
            head(f);
            f.lines().forEach(this::line);
            gap();
        }
        fit();
    }

    private void head(Finding f) {
        if (f.sign() != null) {
            Canvas sign = new Canvas(content, SWT.NONE);
            sign.setBackground(look.colour(Palette.WHITE));
            GridData data = new GridData(SWT.CENTER, SWT.CENTER, false, false);
            data.widthHint = SIGN + 2;
            data.heightHint = SIGN + 2;
            sign.setLayoutData(data);
            sign.addPaintListener(e -> {
                e.gc.setAntialias(SWT.ON);
                VerdictPainter.paint(e.gc, look, f.sign(), 1, 1, SIGN);
            });
        }
        Label title = label(f.title(), f.sign() == null ? 2 : 1);
        title.setFont(look.font(1, true));
        title.setForeground(look.colour(Palette.TEXT));
    }

    private void line(String words) {
        Label line = label(words, 2);
        line.setFont(look.font(-1, false));
        line.setForeground(look.colour(Palette.TEXT));
    }

    private void gap() {
        Label gap = label("", 2);
        ((GridData) gap.getLayoutData()).heightHint = 6;
    }

    private Label label(String words, int columns) {
        Label label = new Label(content, SWT.WRAP);
        label.setBackground(look.colour(Palette.WHITE));
        label.setText(words.replace("&", "&&"));
        GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false, columns, 1);
        data.widthHint = 80;
        label.setLayoutData(data);
        return label;
    }

    private void fit() {
        int width = Math.max(120, scroll.getClientArea().width);
        Point size = content.computeSize(width, SWT.DEFAULT);
        scroll.setMinSize(120, size.y);
        content.layout(true, true);
    }
}
