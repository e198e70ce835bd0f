// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.view;

import java.io.IOException;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.probeleaf.diagnosis.fault.Priors;
import org.probeleaf.workbench.session.OwnPriors;

/** How readily parts fail, to be seen and changed: one line for each class of part and each kind of fault. */
final class WeightsDialog extends TitleAreaDialog {

    private static final int STANDARD = IDialogConstants.CLIENT_ID + 1;
    private static final String WORDS = "A weight for each class of part, and for each kind of fault. Only proportions"
            + " count; 0 rules it out. They say what is suspected before anything is measured.";

    private final OwnPriors priors = OwnPriors.shared();
    private Text text;

    WeightsDialog(Shell parent) {
        super(parent);
        setShellStyle(getShellStyle() | SWT.RESIZE);
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText("How readily parts fail");
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        setTitle("How readily parts fail");
        text = new Text(area, SWT.MULTI | SWT.BORDER | SWT.V_SCROLL);
        GridData data = new GridData(SWT.FILL, SWT.FILL, true, true);
        data.heightHint = 420;
        data.widthHint = 460;
        text.setLayoutData(data);
        text.setFont(JFaceResources.getTextFont());
        text.setText(priors.priors().format());
        text.addListener(SWT.Modify, e -> check());
        setMessage(priors.problem() == null ? WORDS : priors.problem());
        return area;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, STANDARD, "As it came", false);
        super.createButtonsForButtonBar(parent);
    }

    private void check() {
        String wrong = null;
        try {
            Priors.parse(text.getText());
        } catch (IllegalArgumentException e) {
            wrong = e.getMessage();
        }
        setErrorMessage(wrong);
        getButton(IDialogConstants.OK_ID).setEnabled(wrong == null);
    }

    @Override
    protected void buttonPressed(int id) {
        if (id == STANDARD) {
            text.setText(Priors.standard().format());
        } else {
            super.buttonPressed(id);
        }
    }

    @Override
    protected void okPressed() {
        try {
            priors.keep(text.getText());
            super.okPressed();
        } catch (IOException e) {
            setErrorMessage("The weights cannot be kept (" + e.getMessage() + ")");
        }
    }
}
