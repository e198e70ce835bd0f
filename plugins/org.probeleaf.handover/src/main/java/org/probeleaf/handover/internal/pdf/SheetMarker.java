// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover.internal.pdf;

import java.io.IOException;
import java.util.List;
import java.util.Set;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.probeleaf.drawing.SheetFile;
import org.probeleaf.drawing.primitive.Drawing;
import org.probeleaf.drawing.primitive.Text;
import org.probeleaf.handover.internal.layout.InkMap;
import org.probeleaf.handover.internal.layout.PageLayout;
import org.probeleaf.handover.internal.paint.TypeFace;
import org.probeleaf.handover.wave.Wave;
import org.probeleaf.job.JobSheet;
import org.probeleaf.job.JobState;
import org.probeleaf.schematic.geometry.Box;

/** Marks up the pages of one sheet file. */
public final class SheetMarker {

    /** The page on which a design point is a point: A4. */
    private static final double DESIGN_AREA = 842.0 * 595.0;
    private static final double SMALLEST_UNIT = 0.6;
    /** Marks are kept a little smaller than their design, so that a full sheet has room for them. */
    private static final double DENSITY = 0.88;
    /** Size of the letters of a card in units: where the sheet's own are smaller, so are the marks, within reason. */
    private static final double LETTERS = 6;
    private static final double LEAST_SHARE = 0.76;
    /** Most pixels of the rendering that tells where ink is, along the longer side. */
    private static final double INK_PIXELS = 1800;

    /** In a longer file a hazard stands on the first page and on those with marks, not on every one. */
    private static final int MOST_CAUTIONS = 60;

    private final JobState state;
    private final List<Wave> waves;
    private final Signature signature;
    private final Emphasis emphasis;

    /**
     * @param state     the job
     * @param nets      ids of further nets to emphasise
     * @param waves     captures, as they were read
     * @param signature stands on every annotation
     */
    public SheetMarker(JobState state, Set<String> nets, List<Wave> waves, Signature signature) {
        this.state = state;
        this.waves = waves;
        this.signature = signature;
        this.emphasis = new Emphasis(state, nets);
    }

    /**
     * Puts annotations on the pages of a document.
     *
     * @param document the sheet file, open to be saved
     * @param sheet    which of the job's files it is
     * @param file     the same file, open to be rendered
     */
    public void mark(PDDocument document, JobSheet sheet, SheetFile file) throws IOException {
        TypeFace face = TypeFace.in(document);
        Layers layers = new Layers(document);
        for (int i = 0; i < sheet.pageCount(); i++) {
            int page = sheet.firstPage() + i;
            boolean caution = sheet.pageCount() <= MOST_CAUTIONS || i == 0;
            if (!wanted(page, caution)) {
                continue;
            }
            PDPage pdf = document.getPage(i);
            PageFrame frame = new PageFrame(pdf);
            double w = frame.width();
            double h = frame.height();
            double lettering = lettering(file.draw(i + 1));
            double usual = Math.max(SMALLEST_UNIT, Math.sqrt(w * h / DESIGN_AREA) * DENSITY);
            double unit = Math.max(usual * LEAST_SHARE, Math.min(usual, lettering));
            double line = Math.max(unit * 0.6, Math.min(unit, lettering));
            double scale = Math.min(1, INK_PIXELS / Math.max(w, h));
            InkMap ink = InkMap.of(file.render(i + 1, scale, new Box(0, 0, w, h)), scale);
            Annotations annotations = new Annotations(document, pdf, frame, layers, face, signature);
            new PageMarker(page, unit, line, state, waves, emphasis, annotations, new PageLayout(ink, w, h, unit), face)
                    .mark(new LegendMaker(state, waves, emphasis, signature, face, unit));
        }
    }

    /** The unit that the larger of the sheet's own letters call for, or a very large one where it has none. */
    private static double lettering(Drawing drawing) {
        double[] sizes = drawing.texts().stream().filter(Text::visible).mapToDouble(Text::size).sorted().toArray();
        return sizes.length == 0 ? Double.MAX_VALUE : sizes[sizes.length * 3 / 4] / LETTERS;
    }

    private boolean wanted(int page, boolean caution) {
        return caution && !state.details().hazards().isEmpty()
                || state.labels().stream().anyMatch(m -> m.page() == page)
                || state.notes().stream().anyMatch(m -> m.page() == page)
                || state.readings().stream().anyMatch(m -> m.page() == page)
                || state.captures().stream().anyMatch(m -> m.page() == page)
                || emphasis.nets().keySet().stream().anyMatch(n -> emphasis.shows(n, page));
    }
}
