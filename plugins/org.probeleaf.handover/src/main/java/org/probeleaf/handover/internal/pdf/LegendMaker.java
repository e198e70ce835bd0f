// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover.internal.pdf;

import java.io.IOException;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.probeleaf.handover.internal.layout.PageLayout;
import org.probeleaf.handover.internal.paint.Legend;
import org.probeleaf.handover.internal.paint.Sign;
import org.probeleaf.handover.internal.paint.Tint;
import org.probeleaf.handover.internal.paint.TypeFace;
import org.probeleaf.handover.internal.pdf.Annotations.Saying;
import org.probeleaf.handover.wave.Wave;
import org.probeleaf.job.JobState;
import org.probeleaf.job.details.Hazard;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.netlist.Net;

/** Puts the legend on pages that have marks; hazards stand on every page. */
final class LegendMaker {

    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);
    private static final int MOST_NETS = 10;
    /** How much smaller the legend may be set where the page has no room for it. */
    private static final double SMALLER = 0.82;

    private final JobState state;
    private final List<Wave> waves;
    private final Emphasis emphasis;
    private final Signature signature;
    private final TypeFace face;
    private final double unit;
    private final List<String> told = new ArrayList<>();

    LegendMaker(JobState state, List<Wave> waves, Emphasis emphasis, Signature signature, TypeFace face, double unit) {
        this.state = state;
        this.waves = waves;
        this.emphasis = emphasis;
        this.signature = signature;
        this.face = face;
        this.unit = unit;
    }

    void put(int page, Annotations annotations, PageLayout layout) throws IOException {
        Legend legend = legend(page, unit);
        if (legend.isEmpty()) {
            return;
        }
        List<Legend.Form> forms = new ArrayList<>(legend.forms());
        forms.addAll(legend(page, unit * SMALLER).forms());
        Legend.Form form = best(forms, layout);
        Box box = layout.legend(form.width(), form.height());
        Saying saying = new Saying(Layer.LEGEND, "probeleaf-legend-" + page, "Legend", String.join("\n", told)
                + Sayings.cautions(state.details()), signature.when());
        annotations.text(saying, box.grow(unit), Tint.BLACK, canvas -> form.paint(canvas, box));
    }

    private Legend legend(int page, double size) {
        Legend legend = new Legend(face, size);
        told.clear();
        head(legend);
        hazards(legend);
        nets(legend, page);
        marks(legend, page);
        if (!state.details().hazards().isEmpty()) {
            legend.foot("Follow the maker's instructions and local electrical codes; leave work you are not licensed"
                    + " for to someone who is.");
        }
        return legend;
    }

    /** The form that covers least; of those that are about as good the plainest. */
    private static Legend.Form best(List<Legend.Form> forms, PageLayout layout) {
        Legend.Form best = null;
        double least = Double.MAX_VALUE;
        for (Legend.Form form : forms) {
            double cost = layout.legendCost(form.width(), form.height());
            if (cost < least - 25) {
                least = cost;
                best = form;
            }
        }
        return best;
    }

    private void head(Legend legend) {
        String unitName = state.details().unit().strip();
        String date = DATE.format(signature.when().atZone(signature.zone()));
        List<String> lines = new ArrayList<>();
        if (!unitName.isEmpty()) {
            lines.add(unitName);
        }
        lines.add(signature.author().isBlank() ? date : signature.author().strip() + ", " + date);
        legend.head("Marked-up sheet", lines);
    }

    private void hazards(Legend legend) {
        for (Hazard hazard : state.details().hazards()) {
            legend.caution("Caution: " + hazard.title());
            told.add("Caution: " + hazard.title());
        }
    }

    private void nets(Legend legend, int page) {
        List<Map.Entry<Net, Tint>> shown = emphasis.nets().entrySet().stream()
                .filter(e -> emphasis.shows(e.getKey(), page)).toList();
        for (Map.Entry<Net, Tint> e : shown.subList(0, Math.min(MOST_NETS, shown.size()))) {
            String text = "net " + emphasis.title(e.getKey());
            legend.net(text, e.getValue());
            told.add(e.getValue().title() + " band: " + text);
        }
        boolean own = state.labels().stream().anyMatch(l -> l.page() == page) || shown.stream()
                .anyMatch(e -> !emphasis.labels(e.getKey()).isEmpty());
        if (own) {
            legend.ownName("net name given on the bench");
            told.add("blue tag: net name given on the bench");
        }
    }

    private void marks(Legend legend, int page) {
        for (Sign sign : Sign.values()) {
            boolean reading = state.readings().stream().anyMatch(r -> r.page() == page && Sign.of(r.verdict()) == sign);
            boolean wave = sign != Sign.NONE && waves.stream().anyMatch(w -> w.mark().page() == page && Sign.of(w) == sign);
            if (reading || wave) {
                legend.sign(sign);
                told.add(sign.shape() + ": " + sign.words());
            }
        }
        if (state.captures().stream().anyMatch(c -> c.page() == page)) {
            legend.waveform("waveform");
            told.add("card with a trace: waveform");
        }
        if (state.notes().stream().anyMatch(n -> n.page() == page)) {
            legend.note("note");
            told.add("card with a yellow side: note");
        }
    }
}
