// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave.importing;

import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.probeleaf.waveform.format.ImportOptions;
import org.probeleaf.workbench.look.Look;

/**
 * How a capture is understood: its first rows, the fields that put it right, a plot of what comes out and what was assumed.
 * It reads anew in the background whenever something changes.
 */
final class ReadingPane {

    /** Typing pauses before it is read anew, in milliseconds. */
    private static final int PAUSE = 200;

    private final Composite pane;
    private final RowsTable rows;
    private final ReadingFields fields;
    private final TrialPlot plot;
    private final Label summary;
    private final Text assumed;
    private final ImportTrial trial;
    private final Consumer<String> told;
    private final Runnable later = this::begin;
    private CaptureSource source;
    private String stop;
    private boolean good;

    /** @param told what is in the way, in a sentence; empty where it reads; null while it is being read */
    ReadingPane(Composite parent, Consumer<String> told) {
        this.told = told;
        pane = new Composite(parent, SWT.NONE);
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.horizontalSpacing = 10;
        layout.verticalSpacing = 8;
        pane.setLayout(layout);
        rows = new RowsTable(pane);
        GridData table = new GridData(SWT.FILL, SWT.FILL, true, true);
        table.heightHint = 210;
        table.widthHint = 520;
        rows.control().setLayoutData(table);
        fields = new ReadingFields(pane, this::changed);
        fields.control().setLayoutData(new GridData(SWT.FILL, SWT.FILL, false, false));
        plot = new TrialPlot(pane);
        GridData drawn = new GridData(SWT.FILL, SWT.FILL, true, true, 2, 1);
        drawn.heightHint = 170;
        plot.control().setLayoutData(drawn);
        summary = new Label(pane, SWT.NONE);
        summary.setFont(new Look(summary).font(0, true));
        summary.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false, 2, 1));
        assumed = new Text(pane, SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL);
        assumed.setBackground(pane.getBackground());
        GridData words = new GridData(SWT.FILL, SWT.FILL, true, false, 2, 1);
        words.heightHint = 5 * assumed.getLineHeight();
        words.widthHint = 520;
        assumed.setLayoutData(words);
        trial = new ImportTrial(pane.getDisplay(), this::show);
        pane.addListener(SWT.Dispose, e -> trial.close());
    }

    Composite control() {
        return pane;
    }

    /** Reads from somewhere else; null reads nothing, and says why. */
    void read(CaptureSource from, String why) {
        source = from;
        stop = why;
        changed();
    }

    /** Puts options into the fields. */
    void fill(ImportOptions options) {
        fields.fill(options);
    }

    /** What the fields say; only asked while it reads. */
    ImportOptions options() {
        return fields.options();
    }

    /** Whether what the fields say was tried and reads. */
    boolean good() {
        return good;
    }

    private void changed() {
        good = false;
        trial.stop();
        told.accept(null);
        pane.getDisplay().timerExec(-1, later);
        pane.getDisplay().timerExec(PAUSE, later);
    }

    private void begin() {
        if (pane.isDisposed()) {
            return;
        }
        if (source == null) {
            show(ImportTrial.Outcome.wrong(null, stop));
            return;
        }
        try {
            ImportOptions options = fields.options();
            summary.setText("Reading\u2026");
            trial.begin(source, options);
        } catch (IllegalArgumentException e) {
            plot.show(java.util.List.of(), false, "");
            tell("", "", e.getMessage());
        }
    }

    private void show(ImportTrial.Outcome outcome) {
        if (pane.isDisposed()) {
            return;
        }
        boolean reads = outcome.problem() == null;
        rows.show(outcome.preview());
        fields.found(outcome.preview(), outcome.preview() != null || !reads && source != null);
        plot.show(outcome.traces(), outcome.states(), source == null ? "What comes out is drawn here."
                : reads ? "There is nothing to draw." : "It cannot be drawn before it can be read.");
        String format = outcome.format().isEmpty() ? "" : "It is " + outcome.format() + ". ";
        tell(reads ? format + outcome.summary() : "", String.join("\n", outcome.assumed()), outcome.problem());
        good = reads;
        told.accept(reads ? "" : outcome.problem());
    }

    private void tell(String line, String sentences, String problem) {
        summary.setText(line.replace("&", "&&"));
        assumed.setText(sentences);
        if (problem != null) {
            told.accept(problem);
        }
    }
}
