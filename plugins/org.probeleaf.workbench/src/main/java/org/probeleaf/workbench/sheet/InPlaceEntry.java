// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.sheet;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.probeleaf.job.change.Change;
import org.probeleaf.job.expectation.RailName;
import org.probeleaf.job.mark.ReadingMark;
import org.probeleaf.job.round.Offer;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;
import org.probeleaf.workbench.session.Selection;

/** A small entry that opens at the selected spot: type, see what was understood, Enter. Escape leaves it. */
final class InPlaceEntry {

    private final Composite box;
    private final Text text;
    private final Text expected;
    private final Label understood;
    private final Canvas verdict;
    private final EntryKind kind;
    private final Supplier<Selection> at;
    private final Consumer<Change> commit;
    private final Look look;
    private List<ReadingMark> before = List.of();
    private Understanding now;

    /**
     * Opens an entry.
     *
     * @param parent the canvas
     * @param at     what it is pinned to; asked again on Enter, since a net may have been recognised meanwhile
     * @param spot   the spot on the screen
     * @param commit takes the change when Enter is pressed
     */
    InPlaceEntry(Composite parent, EntryKind kind, Supplier<Selection> at, Point spot, Consumer<Change> commit) {
        this.kind = kind;
        this.at = at;
        this.commit = commit;
        box = new Composite(parent, SWT.NONE);
        look = new Look(box);
        box.setBackground(look.colour(Palette.WHITE));
        box.setBackgroundMode(SWT.INHERIT_FORCE);
        GridLayout layout = new GridLayout(kind == EntryKind.READING ? 3 : 2, false);
        layout.marginWidth = 10;
        layout.marginHeight = 8;
        layout.verticalSpacing = 4;
        box.setLayout(layout);
        box.addPaintListener(e -> border(e.gc));
        Label icon = new Label(box, SWT.NONE);
        icon.setImage(look.icon(kind.icon()));
        text = field(kind.hint(), kind == EntryKind.NOTE ? 280 : 190);
        expected = kind == EntryKind.READING ? field("should be (5V\u00b15%)", 130) : null;
        rail();
        Composite line = new Composite(box, SWT.NONE);
        line.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false, layout.numColumns, 1));
        GridLayout lineLayout = new GridLayout(2, false);
        lineLayout.marginWidth = 0;
        lineLayout.marginHeight = 0;
        line.setLayout(lineLayout);
        verdict = new Canvas(line, SWT.NONE);
        GridData v = new GridData(14, 14);
        v.exclude = true;
        verdict.setLayoutData(v);
        verdict.addPaintListener(e -> {
            if (now.outcome() != null) {
                VerdictPainter.paint(e.gc, look, now.outcome(), 1, 1, 12);
            }
        });
        understood = new Label(line, SWT.WRAP);
        understood.setFont(look.font(-1, false));
        GridData u = new GridData(SWT.FILL, SWT.CENTER, true, false);
        u.widthHint = 330;
        understood.setLayoutData(u);
        understand();
        place(parent, spot);
        text.setFocus();
    }

    /** Offers what the name of a supply net says that it should be; it can be typed over or taken away. */
    private void rail() {
        Selection here = at.get();
        if (expected != null && here.net() != null && here.net().name() != null) {
            RailName.expectation(here.net().name()).ifPresent(rail -> {
                expected.setText(rail.text());
                expected.setToolTipText("From the name of the net, " + here.net().name() + ". Type over it, or take it away.");
            });
        }
    }

    /** What was read so far, the oldest first. */
    void readings(List<ReadingMark> readings) {
        before = readings;
    }

    /** Shows what the part here would have it be, for the person to type; nothing is held against it by itself. */
    void offer(Offer offer) {
        if (expected != null && expected.getText().isEmpty()) {
            expected.setMessage("should be (" + offer.expected() + ")");
            expected.setToolTipText("Type " + offer.expected() + " to hold it against the levels of that family: " + offer.why()
                    + ".");
        }
    }

    private Text field(String message, int width) {
        Text field = new Text(box, SWT.BORDER | SWT.SINGLE);
        field.setMessage(message);
        GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
        data.widthHint = width;
        field.setLayoutData(data);
        field.addListener(SWT.Modify, e -> understand());
        field.addListener(SWT.DefaultSelection, e -> enter());
        field.addListener(SWT.Traverse, this::traverse);
        return field;
    }

    private void traverse(Event e) {
        if (e.detail == SWT.TRAVERSE_ESCAPE) {
            e.doit = false;
            close();
        }
    }

    private void understand() {
        now = Understanding.of(kind, text.getText(), expected == null ? "" : expected.getText(), at.get(), before);
        if (understood == null) {
            return;
        }
        understood.setText(now.words());
        boolean fine = now.change() != null || text.getText().isBlank();
        understood.setForeground(look.colour(fine ? Palette.QUIET : Palette.VERMILLION));
        boolean judged = now.outcome() != null;
        ((GridData) verdict.getLayoutData()).exclude = !judged;
        verdict.setVisible(judged);
        verdict.redraw();
        box.layout(true, true);
        if (box.getSize().x > 0) {
            box.setSize(box.computeSize(SWT.DEFAULT, SWT.DEFAULT));
        }
    }

    /** Beside the spot, inside the canvas. */
    private void place(Composite parent, Point spot) {
        Point size = box.computeSize(SWT.DEFAULT, SWT.DEFAULT);
        Rectangle area = parent.getClientArea();
        int x = Math.max(4, Math.min(spot.x + 18, area.width - size.x - 4));
        int y = spot.y + 18 + size.y > area.height ? spot.y - 18 - size.y : spot.y + 18;
        box.setBounds(x, Math.max(4, y), size.x, size.y);
        box.moveAbove(null);
    }

    private void border(GC gc) {
        Point size = box.getSize();
        gc.setForeground(look.colour(Palette.BLUE));
        gc.drawRectangle(0, 0, size.x - 1, size.y - 1);
    }

    private void enter() {
        understand();
        if (now.change() != null) {
            commit.accept(now.change());
            close();
        } else if (text.getText().isBlank()) {
            close();
        }
    }

    /** Takes the keys, unless a line of it has them. */
    void focus() {
        if (!isOpen()) {
            return;
        }
        Control now = box.getDisplay().getFocusControl();
        if (now != text && now != expected) {
            text.setFocus();
        }
    }

    boolean isOpen() {
        return !box.isDisposed();
    }

    /** Closes without a change and gives the focus back to the sheet. */
    void close() {
        if (isOpen()) {
            Composite parent = box.getParent();
            box.dispose();
            parent.forceFocus();
        }
    }
}
