// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.view;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;

import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Table;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;

/** A table of records: columns of text, a picture in the first, and one thing to do with a row. */
public final class PlainTable<T> {

    private final Class<T> type;
    private final TableViewer viewer;
    private final TableColumnLayout layout = new TableColumnLayout(true);
    private final Composite pages;
    private final StackLayout stack = new StackLayout();
    private final Composite frame;
    private boolean telling = true;
    private Composite empty;
    private Function<T, Color> colour = row -> null;

    /** @param open what double click and Enter do */
    public PlainTable(Composite parent, Class<T> type, Consumer<T> open) {
        this.type = type;
        pages = new Composite(parent, SWT.NONE);
        pages.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        pages.setLayout(stack);
        frame = new Composite(pages, SWT.NONE);
        frame.setLayout(layout);
        stack.topControl = frame;
        viewer = new TableViewer(frame, SWT.FULL_SELECTION | SWT.SINGLE | SWT.V_SCROLL);
        viewer.getTable().setHeaderVisible(true);
        viewer.getTable().setFont(new Look(frame).font(-1, false));
        ColumnViewerToolTipSupport.enableFor(viewer);
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        viewer.addOpenListener(e -> first(e.getSelection() instanceof IStructuredSelection s ? s : null, open));
    }

    private void first(IStructuredSelection selection, Consumer<T> open) {
        Object row = selection == null ? null : selection.getFirstElement();
        if (row != null) {
            open.accept(type.cast(row));
        }
    }

    /** What stands in place of the table while it is empty. */
    public void hint(String words) {
        empty = new Composite(pages, SWT.NONE);
        GridLayout margins = new GridLayout();
        margins.marginWidth = 12;
        margins.marginHeight = 12;
        empty.setLayout(margins);
        empty.setBackground(viewer.getTable().getBackground());
        Label label = new Label(empty, SWT.WRAP);
        label.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false));
        label.setBackground(viewer.getTable().getBackground());
        label.setForeground(new Look(label).colour(Palette.QUIET));
        label.setText(words);
        stack.topControl = empty;
    }

    /** The colour of a row's text; null gives the usual one. */
    public void colours(Function<T, Color> of) {
        colour = of;
    }

    /**
     * Adds a column.
     *
     * @param weight share of the width
     * @param image  gives the picture before the text, or null
     */
    public void column(String title, int weight, int minimum, Function<T, String> text, Function<T, Image> image) {
        TableViewerColumn column = new TableViewerColumn(viewer, SWT.LEFT);
        column.getColumn().setText(title);
        layout.setColumnData(column.getColumn(), new ColumnWeightData(weight, minimum, true));
        column.setLabelProvider(new ColumnLabelProvider() {
            @Override
            public String getText(Object row) {
                String s = text.apply(type.cast(row));
                return s == null ? "" : s;
            }

            @Override
            public Image getImage(Object row) {
                return image == null ? null : image.apply(type.cast(row));
            }

            @Override
            public Color getForeground(Object row) {
                return colour.apply(type.cast(row));
            }

            @Override
            public String getToolTipText(Object row) {
                return getText(row);
            }
        });
    }

    /** Shows rows in place of those before. */
    public void show(List<T> rows) {
        if (!viewer.getTable().isDisposed()) {
            viewer.setInput(rows);
            stack.topControl = empty != null && rows.isEmpty() ? empty : frame;
            pages.layout();
        }
    }

    /** Adds something to do with the chosen row to the table's menu. */
    public void offer(String words, Consumer<T> action) {
        Table table = viewer.getTable();
        if (table.getMenu() == null) {
            table.setMenu(new Menu(table));
            table.addListener(SWT.MenuDetect, e -> e.doit = table.getSelectionCount() > 0);
        }
        MenuItem item = new MenuItem(table.getMenu(), SWT.PUSH);
        item.setText(words.replace("&", "&&"));
        item.addListener(SWT.Selection, e -> first(viewer.getStructuredSelection(), action));
    }

    /** Marks a row as the chosen one, without telling of it; null marks none. */
    public void select(T row) {
        IStructuredSelection now = viewer.getStructuredSelection();
        if (row == null ? !now.isEmpty() : !row.equals(now.getFirstElement())) {
            telling = false;
            viewer.setSelection(row == null ? StructuredSelection.EMPTY : new StructuredSelection(row), true);
            telling = true;
        }
    }

    /** Takes the keys. */
    public void focus() {
        viewer.getTable().setFocus();
    }

    /** Tells of the row that is chosen, by mouse or keys. */
    public void onChoice(Consumer<T> chosen) {
        viewer.addSelectionChangedListener(e -> first(!telling ? null : e.getSelection() instanceof IStructuredSelection s ? s : null, chosen));
    }

    /** The viewer itself. */
    public TableViewer viewer() {
        return viewer;
    }
}
