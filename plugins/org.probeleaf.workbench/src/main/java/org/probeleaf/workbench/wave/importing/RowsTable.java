// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave.importing;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.probeleaf.waveform.format.TextPreview;
import org.probeleaf.waveform.format.TextPreview.ColumnRole;
import org.probeleaf.waveform.format.TextPreview.Kind;
import org.probeleaf.waveform.format.TextPreview.Row;
import org.probeleaf.waveform.format.TextPreview.RowKind;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;

/** The first rows of a text: what is above the data, the names, the time and the channels, told apart by words and tint. */
final class RowsTable {

    private static final double TINT = 0.12;
    private static final int ABOVE = 4;
    private static final int MOST_COLUMNS = 64;

    private final Table table;
    private final Look look;

    RowsTable(Composite parent) {
        table = new Table(parent, SWT.BORDER | SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL);
        table.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        table.setHeaderVisible(true);
        table.setLinesVisible(true);
        look = new Look(table);
        table.setFont(look.font(-1, false));
    }

    Table control() {
        return table;
    }

    /** Shows rows; null shows none. */
    void show(TextPreview preview) {
        table.setRedraw(false);
        table.removeAll();
        for (TableColumn column : table.getColumns()) {
            column.dispose();
        }
        if (preview != null) {
            fill(preview);
        }
        table.setRedraw(true);
    }

    private void fill(TextPreview preview) {
        List<Kind> kinds = preview.columns().subList(0, Math.min(MOST_COLUMNS, preview.columns().size()));
        column("Row", SWT.RIGHT);
        column("Is", SWT.LEFT);
        for (int c = 0; c < kinds.size(); c++) {
            column((c + 1) + ": " + title(kinds.get(c)), SWT.LEFT);
        }
        for (Row row : preview.rows()) {
            TableItem item = new TableItem(table, SWT.NONE);
            item.setText(0, String.valueOf(row.number()));
            item.setText(1, words(row.kind()));
            for (int c = 0; c < kinds.size() && c < row.cells().size(); c++) {
                item.setText(c + 2, row.cells().get(c));
            }
            tint(item, row.kind(), kinds);
        }
        for (TableColumn column : table.getColumns()) {
            column.pack();
            column.setWidth(Math.min(220, column.getWidth() + 8));
        }
        if (preview.rows().size() > preview.firstRow() - 1) {
            table.setTopIndex(Math.max(0, preview.firstRow() - 1 - ABOVE));
        }
    }

    private void column(String title, int style) {
        new TableColumn(table, style).setText(title.replace("&", "&&"));
    }

    private static String title(Kind kind) {
        String unit = kind.unit().isEmpty() ? "" : " (" + kind.unit() + ")";
        return switch (kind.role()) {
            case TIME -> "time";
            case COUNT -> "counts";
            case CHANNEL -> kind.name() + unit;
            case UNIT -> "unit";
            case NONE -> "not read";
        };
    }

    private static String words(RowKind kind) {
        return switch (kind) {
            case ABOVE -> "above";
            case NAMES -> "names";
            case UNITS -> "units";
            case DATA -> "data";
            case REMARK -> "left out";
        };
    }

    private void tint(TableItem item, RowKind kind, List<Kind> kinds) {
        boolean data = kind == RowKind.DATA;
        item.setForeground(0, look.colour(Palette.QUIET));
        item.setForeground(1, look.colour(Palette.QUIET));
        int channel = 0;
        for (int c = 0; c < kinds.size(); c++) {
            ColumnRole role = kinds.get(c).role();
            RGB tint = !data ? Palette.BAR : role == ColumnRole.TIME ? Palette.tint(Palette.SKY, 2 * TINT)
                    : role == ColumnRole.CHANNEL ? Palette.tint(channel % 2 == 0 ? Palette.GREEN : Palette.ORANGE, TINT) : null;
            channel += role == ColumnRole.CHANNEL ? 1 : 0;
            if (tint != null) {
                item.setBackground(c + 2, look.colour(tint));
            }
            boolean quiet = kind == RowKind.ABOVE || kind == RowKind.REMARK || data && role != ColumnRole.TIME
                    && role != ColumnRole.CHANNEL && role != ColumnRole.UNIT;
            if (quiet) {
                item.setForeground(c + 2, look.colour(Palette.QUIET));
            }
            if (kind == RowKind.NAMES) {
                item.setFont(c + 2, look.font(-1, true));
            }
        }
    }
}
