// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave.importing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Group;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.probeleaf.schematic.quantity.BenchValue;
import org.probeleaf.schematic.quantity.Quantity;
import org.probeleaf.schematic.quantity.QuantityKind;
import org.probeleaf.waveform.format.ImportOptions;
import org.probeleaf.waveform.format.TextPreview;

/** The fields that say how a capture is to be read. What is left as it is found is found anew in each file. */
final class ReadingFields {

    private static final char[] DELIMITERS = {',', ';', '\t', ' ', '|'};
    private static final List<String> DELIMITER_WORDS = List.of("comma", "semicolon", "tab", "spaces", "bar |");
    private static final char[] DECIMALS = {'.', ','};
    private static final List<String> DECIMAL_WORDS = List.of("point", "comma");

    private final Group group;
    private final Runnable changed;
    private final Combo delimiter;
    private final Combo decimal;
    private final Text firstRow;
    private final Combo time;
    private final Text interval;
    private final Text scale;
    private final Text names;
    private boolean telling = true;

    /** @param changed called when the person changed something */
    ReadingFields(Composite parent, Runnable changed) {
        this.changed = changed;
        group = new Group(parent, SWT.NONE);
        group.setText("How it is read");
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 8;
        layout.marginHeight = 8;
        layout.verticalSpacing = 7;
        group.setLayout(layout);
        delimiter = combo("&Separator", DELIMITER_WORDS);
        decimal = combo("&Decimal sign", DECIMAL_WORDS);
        firstRow = text("First &row of data", "as found");
        time = combo("&Time", List.of());
        interval = text("&Interval or rate", "as found; 2us, 500kHz");
        scale = text("&One unit is", "as found; 10mV");
        names = text("&Names", "as found; CLK, RD");
    }

    Composite control() {
        return group;
    }

    private Combo combo(String label, List<String> words) {
        new Label(group, SWT.NONE).setText(label + ":");
        Combo combo = new Combo(group, SWT.READ_ONLY);
        GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
        data.widthHint = 190;
        combo.setLayoutData(data);
        List<String> items = new ArrayList<>(List.of("as found"));
        items.addAll(words);
        combo.setItems(items.toArray(String[]::new));
        combo.select(0);
        combo.addListener(SWT.Selection, e -> tell());
        return combo;
    }

    private Text text(String label, String message) {
        new Label(group, SWT.NONE).setText(label + ":");
        Text text = new Text(group, SWT.BORDER);
        GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
        data.widthHint = 150;
        text.setLayoutData(data);
        text.setMessage(message);
        text.addListener(SWT.Modify, e -> tell());
        return text;
    }

    private void tell() {
        if (telling) {
            changed.run();
        }
    }

    /**
     * What is said.
     *
     * @throws IllegalArgumentException with one sentence for a person where a field makes no sense
     */
    ImportOptions options() {
        ImportOptions options = ImportOptions.none();
        if (delimiter.getSelectionIndex() > 0) {
            options = options.withDelimiter(DELIMITERS[delimiter.getSelectionIndex() - 1]);
        }
        if (decimal.getSelectionIndex() > 0) {
            options = options.withDecimal(DECIMALS[decimal.getSelectionIndex() - 1]);
        }
        if (!firstRow.getText().isBlank()) {
            if (!firstRow.getText().strip().matches("[1-9]\\d{0,8}")) {
                throw new IllegalArgumentException("The first row of data is a number from 1 on.");
            }
            options = options.withFirstRow(Integer.parseInt(firstRow.getText().strip()));
        }
        if (time.getSelectionIndex() > 0) {
            options = options.withTimeColumn(time.getSelectionIndex() - 1);
        }
        if (!interval.getText().isBlank()) {
            options = options.withInterval(interval(interval.getText().strip()));
        }
        if (!scale.getText().isBlank()) {
            options = options.withScale(value(scale.getText().strip(), QuantityKind.VOLTAGE_DC,
                    "What one unit of the file is, is said in volts, as 10mV."));
        }
        List<String> all = Arrays.stream(names.getText().split("[,;]")).map(String::strip).filter(n -> !n.isEmpty()).toList();
        return options.withNames(all);
    }

    private static double interval(String text) {
        String wrong = "The distance of samples is a time or a rate, as 2us or 500kHz.";
        boolean rate = text.matches(".*(?:[Hh][Zz]|[Ss]a?/s)");
        double value = rate ? 1 / value(text.replaceFirst("[Ss]a?/s", "Hz").replaceFirst("[Hh][Zz]", "Hz"), QuantityKind.FREQUENCY,
                wrong) : value(text, QuantityKind.TIME, wrong);
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(wrong);
        }
        return value;
    }

    private static double value(String text, QuantityKind kind, String wrong) {
        try {
            Quantity quantity = BenchValue.parse(text, kind).quantity();
            if (quantity.kind() == kind) {
                return quantity.value();
            }
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(wrong, e);
        }
        throw new IllegalArgumentException(wrong);
    }

    /** Puts options into the fields, as those that a job keeps. */
    void fill(ImportOptions options) {
        telling = false;
        delimiter.select(options.delimiter() == null ? 0 : 1 + new String(DELIMITERS).indexOf(options.delimiter()));
        decimal.select(options.decimal() == null ? 0 : 1 + new String(DECIMALS).indexOf(options.decimal()));
        firstRow.setText(options.firstRow() > 0 ? String.valueOf(options.firstRow()) : "");
        columns(Math.max(options.timeColumn(), 0), null);
        time.select(options.timeColumn() + 1);
        interval.setText(Double.isNaN(options.interval()) ? "" : BenchNumber.text(options.interval(), "s"));
        scale.setText(Double.isNaN(options.scale()) ? "" : BenchNumber.text(options.scale(), "V"));
        names.setText(String.join(", ", options.names()));
        telling = true;
    }

    /** Shows what was found where nothing is said; what is for texts only is off for others. */
    void found(TextPreview preview, boolean text) {
        telling = false;
        found(delimiter, preview == null ? null : preview.delimiter() == 0 ? "one column"
                : word(DELIMITERS, DELIMITER_WORDS, preview.delimiter()));
        found(decimal, preview == null ? null : word(DECIMALS, DECIMAL_WORDS, preview.decimal()));
        firstRow.setMessage(preview == null ? "as found" : "as found: " + preview.firstRow());
        if (preview != null) {
            int said = time.getSelectionIndex();
            columns(Math.max(said - 1, preview.columns().size()), preview);
            time.select(Math.max(0, said));
        }
        for (org.eclipse.swt.widgets.Control c : new org.eclipse.swt.widgets.Control[] {delimiter, decimal, firstRow, time}) {
            c.setEnabled(text);
        }
        telling = true;
    }

    private static String word(char[] signs, List<String> words, char sign) {
        int at = new String(signs).indexOf(sign);
        return at < 0 ? String.valueOf(sign) : words.get(at);
    }

    private static void found(Combo combo, String what) {
        int said = combo.getSelectionIndex();
        combo.setItem(0, what == null ? "as found" : "as found: " + what);
        combo.select(said);
    }

    private void columns(int n, TextPreview preview) {
        List<String> items = new ArrayList<>();
        int found = -1;
        for (int c = 0; preview != null && c < preview.columns().size() && found < 0; c++) {
            found = preview.columns().get(c).role() == TextPreview.ColumnRole.TIME ? c : -1;
        }
        items.add(preview == null || time.getSelectionIndex() > 0 ? "as found" : found < 0 ? "as found: no column"
                : "as found: column " + (found + 1));
        items.add("no column");
        for (int c = 0; c < n; c++) {
            items.add("column " + (c + 1));
        }
        time.setItems(items.toArray(String[]::new));
    }
}
