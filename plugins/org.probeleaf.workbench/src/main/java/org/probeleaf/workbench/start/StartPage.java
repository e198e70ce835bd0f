// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.start;

import java.nio.file.Path;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;
import org.probeleaf.workbench.look.SavedEditor;
import org.probeleaf.workbench.session.RecentFiles;

/** Stands in the empty window: three large actions and the files opened last. Goes away when a sheet is opened. */
public final class StartPage extends SavedEditor {

    /** Its id in plugin.xml. */
    public static final String ID = "org.probeleaf.workbench.start";

    private Composite page;

    @Override
    public void init(IEditorSite site, IEditorInput input) {
        setSite(site);
        setInput(input);
        setPartName(input.getName());
    }

    @Override
    public void createPartControl(Composite parent) {
        page = new Composite(parent, SWT.NONE);
        Look look = new Look(page);
        page.setBackground(look.colour(Palette.BAR));
        page.setBackgroundMode(SWT.INHERIT_FORCE);
        page.setLayout(new GridLayout(1, false));
        Composite middle = new Composite(page, SWT.NONE);
        middle.setLayoutData(new GridData(SWT.CENTER, SWT.CENTER, true, true));
        GridLayout layout = new GridLayout(1, false);
        layout.verticalSpacing = 10;
        middle.setLayout(layout);
        head(middle, look);
        tiles(middle, look);
        recent(middle, look);
    }

    private void head(Composite parent, Look look) {
        Composite head = new Composite(parent, SWT.NONE);
        GridLayout layout = new GridLayout(2, false);
        layout.horizontalSpacing = 14;
        layout.marginWidth = 0;
        head.setLayout(layout);
        Label icon = new Label(head, SWT.NONE);
        icon.setImage(look.icon("probeleaf-48"));
        icon.setLayoutData(new GridData(SWT.BEGINNING, SWT.CENTER, false, false, 1, 2));
        Label title = new Label(head, SWT.NONE);
        title.setText("Probeleaf");
        title.setFont(look.font(10, true));
        title.setForeground(look.colour(Palette.TEXT));
        Label words = new Label(head, SWT.NONE);
        words.setText("Follow a signal through the schematic, pin what you measure, hand over a marked-up sheet.");
        words.setForeground(look.colour(Palette.QUIET));
    }

    private void tiles(Composite parent, Look look) {
        Composite row = new Composite(parent, SWT.NONE);
        GridLayout layout = new GridLayout(3, true);
        layout.marginWidth = 0;
        layout.marginTop = 10;
        layout.horizontalSpacing = 14;
        row.setLayout(layout);
        new ActionTile(row, look, "sheet-file", "Open a sheet", "PDF or image; or drop it here",
                () -> ask("*.pdf;*.PDF;*.png;*.jpg;*.jpeg;*.tif;*.tiff", "Sheets"));
        new ActionTile(row, look, "job-file", "Open a job", "Sheets, readings, notes: one file",
                () -> ask("*.probeleaf", "Jobs"));
        new ActionTile(row, look, "example", "Open the example", "A tide logger with a fault to follow",
                () -> Opening.example().ifPresent(this::open)).setEnabled(Opening.example().isPresent());
    }

    private void recent(Composite parent, Look look) {
        List<Path> files = RecentFiles.OPENED.list();
        if (files.isEmpty()) {
            return;
        }
        Label title = new Label(parent, SWT.NONE);
        title.setText("Opened last");
        title.setFont(look.font(0, true));
        title.setForeground(look.colour(Palette.TEXT));
        ((GridLayout) parent.getLayout()).marginBottom = 40;
        for (Path file : files.stream().limit(5).toList()) {
            Link link = new Link(parent, SWT.NONE);
            link.setText("<a>" + file.getFileName().toString().replace("&", "&&") + "</a>   "
                    + file.getParent().toString().replace("&", "&&"));
            link.setForeground(look.colour(Palette.QUIET));
            link.setLinkForeground(look.colour(Palette.BLUE));
            link.addListener(SWT.Selection, e -> open(file));
        }
    }

    private void ask(String pattern, String name) {
        FileDialog dialog = new FileDialog(page.getShell(), SWT.OPEN);
        dialog.setFilterExtensions(new String[] {pattern});
        dialog.setFilterNames(new String[] {name});
        String file = dialog.open();
        if (file != null) {
            open(Path.of(file));
        }
    }

    private void open(Path file) {
        Opening.open(getSite().getPage(), file);
    }

    @Override
    public void setFocus() {
        page.setFocus();
    }
}
