// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.correction;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.probeleaf.job.mark.Board;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;

/**
 * The strip over the top of the sheet while something is being corrected: what to do next, what would come of it, what
 * to type. It lies on the sheet, so that the sheet does not move under the hand.
 */
public final class CorrectingStrip {

    /** How near the pointer may come, in logical pixels. */
    private static final int NEAR = 12;

    private final Correcting correcting;
    private final Composite strip;
    private final Look look;
    private final Canvas sheet;
    private Label prompt;
    private Label word;
    private final List<Text> fields = new ArrayList<>();
    private Task shown;
    private boolean typing;
    private boolean atBottom;

    /** @param sheet the canvas that it lies on */
    public CorrectingStrip(Canvas sheet, Correcting correcting) {
        this.correcting = correcting;
        this.sheet = sheet;
        strip = new Composite(sheet, SWT.NONE);
        look = new Look(strip);
        strip.setBackground(look.colour(Palette.tint(Palette.SKY, 0.22)));
        strip.setBackgroundMode(SWT.INHERIT_FORCE);
        strip.addPaintListener(e -> {
            e.gc.setForeground(look.colour(Palette.BLUE));
            int edge = atBottom ? 0 : strip.getSize().y - 1;
            e.gc.drawLine(0, edge, strip.getSize().x, edge);
        });
        strip.setVisible(false);
        sheet.addListener(SWT.Resize, e -> place());
        sheet.addListener(SWT.MouseMove, e -> avoid(e.y));
        correcting.addListener(this::show);
    }

    private void show() {
        if (strip.isDisposed()) {
            return;
        }
        Task task = correcting.task().orElse(null);
        boolean type = task != null && correcting.aim().isEmpty();
        if (task != shown || type != typing) {
            shown = task;
            typing = type;
            fill(task);
        }
        if (task != null) {
            set(prompt, correcting.prompt());
            set(word, correcting.word());
            word.setForeground(look.colour(correcting.warns() ? Palette.VERMILLION : Palette.TEXT));
        }
    }

    private static void set(Label label, String text) {
        String shown = text.replace("&", "&&");
        if (!shown.equals(label.getText())) {
            label.setText(shown);
            label.getParent().layout(true, true);
        }
    }

    private void fill(Task task) {
        for (Control c : strip.getChildren()) {
            c.dispose();
        }
        fields.clear();
        if (task != null) {
            make(task);
        }
        atBottom = atBottom && task != null;
        strip.setVisible(task != null);
        place();
        if (!fields.isEmpty()) {
            fields.get(0).setFocus();
            fields.get(0).selectAll();
        } else {
            sheet.forceFocus();
        }
    }

    /** Goes to the other end of the sheet before the pointer is at it, so that every place can be pointed at. */
    private void avoid(int pointer) {
        int height = strip.getSize().y + NEAR;
        boolean inTheWay = atBottom ? pointer > sheet.getClientArea().height - height : pointer < height;
        if (strip.isVisible() && !typing && inTheWay) {
            atBottom = !atBottom;
            place();
        }
    }

    private void place() {
        if (strip.isVisible()) {
            int width = sheet.getClientArea().width;
            int height = strip.computeSize(width, SWT.DEFAULT).y;
            strip.setBounds(0, atBottom ? sheet.getClientArea().height - height : 0, width, height);
            strip.layout(true, true);
            strip.moveAbove(null);
        }
    }

    private void make(Task task) {
        strip.setLayout(row(task.onBoard() ? 7 : 5, 12, 6));
        new Label(strip, SWT.NONE).setImage(look.icon(task.icon()));
        Label title = label(strip, task.title());
        title.setFont(look.font(0, true));
        prompt = label(strip, correcting.prompt());
        word = label(strip, "");
        word.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        if (task.onBoard()) {
            choices();
        }
        button(strip, "Cancel", correcting::cancel).setToolTipText(task.onBoard() ? "Do nothing (Esc)"
                : "Correct nothing (Esc)");
        if (typing) {
            makeFields(task);
        }
    }

    /** Whether it is done for now, and to which board. */
    private void choices() {
        Button now = check("For now", "It goes on the put-back list, and hand-over asks for it");
        Button good = check("On a known-good board", "It is so on a board that works, not on the one on the bench");
        now.setSelection(correcting.forNow());
        now.addListener(SWT.Selection, e -> {
            correcting.setForNow(now.getSelection());
            backToSheet();
        });
        good.addListener(SWT.Selection, e -> {
            correcting.setBoard(good.getSelection() ? Board.KNOWN_GOOD : Board.THIS);
            now.setSelection(correcting.forNow());
            now.setEnabled(!good.getSelection());
            backToSheet();
        });
    }

    private Button check(String text, String tip) {
        Button check = new Button(strip, SWT.CHECK);
        check.setText(text);
        check.setToolTipText(tip);
        check.setForeground(look.colour(Palette.TEXT));
        return check;
    }

    private void backToSheet() {
        if (!typing) {
            sheet.forceFocus();
        }
    }

    private void makeFields(Task task) {
        Composite line = new Composite(strip, SWT.NONE);
        line.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false, task.onBoard() ? 7 : 5, 1));
        line.setLayout(row(2 * task.fields().size() + 1, 0, 0));
        for (int i = 0; i < task.fields().size(); i++) {
            label(line, task.fields().get(i).title());
            fields.add(field(line, correcting.texts().get(i)));
        }
        button(line, task.onBoard() ? "Note it" : "Correct", this::enter);
    }

    private static GridLayout row(int columns, int marginWidth, int marginHeight) {
        GridLayout layout = new GridLayout(columns, false);
        layout.marginWidth = marginWidth;
        layout.marginHeight = marginHeight;
        layout.horizontalSpacing = 9;
        return layout;
    }

    private Label label(Composite parent, String text) {
        Label label = new Label(parent, SWT.NONE);
        label.setForeground(look.colour(Palette.TEXT));
        label.setText(text);
        return label;
    }

    private Text field(Composite parent, String first) {
        Text field = new Text(parent, SWT.BORDER | SWT.SINGLE);
        field.setBackground(look.colour(Palette.WHITE));
        field.setLayoutData(new GridData(110, SWT.DEFAULT));
        field.setText(first);
        field.addListener(SWT.Modify, e -> correcting.type(typed()));
        field.addListener(SWT.DefaultSelection, e -> enter());
        field.addListener(SWT.Traverse, e -> {
            if (e.detail == SWT.TRAVERSE_ESCAPE) {
                e.doit = false;
                correcting.cancel();
            }
        });
        return field;
    }

    private List<String> typed() {
        return fields.stream().map(Text::getText).toList();
    }

    private void enter() {
        correcting.type(typed());
        correcting.commit();
    }

    private static Button button(Composite parent, String text, Runnable action) {
        Button button = new Button(parent, SWT.PUSH | SWT.FLAT);
        button.setText(text);
        button.addListener(SWT.Selection, e -> action.run());
        return button;
    }
}
