// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.RowData;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.probeleaf.job.change.JudgeCaptureBy;
import org.probeleaf.job.mark.CaptureMark;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.waveform.compare.Comparison;
import org.probeleaf.waveform.judge.Verdict;
import org.probeleaf.waveform.plot.Ink;
import org.probeleaf.workbench.look.Look;
import org.probeleaf.workbench.look.Palette;
import org.probeleaf.workbench.session.HeldAgainst;
import org.probeleaf.workbench.session.LoadedCapture;
import org.probeleaf.workbench.session.LoadedTrace;
import org.probeleaf.workbench.session.Selection;
import org.probeleaf.workbench.session.SheetSession;
import org.probeleaf.workbench.view.Head;
import org.probeleaf.workbench.view.PlainTable;
import org.probeleaf.workbench.view.SessionView;
import org.probeleaf.workbench.wave.importing.ReadOtherwiseDialog;

/** The captures of the job as plots: moved, drawn apart, measured with two cursors, judged, and laid on a good one. */
public final class WaveformView extends SessionView {

    /** More traces than these over each other are no help to begin with. */
    private static final int FEW = 4;
    private static final double REACH = 3;

    private Look look;
    private PlainTable<CaptureMark> list;
    private ChannelList channels;
    private LevelChooser levels;
    private ReferenceChooser against;
    private Button difference;
    private Button stacked;
    private Button snap;
    private PlotCanvas plot;
    private Label readout;
    private FindingsPane findings;
    private PlainTable<FigureRow> figures;
    private List<CaptureMark> captures = List.of();
    private final List<CaptureMark> files = new ArrayList<>();
    private String shown;
    private CaptureMark reference;

    @Override
    protected void createContent(Composite parent) {
        look = new Look(parent);
        Head.column(parent);
        SashForm parts = new SashForm(parent, SWT.HORIZONTAL);
        parts.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        SashForm left = new SashForm(parts, SWT.VERTICAL);
        lists(column(left), column(left));
        Composite middle = column(parts);
        tools(middle);
        plot = new PlotCanvas(middle, this::readOut);
        plot.control().setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        readout = new Label(middle, SWT.NONE);
        readout.setLayoutData(new GridData(SWT.FILL, SWT.END, true, false));
        findings = new FindingsPane(column(parts));
        figures = new PlainTable<>(column(parts), FigureRow.class, f -> { });
        figures.column("Figure", 36, 84, FigureRow::name, null);
        figures.column("Value", 34, 70, FigureRow::value, null);
        figures.column("Give or take", 30, 70, FigureRow::uncertainty, null);
        figures.hint("The figures of the capture stand here.");
        parts.setWeights(15, 50, 17, 18);
    }

    private void lists(Composite upper, Composite lower) {
        list = new PlainTable<>(upper, CaptureMark.class, this::go);
        list.column("Capture", 60, 90, CaptureMark::fileName, c -> look.icon("wave"));
        list.column("At", 40, 60, c -> c.place().text(), null);
        list.hint("Select a pin or a net on the sheet and press C to pin a capture there: text of a scope or a logger, VCD,"
                + " WAV, a photograph of a screen.");
        list.onChoice(this::choose);
        list.offer("Read otherwise\u2026", c -> session().filter(s -> !s.readOnly())
                .ifPresent(s -> ReadOtherwiseDialog.ask(getSite().getShell(), s, c)));
        channels = new ChannelList(lower, this::draw);
        stacked = Tools.check(lower, "Stacked", "Each trace in a pane of its own", this::draw);
    }

    private static Composite column(Composite parent) {
        Composite column = new Composite(parent, SWT.NONE);
        Head.column(column);
        return column;
    }

    private void tools(Composite parent) {
        Composite row = new Composite(parent, SWT.NONE);
        row.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false));
        RowLayout layout = new RowLayout(SWT.HORIZONTAL);
        layout.center = true;
        layout.spacing = 6;
        row.setLayout(layout);
        levels = new LevelChooser(row, this::judgeBy);
        levels.control().setLayoutData(new RowData(165, SWT.DEFAULT));
        against = new ReferenceChooser(row, this::compareWith, this::compareWithFile);
        against.control().setLayoutData(new RowData(205, SWT.DEFAULT));
        difference = Tools.check(row, "Difference", "The capture less the reference, in a strip of its own", this::draw);
        snap = Tools.check(row, "Snap", "Cursors go to edges that are near", () -> plot.snap(snap.getSelection()));
        Tools.button(row, look.icon("fit"), "Show all (Home)", () -> plot.showAll());
        Tools.button(row, look.icon("help"), "Keys on the plot (?)", () -> plot.toggleKeys());
        Button export = new Button(row, SWT.PUSH);
        export.setText("Export\u2026");
        export.setToolTipText("As PDF, SVG or PNG, as it is seen");
        export.addListener(SWT.Selection, e -> PlotExport.ask(getSite().getShell(), plot.plot(), exportName(), look));
    }

    private String exportName() {
        return mark(shown).map(m -> m.fileName().replaceFirst("\\.[^.]+$", "")).orElse("waveform");
    }

    @Override
    protected void refresh() {
        List<String> before = captures.stream().map(CaptureMark::id).toList();
        captures = facts().map(f -> f.state().captures()).orElse(List.of());
        list.show(captures);
        List<String> now = captures.stream().map(CaptureMark::id).toList();
        if (now.size() == before.size() + 1 && now.subList(0, before.size()).equals(before)) {
            // Who pins a capture wants to see that one.
            shown = now.get(before.size());
        }
        String selected = session().flatMap(SheetSession::selectedMark).orElse(null);
        if (captures.stream().anyMatch(c -> c.id().equals(selected))) {
            shown = selected;
        } else if (captures.stream().noneMatch(c -> c.id().equals(shown))) {
            shown = captures.isEmpty() ? null : captures.get(captures.size() - 1).id();
        }
        if (reference != null && !captures.contains(reference) && !files.contains(reference)) {
            reference = captures.stream().filter(c -> c.id().equals(reference.id())).findFirst().orElse(null);
        }
        draw();
    }

    private void choose(CaptureMark capture) {
        shown = capture.id();
        draw();
    }

    private void go(CaptureMark capture) {
        choose(capture);
        session().ifPresent(s -> {
            Selection there = facts().map(f -> f.at(capture.page(), capture.at(), REACH))
                    .orElse(Selection.spot(capture.page(), capture.at()));
            s.selectMark(capture.id(), there);
            s.reveal(capture.page(), Box.of(capture.at()).grow(60));
        });
    }

    private void judgeBy(String by) {
        Optional<CaptureMark> mark = mark(shown);
        if (mark.isPresent() && !mark.get().judgedBy().equals(by)) {
            session().ifPresent(s -> s.apply(new JudgeCaptureBy(shown, by, Instant.now())));
        } else {
            draw();
        }
    }

    private void compareWith(CaptureMark other) {
        reference = other;
        draw();
    }

    private void compareWithFile(Path file) {
        mark(shown).ifPresent(m -> session().ifPresent(s -> {
            CaptureMark other = s.captures().outside(file, m);
            files.add(other);
            compareWith(other);
        }));
    }

    private Optional<CaptureMark> mark(String id) {
        return captures.stream().filter(c -> c.id().equals(id)).findFirst();
    }

    private Optional<LoadedCapture> loaded(CaptureMark mark) {
        return session().flatMap(s -> s.captures().get(mark));
    }

    private void draw() {
        CaptureMark mark = mark(shown).orElse(null);
        LoadedCapture capture = mark == null ? null : loaded(mark).orElse(null);
        offer(mark);
        list.select(mark);
        channels.show(capture == null ? List.of() : capture.traces(), FEW);
        LoadedTrace measured = channels.measured();
        LoadedTrace known = reference == null || reference.id().equals(shown) ? null
                : loaded(reference).flatMap(r -> r.comparableWith(measured)).orElse(null);
        HeldAgainst by = measured == null ? HeldAgainst.NOTHING : held(mark).forTrace(measured);
        Comparison comparison = known == null ? null
                : session().flatMap(s -> s.captures().answers().comparison(measured, known)).orElse(null);
        plot.show(shown, measured == null ? List.of() : new PlotPanes(channels.shown(), measured, stacked.getSelection(),
                by.thresholds(), known == null ? null : known.plot().as(reference.fileName(), Ink.REFERENCE),
                comparison == null ? null : comparison.overlay(), difference.getSelection()).panes(),
                measured == null ? new double[0] : measured.edges());
        figures.show(measured == null ? List.of() : FigureRow.of(measured));
        findings.show(findings(measured, by, comparison));
        readOut();
    }

    /** What may be chosen for the capture that is shown. */
    private void offer(CaptureMark mark) {
        levels.show(mark == null ? "" : mark.judgedBy(), held(mark).guess());
        levels.control().setEnabled(mark != null);
        List<CaptureMark> others = new ArrayList<>(captures.stream().filter(c -> !c.id().equals(shown)).toList());
        others.addAll(files);
        Net net = net(mark);
        against.show(others, o -> files.contains(o) || net != null && net.equals(net(o)), reference);
        Tools.shows(difference, reference != null && mark != null);
    }

    private HeldAgainst held(CaptureMark mark) {
        return mark == null || facts().isEmpty() ? HeldAgainst.NOTHING
                : session().map(s -> s.captures().answers().heldAgainst(facts().get(), mark)).orElse(HeldAgainst.NOTHING);
    }

    private Net net(CaptureMark mark) {
        return mark == null ? null : facts().map(f -> f.at(mark.page(), mark.at(), REACH).net()).orElse(null);
    }

    private List<Finding> findings(LoadedTrace measured, HeldAgainst by, Comparison comparison) {
        List<Finding> all = new ArrayList<>();
        if (measured != null) {
            if (comparison != null) {
                all.add(Finding.of(comparison, reference.fileName(), measured.unit()));
            } else if (reference != null && !reference.id().equals(shown)) {
                loaded(reference).map(r -> Finding.notCompared(r, measured)).ifPresent(all::add);
            }
            if (measured.video() != null) {
                all.add(Finding.of(measured.video()));
            }
            session().flatMap(s -> s.captures().answers().judgement(measured, by.thresholds()))
                    .filter(j -> j.verdict() != Verdict.VIDEO).ifPresent(j -> all.add(Finding.of(measured, j, by)));
        }
        return all;
    }

    /** What the cursors say, or what is in the way. */
    private void readOut() {
        LoadedCapture capture = mark(shown).flatMap(this::loaded).orElse(null);
        String words = "";
        if (capture != null && capture.problem() != null) {
            words = capture.mark().fileName() + ": " + capture.problem();
        } else if (capture != null && channels.measured() != null) {
            words = CursorWords.of(channels.measured().plot(), plot.cursors().at(0), plot.cursors().at(1), plot.pixels(1));
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
        if (!Objects.equals(selected, shown) && captures.stream().anyMatch(c -> c.id().equals(selected))) {
            shown = selected;
            draw();
        }
    }

    @Override
    public void setFocus() {
        plot.control().setFocus();
    }
}
