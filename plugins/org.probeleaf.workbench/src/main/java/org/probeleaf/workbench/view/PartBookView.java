// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.view;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;

import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.probeleaf.schematic.netlist.NaturalOrder;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.partbook.PartType;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.session.OwnPartBook;
import org.probeleaf.workbench.session.Selection;
import org.probeleaf.workbench.session.SheetSession;

/**
 * The part book: what is known of the pins of a type of part. What is changed here goes into the technician's own book
 * and counts before the standard one. A part selected on the sheet is looked up.
 */
public final class PartBookView extends SessionView {

    private final OwnPartBook book = OwnPartBook.shared();
    private final Runnable changed = () -> onDisplay(this::showBook);
    private Text filter;
    private PlainTable<PartType> table;
    private PartLinesEditor editor;
    private String lookedUp;
    private boolean going;

    @Override
    protected void createContent(Composite parent) {
        Head.column(parent);
        filter = new Text(parent, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        filter.setMessage("Type, value or what it is");
        GridData wide = new GridData(SWT.FILL, SWT.CENTER, true, false);
        wide.horizontalIndent = 6;
        wide.verticalIndent = 6;
        filter.setLayoutData(wide);
        filter.addListener(SWT.Modify, e -> showBook());
        SashForm both = new SashForm(parent, SWT.VERTICAL);
        both.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        Composite upper = new Composite(both, SWT.NONE);
        Head.column(upper);
        Look look = new Look(upper);
        table = new PlainTable<>(upper, PartType.class, t -> editor.focus());
        table.column("Type", 24, 70, PartType::name, t -> book.isOwn(t.name()) ? look.icon("part-mine") : null);
        table.column("What it is", 56, 110, PartType::title, null);
        table.column("Written by", 20, 60, t -> book.isOwn(t.name()) ? "you" : "standard", null);
        table.viewer().addSelectionChangedListener(e -> {
            if (!going && e.getSelection() instanceof IStructuredSelection s
                    && s.getFirstElement() instanceof PartType type) {
                edit(type);
            }
        });
        editor = new PartLinesEditor(both, new Keeper());
        both.setWeights(38, 62);
        book.addListener(changed);
        parent.addListener(SWT.Dispose, e -> book.removeListener(changed));
        showBook();
    }

    private void edit(PartType type) {
        editor.edit(book.book().text(type.name()).orElse(""), book.isOwn(type.name()) ? type.name() : null);
    }

    /** What the editor asks for; files are written off the display thread. */
    private final class Keeper implements PartLinesEditor.Host {
        @Override
        public void keep(String lines) {
            later(() -> {
                PartType kept = book.keep(lines);
                onDisplay(() -> choose(kept.name()));
            });
        }

        @Override
        public void drop(String name) {
            later(() -> {
                book.drop(name);
                onDisplay(() -> choose(name));
            });
        }
    }

    /** Something with files. */
    @FunctionalInterface
    private interface FileWork {
        void run() throws IOException;
    }

    private void later(FileWork work) {
        CompletableFuture.runAsync(() -> {
            try {
                work.run();
            } catch (IOException e) {
                onDisplay(() -> editor.say(e.getMessage(), true));
            }
        });
    }

    private void onDisplay(Runnable what) {
        if (!filter.isDisposed()) {
            filter.getDisplay().asyncExec(() -> {
                if (!filter.isDisposed()) {
                    what.run();
                }
            });
        }
    }

    private void showBook() {
        String wanted = filter.getText().strip().toLowerCase(Locale.ROOT);
        Optional<PartType> meant = book.book().find(filter.getText());
        List<PartType> types = new ArrayList<>(book.book().types().stream()
                .filter(t -> wanted.isEmpty() || t.name().toLowerCase(Locale.ROOT).contains(wanted)
                        || t.title().toLowerCase(Locale.ROOT).contains(wanted)
                        || meant.filter(m -> m.name().equals(t.name())).isPresent()).toList());
        types.sort((a, b) -> NaturalOrder.INSTANCE.compare(a.name(), b.name()));
        table.show(types);
        if (book.problem() != null) {
            editor.say(book.problem(), true);
        }
    }

    private void choose(String name) {
        Optional<PartType> type = book.book().types().stream().filter(t -> t.name().equals(name)).findFirst();
        going = true;
        table.viewer().setSelection(type.map(t -> new StructuredSelection(t)).orElse(StructuredSelection.EMPTY), true);
        going = false;
        type.ifPresentOrElse(this::edit, () -> editor.edit("", null));
    }

    @Override
    protected void refresh() {
        Part part = session().flatMap(SheetSession::selection).map(Selection::part).orElse(null);
        String value = part == null ? null : part.value();
        if (value == null || value.equals(lookedUp) || editor.hasDraft()) {
            return;
        }
        lookedUp = value;
        Optional<PartType> type = book.book().find(value);
        if (type.isPresent()) {
            if (!filter.getText().isEmpty()) {
                filter.setText("");
            }
            choose(type.get().name());
        } else if (part.pins().size() > 3) {
            editor.offer(part);
        }
    }

    @Override
    public void selectionChanged() {
        refresh();
    }

    @Override
    public void setFocus() {
        filter.setFocus();
    }
}
