// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.probeleaf.schematic.partbook.LevelBook;
import org.probeleaf.schematic.partbook.LogicLevels;
import org.probeleaf.trace.drive.PinLevels;
import org.probeleaf.waveform.judge.ThresholdWords;
import org.probeleaf.waveform.measure.Si;

/** What a capture is judged by: what its net's inputs need, a family or chip of the list, or a voltage that is typed. */
final class LevelChooser {

    private static final String ASK = "judged by: 74LS, 2.0V \u2026";
    private static final String GUESSED = " (guessed)";
    private static final String BESIDE = "   ";

    private final Combo combo;
    private final Consumer<String> chosen;
    private String first = ASK;
    /** What was last set or taken; where the field has something else, a person typed it. */
    private String known = "";
    /** What was taken and is on its way to the job; null where nothing is. */
    private String underway;
    private boolean keyed;

    /** @param chosen told what is now said; empty for the guess */
    LevelChooser(Composite parent, Consumer<String> chosen) {
        this.chosen = chosen;
        combo = new Combo(parent, SWT.DROP_DOWN);
        combo.setToolTipText("What the levels are judged by: a logic family, a chip, a part's value, with a supply after it"
                + " (74HC 4.5V), or one voltage that the next stage needs (2.0V). Enter takes it.");
        combo.setVisibleItemCount(20);
        combo.addListener(SWT.Selection, e -> take());
        combo.addListener(SWT.DefaultSelection, e -> take());
        combo.addListener(SWT.KeyDown, e -> keyed = true);
        combo.addListener(SWT.FocusOut, e -> {
            if (keyed) {
                take();
            }
        });
        // What is typed next takes the place of what stands there.
        combo.addListener(SWT.FocusIn, e -> e.display.asyncExec(() -> {
            if (!combo.isDisposed() && combo.isFocusControl() && !typed()) {
                combo.setSelection(new Point(0, combo.getText().length()));
            }
        }));
    }

    private boolean typed() {
        return !combo.getText().equals(known);
    }

    Combo control() {
        return combo;
    }

    /**
     * Shows what is said.
     *
     * @param by    what is said of the capture, empty for nothing
     * @param guess what the net's inputs need
     */
    void show(String by, Optional<PinLevels> guess) {
        boolean late = underway != null && !by.equals(underway) && combo.isFocusControl();
        if (late || keyed && typed() && combo.isFocusControl()) {
            return;
        }
        underway = null;
        String start = guess.map(g -> g.levels().name() + GUESSED).orElse(ASK);
        String text = by.isBlank() ? start : by;
        if (!start.equals(first) || combo.getItemCount() == 0) {
            first = start;
            List<String> items = new ArrayList<>(List.of(first, ThresholdWords.NOTHING));
            LevelBook.standard().levels().forEach(l -> items.add(words(l)));
            combo.setItems(items.toArray(String[]::new));
        }
        known = text;
        if (typed()) {
            combo.setText(text);
        }
    }

    private static String words(LogicLevels l) {
        return l.name() + BESIDE + Si.text(l.supply(), "V") + ", " + l.title();
    }

    private void take() {
        keyed = false;
        if (typed()) {
            known = combo.getText();
            int beside = known.indexOf(BESIDE);
            String by = (beside < 0 ? known : known.substring(0, beside)).strip();
            underway = by.equals(first) || by.equals(ASK) ? "" : by;
            chosen.accept(underway);
        }
    }
}
