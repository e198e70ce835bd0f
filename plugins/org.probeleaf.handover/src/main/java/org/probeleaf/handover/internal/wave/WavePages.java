// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover.internal.wave;

import java.io.IOException;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.probeleaf.handover.internal.paint.Letters;
import org.probeleaf.handover.internal.paint.Sign;
import org.probeleaf.handover.internal.paint.TypeFace;
import org.probeleaf.handover.internal.pdf.Signature;
import org.probeleaf.handover.plot.PdfPlot;
import org.probeleaf.handover.wave.Wave;
import org.probeleaf.job.details.Hazard;
import org.probeleaf.job.details.JobDetails;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.waveform.judge.Judgement;
import org.probeleaf.waveform.plot.Plot;
import org.probeleaf.waveform.report.TraceReport;
import org.probeleaf.waveform.video.VideoSignal;

/** Pages with the waveforms of a job, each with its plot, what is said of it, and its figures. */
public final class WavePages {

    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("d MMMM uuuu, HH:mm", Locale.ENGLISH);
    private static final double PLOT = 176;
    /** A lane more makes the plot so much higher. */
    private static final double LANE = 18;
    private static final double MOST = 420;
    /** Units of a plot are made for screens; on paper they are a little smaller. */
    private static final double SCALE = 0.78;
    private static final double TITLE = 17;
    private static final double HEAD = 11;
    private static final double PLAIN = 8.6;
    private static final double SIGN = 5.6;
    private static final int COLUMNS = 3;
    private static final double ROW = 12.4;
    private static final double GAP = 20;
    /** More traces than these get no figures of their own. */
    private static final int MOST_TRACES = 4;

    private final PDDocument document;
    private final TypeFace face;
    private final Signature signature;
    private final PdfPlot plots;

    /** Pages are added to a document. */
    public WavePages(PDDocument document, Signature signature) throws IOException {
        this.document = document;
        this.signature = signature;
        this.face = TypeFace.in(document);
        this.plots = new PdfPlot(face);
    }

    /** Sets the pages. */
    public void put(JobDetails details, List<Wave> waves) throws IOException {
        String foot = String.join("   ", List.of("Waveforms", details.unit().strip(), signature.author().strip()).stream()
                .filter(s -> !s.isEmpty()).toList());
        try (PageFlow flow = new PageFlow(document, face, foot)) {
            head(flow, details);
            for (Wave wave : waves) {
                block(flow, wave);
            }
        }
    }

    private void head(PageFlow flow, JobDetails details) throws IOException {
        flow.text("Waveforms", Letters.strong(TITLE), 0);
        String made = DATE.format(signature.when().atZone(signature.zone()));
        flow.text(String.join(", ", List.of(details.unit().strip(), details.customer().strip(), signature.author().strip(), made)
                .stream().filter(s -> !s.isEmpty()).toList()), Letters.quiet(PLAIN + 0.6), 0);
        for (Hazard hazard : details.hazards()) {
            flow.text("Caution: " + hazard.title() + ". " + hazard.caution(), Letters.plain(PLAIN), 0);
        }
        if (!details.hazards().isEmpty()) {
            flow.text(Hazard.CLOSING, Letters.plain(PLAIN), 0);
        }
        flow.down(GAP * 0.6);
    }

    private void block(PageFlow flow, Wave wave) throws IOException {
        double height = Math.min(MOST, (wave.traces().isEmpty() ? 0 : PLOT) + wave.lanes().size() * LANE
                + (wave.traces().isEmpty() ? 40 : 0));
        Plot plot = wave.plot(PageFlow.WIDTH / SCALE, height / SCALE).orElse(null);
        List<TraceReport> traces = wave.report() == null ? List.of() : wave.report().traces();
        int rows = traces.isEmpty() ? 0 : (FigureWords.of(traces.get(0)).size() + COLUMNS - 1) / COLUMNS;
        flow.need(HEAD * 2 + (plot == null ? 0 : height) + rows * ROW + 3 * ROW);
        title(flow, wave);
        if (wave.problem() != null) {
            flow.text("This capture cannot be read: " + wave.problem() + ".", Letters.plain(PLAIN), 0);
        }
        if (plot != null) {
            flow.down(4);
            double top = flow.y();
            flow.canvas().drawn(new Point(PageFlow.MARGIN, top), (content, left, y) -> plots.draw(content, plot, left, y, SCALE));
            flow.down(height + 6);
        }
        for (TraceReport trace : traces.subList(0, Math.min(MOST_TRACES, traces.size()))) {
            trace(flow, trace, traces.size() > 1);
        }
        if (traces.size() > MOST_TRACES) {
            int more = traces.size() - MOST_TRACES;
            flow.text(more == 1 ? "The figures of one more trace are left out."
                    : "The figures of " + more + " more traces are left out.", Letters.quiet(PLAIN), 0);
        }
        if (!wave.mark().note().isEmpty()) {
            flow.text("Remark: " + wave.mark().note(), Letters.plain(PLAIN), 0);
        }
        source(flow, wave);
        flow.down(GAP);
    }

    private void title(PageFlow flow, Wave wave) throws IOException {
        Sign sign = Sign.of(wave);
        double indent = sign == Sign.NONE ? 0 : 2 * SIGN + 5;
        double top = flow.y();
        flow.text(wave.mark().place().text() + ", sheet " + wave.mark().page(), Letters.strong(HEAD), indent);
        if (sign != Sign.NONE) {
            sign.paint(flow.canvas(), new Point(PageFlow.MARGIN + SIGN, top + HEAD * 0.69), SIGN);
        }
    }

    private void trace(PageFlow flow, TraceReport trace, boolean named) throws IOException {
        Judgement judgement = trace.judgement();
        String verdict = judgement.verdict().word().replace('-', ' ');
        flow.text((named ? trace.name() + ": " : "") + verdict + ". " + String.join(" ", judgement.reasons()),
                Letters.plain(PLAIN), 0);
        VideoSignal video = trace.video();
        if (video != null) {
            flow.text("Composite video" + (video.system() == null ? "" : ", " + video.system().title()) + ". "
                    + String.join(" ", video.reasons()), Letters.plain(PLAIN), 0);
        }
        flow.down(3);
        List<FigureWords> figures = FigureWords.of(trace);
        int rows = (figures.size() + COLUMNS - 1) / COLUMNS;
        flow.need(rows * ROW);
        double wide = PageFlow.WIDTH / COLUMNS;
        for (int i = 0; i < figures.size(); i++) {
            double x = PageFlow.MARGIN + i / rows * wide;
            double y = flow.y() + (i % rows + 1) * ROW - 3.4;
            flow.canvas().text(new Point(x, y), face.clean(figures.get(i).name()), Letters.quiet(PLAIN - 0.6));
            flow.canvas().text(new Point(x + wide * 0.42, y), face.cut(face.clean(figures.get(i).value()), wide * 0.56, PLAIN - 0.6),
                    Letters.plain(PLAIN - 0.6));
        }
        flow.down(rows * ROW + 5);
    }

    /** Where the figures come from: the file, which the job keeps. */
    private void source(PageFlow flow, Wave wave) throws IOException {
        String held = wave.thresholds() == null ? "" : "; held against " + wave.thresholds().name();
        String when = DATE.format(wave.mark().when().atZone(signature.zone()));
        String print = wave.mark().sha256();
        flow.text(wave.mark().fileName() + ", pinned " + when + held + "; SHA-256 " + print, Letters.quiet(PLAIN - 1.6),
                0);
    }
}
