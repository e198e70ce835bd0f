// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.probeleaf.job.mark.CaptureMark;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.quantity.BenchValue;
import org.probeleaf.schematic.quantity.QuantityKind;
import org.probeleaf.waveform.measure.Measures;
import org.probeleaf.waveform.measure.Si;
import org.probeleaf.waveform.plot.Ink;
import org.probeleaf.waveform.plot.PlotLevel;
import org.probeleaf.waveform.plot.PlotTrace;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;
import org.probeleaf.workbench.session.LoadedCapture;
import org.probeleaf.workbench.session.Selection;
import org.probeleaf.workbench.session.SheetSession;
import org.probeleaf.workbench.view.Head;
import org.probeleaf.workbench.view.PlainTable;
import org.probeleaf.workbench.view.SessionView;

/** The captures of the job as plots: moved, drawn apart, measured with two cursors, held against a threshold or another one. */
public final class WaveformView extends SessionView {

    private static final String NOTHING = "compare with nothing";

    private Look look;
    private PlainTable<CaptureMark> list;
    private PlainTable<FigureRow> figures;
    private PlotCanvas plot;
    private Label readout;
    private Text threshold;
    private Combo against;
    private List<CaptureMark> captures = List.of();
    private String shown;
    private String reference;

    @Override
    protected void createContent(Composite parent) {
        look = new Look(parent);
        Head.column(parent);
        SashForm parts = new SashForm(parent, SWT.HORIZONTAL);
        parts.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        Composite left = column(parts);
        list = new PlainTable<>(left, CaptureMark.class, this::go);
        list.column("Capture", 60, 90, CaptureMark::fileName, c -> look.icon("wave"));
        list.column("At", 40, 60, c -> c.place().text(), null);
        list.hint("Select a pin or a net on the sheet and press C to pin a capture there: text of a scope or a logger, VCD,"
                + " WAV.");
        list.onChoice(this::choose);
        Composite middle = column(parts);
        tools(middle);
        plot = new PlotCanvas(middle, this::readOut);
        plot.control().setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        readout = new Label(middle, SWT.NONE);
        readout.setLayoutData(new GridData(SWT.FILL, SWT.END, true, false));
        Composite right = column(parts);
        figures = new PlainTable<>(right, FigureRow.class, f -> { });
        figures.column("Figure", 36, 84, FigureRow::name, null);
        figures.column("Value", 34, 70, FigureRow::value, null);
        figures.column("Give or take", 30, 70, FigureRow::uncertainty, null);
        figures.hint("The figures of the capture stand here.");
        parts.setWeights(20, 56, 24);
    }

    private static Composite column(Composite parent) {
        Composite column = new Composite(parent, SWT.NONE);
        Head.column(column);
        return column;
    }

    private void tools(Composite parent) {
        Composite row = new Composite(parent, SWT.NONE);
        row.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false));
        row.setLayout(new GridLayout(4, false));
        threshold = new Text(row, SWT.BORDER);
        threshold.setMessage("Threshold: 2.0V");
        threshold.setLayoutData(width(110));
        threshold.addListener(SWT.Modify, e -> draw());
        against = new Combo(row, SWT.READ_ONLY);
        against.setLayoutData(width(210));
        against.addListener(SWT.Selection, e -> {
            int at = against.getSelectionIndex() - 1;
            reference = at < 0 ? null : captures.get(at).id();
            draw();
        });
        button(row, "Show all", () -> plot.showAll());
        button(row, "Export\u2026", () -> PlotExport.ask(getSite().getShell(), plot.plot(), look));
    }

    private static GridData width(int pixels) {
        GridData data = new GridData(SWT.BEGINNING, SWT.CENTER, false, false);
        data.widthHint = pixels;
        return data;
    }

    private static void button(Composite parent, String words, Runnable action) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(words);
        button.addListener(SWT.Selection, e -> action.run());
    }

    @Override
    protected void refresh() {
        captures = facts().map(f -> f.state().captures()).orElse(List.of());
        list.show(captures);
        String selected = session().flatMap(SheetSession::selectedMark).orElse(null);
        if (captures.stream().anyMatch(c -> c.id().equals(selected))) {
            shown = selected;
        } else if (captures.stream().noneMatch(c -> c.id().equals(shown))) {
            shown = captures.isEmpty() ? null : captures.get(captures.size() - 1).id();
        }
        List<String> names = new ArrayList<>(List.of(NOTHING));
        captures.forEach(c -> names.add(c.fileName() + " at " + c.place().text()));
        against.setItems(names.toArray(String[]::new));
        int at = captures.stream().map(CaptureMark::id).toList().indexOf(reference);
        against.select(at + 1);
        draw();
    }

    private void choose(CaptureMark capture) {
        shown = capture.id();
        draw();
    }

    private void go(CaptureMark capture) {
        choose(capture);
        session().ifPresent(s -> {
            Selection there = facts().map(f -> f.at(capture.page(), capture.at(), 3))
                    .orElse(Selection.spot(capture.page(), capture.at()));
            s.selectMark(capture.id(), there);
            s.reveal(capture.page(), Box.of(capture.at()).grow(60));
        });
    }

    private Optional<LoadedCapture> loaded(String id) {
        return captures.stream().filter(c -> c.id().equals(id)).findFirst()
                .flatMap(c -> session().flatMap(s -> s.captures().get(c)));
    }

    private void draw() {
        LoadedCapture capture = loaded(shown).orElse(null);
        List<PlotTrace> traces = new ArrayList<>();
        List<PlotLevel> levels = new ArrayList<>();
        if (capture != null && capture.problem() == null) {
            if (reference != null && !reference.equals(shown)) {
                loaded(reference).filter(r -> !r.traces().isEmpty()).map(r -> r.traces().get(0)).ifPresent(t -> traces.add(
                        new PlotTrace("to compare", t.channel(), t.pyramid(), t.shift(), Ink.REFERENCE)));
            }
            traces.addAll(capture.traces());
            levels.addAll(levels(capture));
        }
        plot.show(traces, levels);
        figures.show(capture == null || capture.measures().isEmpty() ? List.of()
                : FigureRow.of(capture.measures().get(0), unit(capture)));
        readOut();
    }

    private static String unit(LoadedCapture capture) {
        return capture.traces().get(0).channel().unit();
    }

    /** The state levels of a single trace, and the threshold. */
    private List<PlotLevel> levels(LoadedCapture capture) {
        List<PlotLevel> levels = new ArrayList<>();
        if (capture.measures().size() == 1) {
            Measures m = capture.measures().get(0);
            String unit = unit(capture);
            if (m.levels() != null && m.levels().two()) {
                levels.add(new PlotLevel(m.levels().low(), "low " + Si.text(m.levels().low(), unit)));
                levels.add(new PlotLevel(m.levels().high(), "high " + Si.text(m.levels().high(), unit)));
            }
        }
        threshold().ifPresent(v -> levels.add(new PlotLevel(v, "threshold")));
        return levels;
    }

    private Optional<Double> threshold() {
        try {
            return threshold.getText().isBlank() ? Optional.empty()
                    : Optional.of(BenchValue.parse(threshold.getText(), QuantityKind.VOLTAGE_DC).quantity().value());
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** What the cursors say, or what is in the way. */
    private void readOut() {
        LoadedCapture capture = loaded(shown).orElse(null);
        String words = "";
        if (capture != null && capture.problem() != null) {
            words = capture.mark().fileName() + ": " + capture.problem();
        } else if (capture != null && !capture.traces().isEmpty()) {
            words = CursorWords.of(capture.traces().get(0), plot.cursor(0), plot.cursor(1));
        } else if (shown != null && capture == null) {
            words = "Reading the capture\u2026";
        }
        readout.setText(" " + words.replace("&", "&&"));
        readout.setForeground(look.colour(capture != null && capture.problem() != null ? Palette.VERMILLION
                : Palette.TEXT));
    }

    @Override
    public void capturesChanged() {
        draw();
    }

    @Override
    public void selectionChanged() {
        String selected = session().flatMap(SheetSession::selectedMark).orElse(null);
        if (!java.util.Objects.equals(selected, shown) && captures.stream().anyMatch(c -> c.id().equals(selected))) {
            shown = selected;
            draw();
        }
    }

    @Override
    public void setFocus() {
        plot.control().setFocus();
    }
}
