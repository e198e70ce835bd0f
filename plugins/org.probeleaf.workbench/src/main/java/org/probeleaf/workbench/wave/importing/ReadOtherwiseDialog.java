// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave.importing;

import java.time.Instant;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.probeleaf.job.change.ReadCaptureAs;
import org.probeleaf.job.mark.CaptureMark;
import org.probeleaf.photo.reading.PhotoReader;
import org.probeleaf.waveform.format.ImportOptions;
import org.probeleaf.waveform.format.ImportWords;
import org.probeleaf.workbench.session.SheetSession;
import org.probeleaf.workbench.wave.photo.PhotoPin;

/** Says how a pinned capture is to be read instead; its file stays as it is, and undo takes it back. */
public final class ReadOtherwiseDialog extends TitleAreaDialog {

    private static final String WORDS = "The job keeps the file as it is; what you say here is how it is read from now on.";

    private final SheetSession session;
    private final CaptureMark mark;
    private final byte[] bytes;
    private ReadingPane reading;

    private ReadOtherwiseDialog(Shell parent, SheetSession session, CaptureMark mark, byte[] bytes) {
        super(parent);
        setShellStyle(getShellStyle() | SWT.RESIZE);
        this.session = session;
        this.mark = mark;
        this.bytes = bytes;
    }

    /** Fetches the capture's file from the job and asks. Called on the display thread, which does not wait. */
    public static void ask(Shell parent, SheetSession session, CaptureMark mark) {
        session.captures().fetch(mark, bytes -> {
            if (parent.isDisposed()) {
                return;
            }
            if (bytes == null) {
                MessageDialog.openInformation(parent, "Read otherwise",
                        mark.fileName() + " is not as it was put in; go back to a copy of the job.");
            } else if (PhotoReader.isPhoto(bytes)) {
                PhotoPin.again(parent, session, mark, bytes);
            } else {
                new ReadOtherwiseDialog(parent, session, mark, bytes).open();
            }
        });
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText("Read " + mark.fileName() + " otherwise");
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        setTitle(("How " + mark.fileName() + " at " + mark.place().text() + " is read").replace("&", "&&"));
        setMessage(WORDS);
        reading = new ReadingPane(PinDialog.inside(area), this::told);
        reading.control().setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        return area;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, "Read so", true).setEnabled(false);
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
        try {
            reading.fill(ImportWords.parse(mark.readAs()));
        } catch (IllegalArgumentException e) {
            reading.fill(ImportOptions.none()); // of a newer version; it is found anew
        }
        reading.read(CaptureSource.of(bytes), null);
    }

    private void told(String problem) {
        setErrorMessage(problem == null || problem.isEmpty() ? null : problem);
        Button ok = getButton(IDialogConstants.OK_ID);
        if (ok != null) {
            ok.setEnabled(problem != null && problem.isEmpty());
        }
    }

    @Override
    protected void okPressed() {
        if (reading.good()) {
            String words = ImportWords.of(reading.options());
            if (!words.equals(mark.readAs())) {
                session.apply(new ReadCaptureAs(mark.id(), words, Instant.now()));
            }
            super.okPressed();
        }
    }
}
