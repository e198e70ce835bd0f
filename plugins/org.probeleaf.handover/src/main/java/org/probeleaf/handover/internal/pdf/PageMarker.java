// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover.internal.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

import org.probeleaf.handover.internal.layout.PageLayout;
import org.probeleaf.handover.internal.layout.Segment;
import org.probeleaf.handover.internal.paint.Canvas;
import org.probeleaf.handover.internal.paint.Card;
import org.probeleaf.handover.internal.paint.Sign;
import org.probeleaf.handover.internal.paint.Tint;
import org.probeleaf.handover.internal.paint.TypeFace;
import org.probeleaf.handover.internal.pdf.Annotations.Saying;
import org.probeleaf.handover.plot.PdfPlot;
import org.probeleaf.handover.wave.Wave;
import org.probeleaf.job.JobState;
import org.probeleaf.job.mark.CaptureMark;
import org.probeleaf.job.mark.LabelMark;
import org.probeleaf.job.mark.Mark;
import org.probeleaf.job.mark.NoteMark;
import org.probeleaf.job.mark.ReadingMark;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.waveform.plot.Plot;

/** Marks up one page: bands of nets first, then their names, then cards, the legend last; later ones lie on top. */
final class PageMarker {

    /** Width and strength of a net's band. */
    private static final double BAND = 5.6;
    private static final double BAND_OPACITY = 0.62;
    /** How much better the place for a narrower card must be. */
    private static final double OTHER_SHAPE = 12;

    private final int page;
    private final double unit;
    private final double line;
    private final JobState state;
    private final List<Wave> waves;
    private final Emphasis emphasis;
    private final Annotations annotations;
    private final PageLayout layout;
    private final TypeFace face;

    /**
     * @param unit points that one design point takes on the page
     * @param line the same for the bands of nets, which should not reach the next wire
     */
    PageMarker(int page, double unit, double line, JobState state, List<Wave> waves, Emphasis emphasis,
            Annotations annotations, PageLayout layout, TypeFace face) {
        this.page = page;
        this.unit = unit;
        this.line = line;
        this.state = state;
        this.waves = waves;
        this.emphasis = emphasis;
        this.annotations = annotations;
        this.layout = layout;
        this.face = face;
    }

    /** A card that waits for its place. */
    private record Waiting(Mark mark, List<Card> shapes, Saying saying, Tint tint) {

        Card card() {
            return shapes.get(0);
        }

        boolean isMoved() {
            return mark.card() != null;
        }
    }

    void mark(LegendMaker legend) throws IOException {
        List<Waiting> cards = cards();
        cards.forEach(c -> layout.keepVisible(c.mark().at()));
        emphasis.bodies(page).forEach(layout::part);
        List<Map.Entry<Net, Tint>> nets = emphasis.nets().entrySet().stream()
                .filter(e -> emphasis.shows(e.getKey(), page)).toList();
        for (Map.Entry<Net, Tint> entry : nets) {
            band(entry.getKey(), entry.getValue());
        }
        List<Placed> moved = new ArrayList<>();
        cards.stream().filter(Waiting::isMoved).forEach(c -> moved.add(new Placed(c, c.card(),
                layout.moved(c.mark().at(), box(c.mark(), c.card().width(), c.card().height())))));
        NetNamer namer = new NetNamer(page, unit, emphasis, annotations, layout, face);
        for (Map.Entry<Net, Tint> entry : nets) {
            namer.name(entry.getKey(), entry.getValue());
        }
        for (LabelMark label : state.labels()) {
            if (label.page() == page && !emphasis.onNet(label)) {
                namer.nameSpot(label);
            }
        }
        for (Placed p : moved) {
            put(p);
        }
        for (Waiting c : cards) {
            if (!c.isMoved()) {
                put(placed(c));
            }
        }
        legend.put(page, annotations, layout);
    }

    /** A card in its shape and place. */
    private record Placed(Waiting waiting, Card card, Box box) {
    }

    private Placed placed(Waiting c) {
        Point at = c.mark().at();
        Card card = c.shapes().stream().min(Comparator.comparingDouble(s -> layout.cardCost(at, s.width(), s.height())
                + (s == c.card() ? 0 : OTHER_SHAPE))).orElseThrow();
        return new Placed(c, card, layout.card(at, card.width(), card.height()));
    }

    private List<Waiting> cards() {
        List<Waiting> list = new ArrayList<>();
        for (ReadingMark r : state.readings()) {
            if (r.page() == page) {
                list.add(new Waiting(r, Card.of(r, face, unit), new Saying(Layer.READINGS, name(r.id()), "Reading",
                        Sayings.of(r), r.when()), Sign.of(r.verdict()).tint()));
            }
        }
        for (CaptureMark c : state.captures()) {
            if (c.page() == page) {
                Wave wave = waves.stream().filter(w -> w.mark().id().equals(c.id())).findFirst().orElse(null);
                list.add(new Waiting(c, Card.of(c, wave, picture(wave), face, unit), new Saying(Layer.WAVEFORMS, name(c.id()),
                        "Waveform", Sayings.of(c, wave), c.when()), Tint.BLUE));
            }
        }
        for (NoteMark n : state.notes()) {
            if (n.page() == page) {
                list.add(new Waiting(n, Card.of(n, face, unit), new Saying(Layer.NOTES, name(n.id()), "Note",
                        Sayings.of(n), n.when()), Tint.BLACK));
            }
        }
        return list;
    }

    /** The first trace, as wide as its card. */
    private Canvas.Drawn picture(Wave wave) {
        Plot plot = wave == null ? null : wave.thumbnail(Card.WAVE_WIDTH, Card.WAVE_HEIGHT).orElse(null);
        return plot == null ? null : (content, left, top) -> new PdfPlot(face).draw(content, plot, left, top, unit);
    }

    private String name(String id) {
        return "probeleaf-" + id + "-" + page;
    }

    /** Where a person moved the card of a mark. */
    static Box box(Mark mark, double width, double height) {
        double x = mark.at().x() + mark.card().dx();
        double y = mark.at().y() + mark.card().dy();
        return new Box(x, y, x + width, y + height);
    }

    private void band(Net net, Tint tint) throws IOException {
        List<List<Point>> lines = new ArrayList<>();
        net.wires().stream().filter(w -> w.page() == page).forEach(w -> lines.add(w.points()));
        List<List<Point>> ends = emphasis.pins(net, page).stream().map(List::of).toList();
        List<List<Point>> all = new ArrayList<>(lines);
        all.addAll(ends);
        Box box = all.stream().flatMap(List::stream).map(Box::of).reduce(Box::union).orElseThrow()
                .grow(BAND * line);
        Saying saying = new Saying(Layer.NETS, name("net-" + net.id()), "Traced net",
                Sayings.of(net, emphasis.title(net), state.netlist()), annotations.now());
        annotations.ink(saying, box, all, tint, canvas -> {
            canvas.band(all, tint, BAND * line, BAND_OPACITY);
            // The ends at pins come out darker: here the net stops.
            canvas.band(ends, tint, BAND * 1.25 * line, BAND_OPACITY);
        });
    }

    private void put(Placed p) throws IOException {
        Point at = p.waiting().mark().at();
        Box box = p.box();
        Segment leader = PageLayout.leader(at, box);
        Box all = box.union(Box.of(at)).grow(3 * unit);
        annotations.callOut(p.waiting().saying(), all, box, leader, p.waiting().tint(), canvas -> {
            p.card().paintLeader(canvas, at, leader.b());
            p.card().paint(canvas, box);
        });
    }
}
