// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.reading;

import java.time.Instant;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.probeleaf.job.change.EditReading;
import org.probeleaf.job.expectation.Expectation;
import org.probeleaf.job.mark.Circumstances;
import org.probeleaf.job.mark.ReadingMark;

/** Puts a reading right that was mistyped; what is understood is said while typing. */
final class ReadingDialog extends TitleAreaDialog {

    private final ReadingMark mark;
    private Text value;
    private Text expected;
    private Text conditions;
    private Text instrument;
    private ReadingMark now;

    ReadingDialog(Shell parent, ReadingMark mark) {
        super(parent);
        this.mark = mark;
        this.now = mark;
    }

    /** What was made of it. */
    EditReading change() {
        return new EditReading(now, Instant.now());
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText("Reading at " + mark.place().text());
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        setTitle("Reading at " + mark.place().text());
        Composite form = new Composite(area, SWT.NONE);
        form.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 12;
        layout.marginHeight = 10;
        form.setLayout(layout);
        value = field(form, "Value and remark", mark.typed(), "2.2V flat");
        expected = field(form, "Should be", mark.expectation() == null ? "" : mark.expectation().text(), "5V\u00b15%, 74LS, good 4.1V");
        conditions = field(form, "Conditions", mark.circumstances().conditions(), "reset held, warm");
        instrument = field(form, "Read with", mark.circumstances().instrument(), "scope, 10:1");
        return area;
    }

    @Override
    protected Control createContents(Composite parent) {
        Control contents = super.createContents(parent);
        understand();
        value.setFocus();
        value.selectAll();
        return contents;
    }

    private Text field(Composite form, String name, String text, String hint) {
        new Label(form, SWT.NONE).setText(name);
        Text field = new Text(form, SWT.BORDER | SWT.SINGLE);
        field.setMessage(hint);
        field.setText(text);
        GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
        data.widthHint = 320;
        field.setLayoutData(data);
        field.addListener(SWT.Modify, e -> understand());
        return field;
    }

    private void understand() {
        if (getButton(IDialogConstants.OK_ID) == null || instrument == null) {
            return;
        }
        String wrong = null;
        try {
            Expectation expectation = expected.getText().isBlank() ? null : Expectation.parse(expected.getText());
            now = mark.typedAnew(value.getText(), "", new Circumstances(conditions.getText(), instrument.getText()), expectation);
            setMessage(now.shown() + "  " + now.value().kind().title()
                    + (now.verdict() == null ? "" : ": " + now.verdict().reason()));
        } catch (IllegalArgumentException e) {
            wrong = e.getMessage();
        }
        setErrorMessage(wrong);
        getButton(IDialogConstants.OK_ID).setEnabled(wrong == null);
    }
}
