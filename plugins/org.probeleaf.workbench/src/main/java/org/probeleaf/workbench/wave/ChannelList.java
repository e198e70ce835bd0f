// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.session.LoadedTrace;

/** The traces of a capture: ticked ones are shown, the selected one is measured. Space ticks, the arrow keys select. */
final class ChannelList {

    private final Table table;
    private final Runnable changed;
    private List<LoadedTrace> traces = List.of();
    private int measured;
    private boolean ticking;

    ChannelList(Composite parent, Runnable changed) {
        this.changed = changed;
        table = new Table(parent, SWT.CHECK | SWT.FULL_SELECTION | SWT.SINGLE | SWT.V_SCROLL);
        table.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        table.setHeaderVisible(true);
        table.setFont(new Look(table).font(-1, false));
        table.setToolTipText("Ticked traces are shown; the selected one is measured and judged.");
        column("Trace", 120);
        column("Is", 90);
        table.addListener(SWT.Selection, this::touched);
        table.addListener(SWT.Resize, e -> {
            int width = table.getClientArea().width;
            table.getColumn(0).setWidth(width * 11 / 20);
            table.getColumn(1).setWidth(width - width * 11 / 20);
        });
    }

    private void column(String title, int width) {
        TableColumn column = new TableColumn(table, SWT.LEFT);
        column.setText(title);
        column.setWidth(width);
    }

    /** A tick also selects the row, which is not to change what is measured: the selection goes back. */
    private void touched(Event e) {
        if (e.detail == SWT.CHECK) {
            ticking = true;
            e.display.asyncExec(() -> {
                ticking = false;
                if (!table.isDisposed()) {
                    table.setSelection(measured);
                    changed.run();
                }
            });
        } else if (!ticking && table.getSelectionIndex() >= 0) {
            measured = table.getSelectionIndex();
            label();
            changed.run();
        }
    }

    /** Shows the traces of a capture, unless they are shown. */
    void show(List<LoadedTrace> of, int few) {
        if (traces == of || table.isDisposed()) {
            return;
        }
        traces = of;
        table.removeAll();
        for (int i = 0; i < of.size(); i++) {
            TableItem item = new TableItem(table, SWT.NONE);
            item.setChecked(of.get(i).logic() || i < few);
        }
        if (!of.isEmpty()) {
            table.setSelection(0);
        }
        measured = 0;
        label();
    }

    private void label() {
        for (int i = 0; i < table.getItemCount(); i++) {
            LoadedTrace t = traces.get(i);
            String is = t.logic() ? "logic" : t.unit().isEmpty() ? "no unit" : t.unit();
            table.getItem(i).setText(new String[] {t.name(), i == measured ? is + ", measured" : is});
        }
    }

    /** Those that are ticked. */
    List<LoadedTrace> shown() {
        List<LoadedTrace> ticked = new ArrayList<>();
        for (int i = 0; i < table.getItemCount(); i++) {
            if (table.getItem(i).getChecked()) {
                ticked.add(traces.get(i));
            }
        }
        return ticked;
    }

    /** The one that is measured, or null where there is none. */
    LoadedTrace measured() {
        return traces.isEmpty() ? null : traces.get(measured);
    }
}
