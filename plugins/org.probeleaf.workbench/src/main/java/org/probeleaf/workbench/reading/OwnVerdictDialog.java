// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.reading;

import java.time.Instant;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.probeleaf.job.change.OverruleReading;
import org.probeleaf.job.expectation.Outcome;
import org.probeleaf.job.mark.ReadingMark;

/** The technician's own verdict on a reading, with the reason. */
final class OwnVerdictDialog extends TitleAreaDialog {

    private final ReadingMark mark;
    private Outcome outcome;
    private String reason = "";
    private Text why;

    OwnVerdictDialog(Shell parent, ReadingMark mark) {
        super(parent);
        this.mark = mark;
        boolean bad = mark.verdict() != null && mark.verdict().outcome() == Outcome.BAD;
        this.outcome = bad ? Outcome.GOOD : Outcome.BAD;
    }

    /** What was said. */
    OverruleReading change() {
        return new OverruleReading(mark.id(), outcome, reason, Instant.now());
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText("Your own verdict");
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        setTitle(mark.shown() + " at " + mark.place().text());
        setMessage(mark.judged() == null ? "Nothing was expected of it, so nothing follows from its value."
                : "What follows from its value: " + mark.judged().reason() + ". That is kept beside your verdict.");
        Composite form = new Composite(area, SWT.NONE);
        form.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        GridLayout layout = new GridLayout(4, false);
        layout.marginWidth = 12;
        layout.marginHeight = 10;
        form.setLayout(layout);
        new Label(form, SWT.NONE).setText("It is");
        radio(form, "good", Outcome.GOOD);
        radio(form, "bad", Outcome.BAD);
        radio(form, "not certain", Outcome.UNSURE);
        new Label(form, SWT.NONE).setText("because");
        why = new Text(form, SWT.BORDER | SWT.SINGLE);
        why.setMessage("the reason, for whoever reads the job");
        GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false, 3, 1);
        data.widthHint = 340;
        why.setLayoutData(data);
        why.addListener(SWT.Modify, e -> check());
        return area;
    }

    @Override
    protected Control createContents(Composite parent) {
        Control contents = super.createContents(parent);
        check();
        why.setFocus();
        return contents;
    }

    private void radio(Composite form, String words, Outcome meaning) {
        Button button = new Button(form, SWT.RADIO);
        button.setText(words);
        button.setSelection(outcome == meaning);
        button.addListener(SWT.Selection, e -> {
            if (button.getSelection()) {
                outcome = meaning;
            }
        });
    }

    private void check() {
        reason = why.getText();
        Button ok = getButton(IDialogConstants.OK_ID);
        if (ok != null) {
            ok.setEnabled(!reason.isBlank());
        }
    }
}
