// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave.importing;

import java.nio.file.Path;
import java.util.List;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.probeleaf.waveform.format.ImportWords;
import org.probeleaf.workbench.session.RecentFiles;
import org.probeleaf.workbench.session.Selection;
import org.probeleaf.workbench.session.SheetSession;
import org.probeleaf.workbench.wave.photo.PhotoPin;

/** Pins a capture to a place: which file, and how it is understood. */
public final class PinDialog extends TitleAreaDialog {

    private static final String WORDS = "See what was understood of the file, and put right what is not.";

    private final SheetSession session;
    private final Selection at;
    private final Path given;
    private Combo file;
    private ReadingPane reading;

    /**
     * @param at    where it is pinned to
     * @param given the file, or null to begin with one that may be meant
     */
    public PinDialog(Shell parent, SheetSession session, Selection at, Path given) {
        super(parent);
        setShellStyle(getShellStyle() | SWT.RESIZE);
        this.session = session;
        this.at = at;
        this.given = given;
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText("Pin a capture to " + at.place().text());
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        setTitle(("Pin a capture to " + at.place().text()).replace("&", "&&"));
        setMessage(WORDS);
        Composite inside = inside(area);
        fileRow(inside);
        reading = new ReadingPane(inside, this::told);
        reading.control().setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        return area;
    }

    /** The inside of a dialog, with its margins. */
    static Composite inside(Composite area) {
        Composite inside = new Composite(area, SWT.NONE);
        inside.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = 12;
        layout.marginHeight = 10;
        layout.verticalSpacing = 10;
        inside.setLayout(layout);
        return inside;
    }

    private void fileRow(Composite parent) {
        Composite row = new Composite(parent, SWT.NONE);
        row.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false));
        GridLayout layout = new GridLayout(3, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        row.setLayout(layout);
        new Label(row, SWT.NONE).setText("&File:");
        file = new Combo(row, SWT.DROP_DOWN);
        GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
        data.widthHint = 400;
        file.setLayoutData(data);
        Button browse = new Button(row, SWT.PUSH);
        browse.setText("&Browse\u2026");
        browse.addListener(SWT.Selection, e -> browse());
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, "Pin", true).setEnabled(false);
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
        List<Path> offered = RecentCaptures.offered(session.file().map(Path::getParent).orElse(null));
        file.setItems(offered.stream().map(Path::toString).toArray(String[]::new));
        Path first = given != null ? given : offered.isEmpty() ? null : offered.get(0);
        file.setText(first == null ? "" : first.toString());
        file.addListener(SWT.Modify, e -> read());
        read();
        file.setFocus();
    }

    private void read() {
        String name = file.getText();
        String wrong = CaptureSource.wrong(name);
        if (wrong == null && PhotoPin.isPhoto(path())) {
            reading.read(null, "This is a photograph; Pin goes on to how its screen is read.");
            return;
        }
        reading.read(wrong == null ? CaptureSource.of(path()) : null, wrong);
    }

    private Path path() {
        return Path.of(file.getText().strip()).toAbsolutePath();
    }

    /** What is in the way; an empty field is no error yet. */
    private void told(String problem) {
        boolean photo = problem != null && !problem.isEmpty() && CaptureSource.wrong(file.getText()) == null
                && PhotoPin.isPhoto(path());
        boolean unnamed = file.getText().isBlank() || photo;
        setErrorMessage(problem == null || problem.isEmpty() || unnamed ? null : problem);
        setMessage(unnamed && problem != null && !problem.isEmpty() ? problem : WORDS);
        Button ok = getButton(IDialogConstants.OK_ID);
        if (ok != null) {
            ok.setEnabled(photo || problem != null && problem.isEmpty());
        }
    }

    private void browse() {
        FileDialog dialog = new FileDialog(getShell(), SWT.OPEN);
        dialog.setText("Pin a capture to " + at.place().text());
        Path folder = CaptureSource.wrong(file.getText()) == null ? path().getParent()
                : RecentCaptures.lastFolder().orElse(session.file().map(Path::getParent).orElse(null));
        if (folder != null) {
            dialog.setFilterPath(folder.toString());
        }
        dialog.setFilterNames(new String[] {"Captures", "All files"});
        dialog.setFilterExtensions(new String[] {
            "*.csv;*.txt;*.tsv;*.dat;*.vcd;*.wav;*.png;*.jpg;*.jpeg;*.CSV;*.TXT;*.VCD;*.WAV;*.PNG;*.JPG", "*"});
        String name = dialog.open();
        if (name != null) {
            file.setText(name);
        }
    }

    @Override
    protected void okPressed() {
        Path capture = path();
        if (PhotoPin.isPhoto(capture)) {
            Shell owner = getParentShell();
            super.okPressed();
            if (PhotoPin.ask(owner, session, at, capture)) {
                RecentFiles.PINNED.add(capture);
            }
        } else if (reading.good()) {
            RecentFiles.PINNED.add(capture);
            session.pinCapture(capture, at, ImportWords.of(reading.options()));
            super.okPressed();
        }
    }
}
