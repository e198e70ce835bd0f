// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover.internal.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.probeleaf.handover.internal.layout.PageLayout;
import org.probeleaf.handover.internal.layout.Segment;
import org.probeleaf.handover.internal.paint.Card;
import org.probeleaf.handover.internal.paint.Sign;
import org.probeleaf.handover.internal.paint.Tag;
import org.probeleaf.handover.internal.paint.Tint;
import org.probeleaf.handover.internal.paint.TypeFace;
import org.probeleaf.handover.internal.pdf.Annotations.Saying;
import org.probeleaf.job.JobState;
import org.probeleaf.job.mark.LabelMark;
import org.probeleaf.job.mark.Mark;
import org.probeleaf.job.mark.NoteMark;
import org.probeleaf.job.mark.ReadingMark;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Net;

/** Marks up one page: bands of nets first, then their names, then cards, the legend last; later ones lie on top. */
final class PageMarker {

    /** Width and strength of a net's band. */
    private static final double BAND = 5.6;
    private static final double BAND_OPACITY = 0.62;
    /** A piece of wire this long gets a name of its own, this far from the next. */
    private static final double LONG_WIRE = 150;
    private static final double NAMES_APART = 190;
    private static final int MOST_NAMES = 4;
    /** How much better the place for a narrower card must be. */
    private static final double OTHER_SHAPE = 12;

    private final int page;
    private final double unit;
    private final double line;
    private final JobState state;
    private final Emphasis emphasis;
    private final Annotations annotations;
    private final PageLayout layout;
    private final TypeFace face;

    /**
     * @param unit points that one design point takes on the page
     * @param line the same for the bands of nets, which should not reach the next wire
     */
    PageMarker(int page, double unit, double line, JobState state, Emphasis emphasis, Annotations annotations, PageLayout layout,
            TypeFace face) {
        this.page = page;
        this.unit = unit;
        this.line = line;
        this.state = state;
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
        for (Map.Entry<Net, Tint> entry : emphasis.nets().entrySet()) {
            if (emphasis.shows(entry.getKey(), page)) {
                band(entry.getKey(), entry.getValue());
            }
        }
        for (Map.Entry<Net, Tint> entry : emphasis.nets().entrySet()) {
            if (emphasis.shows(entry.getKey(), page)) {
                names(entry.getKey(), entry.getValue());
            }
        }
        for (LabelMark label : state.labels()) {
            if (label.page() == page && !emphasis.onNet(label)) {
                looseName(label);
            }
        }
        for (Waiting c : cards) {
            if (c.isMoved()) {
                layout.take(moved(c), c.mark().at());
            }
        }
        for (Waiting c : cards) {
            if (c.isMoved()) {
                place(c, c.card(), moved(c));
            } else {
                Point at = c.mark().at();
                Card card = c.shapes().stream().min(Comparator.comparingDouble(s -> layout.cardCost(at, s.width(),
                        s.height()) + (s == c.card() ? 0 : OTHER_SHAPE))).orElseThrow();
                place(c, card, layout.card(at, card.width(), card.height()));
            }
        }
        legend.put(page, annotations, layout);
    }

    private List<Waiting> cards() {
        List<Waiting> list = new ArrayList<>();
        for (ReadingMark r : state.readings()) {
            if (r.page() == page) {
                list.add(new Waiting(r, Card.of(r, face, unit), new Saying(Layer.READINGS, name(r.id(), 0), "Reading",
                        Sayings.of(r), r.when()), Sign.of(r.verdict()).tint()));
            }
        }
        for (NoteMark n : state.notes()) {
            if (n.page() == page) {
                list.add(new Waiting(n, Card.of(n, face, unit), new Saying(Layer.NOTES, name(n.id(), 0), "Note",
                        Sayings.of(n), n.when()), Tint.BLACK));
            }
        }
        return list;
    }

    private String name(String id, int count) {
        return "probeleaf-" + id + "-" + page + (count == 0 ? "" : "-" + count);
    }

    private static Box moved(Waiting c) {
        double x = c.mark().at().x() + c.mark().card().dx();
        double y = c.mark().at().y() + c.mark().card().dy();
        return new Box(x, y, x + c.card().width(), y + c.card().height());
    }

    private void band(Net net, Tint tint) throws IOException {
        List<List<Point>> lines = new ArrayList<>();
        net.wires().stream().filter(w -> w.page() == page).forEach(w -> lines.add(w.points()));
        List<List<Point>> ends = emphasis.pins(net, page).stream().map(List::of).toList();
        List<List<Point>> all = new ArrayList<>(lines);
        all.addAll(ends);
        Box box = all.stream().flatMap(List::stream).map(Box::of).reduce(Box::union).orElseThrow()
                .grow(BAND * line);
        Saying saying = new Saying(Layer.NETS, name("net-" + net.id(), 0), "Traced net",
                Sayings.of(net, emphasis.title(net), state.netlist()), annotations.now());
        annotations.ink(saying, box, all, tint, canvas -> {
            canvas.band(all, tint, BAND * line, BAND_OPACITY);
            // The ends at pins come out darker: here the net stops.
            canvas.band(ends, tint, BAND * 1.25 * line, BAND_OPACITY);
        });
    }

    /** Names a net along its wires: near the label's own spot, on the longest wire, and on other long ones. */
    private void names(Net net, Tint tint) throws IOException {
        List<Segment> wires = new ArrayList<>(Emphasis.segments(net, page));
        wires.sort(Comparator.comparingDouble(Segment::length).reversed());
        List<LabelMark> own = emphasis.labels(net);
        if (own.isEmpty()) {
            named(emphasis.title(net), false, net, tint, null, wires, null);
        }
        List<String> said = new ArrayList<>();
        for (LabelMark label : own) {
            if (!said.contains(label.text())) {
                said.add(label.text());
                named(label.text(), true, net, tint, label.page() == page ? label.at() : null, wires, label);
            }
        }
    }

    private void named(String text, boolean own, Net net, Tint tint, Point wanted, List<Segment> wires,
            LabelMark label) throws IOException {
        Tag tag = Tag.of(text, own, tint, face, unit);
        String id = label != null ? label.id() : "name-" + net.id();
        Saying saying = new Saying(Layer.LABELS, "", own ? "Net name" : "Traced net", own
                ? "Net name, given by the technician: " + text : "Net " + text,
                label != null ? label.when() : annotations.now());
        List<Box> put = new ArrayList<>();
        Optional<Segment> at = wanted == null ? Optional.empty()
                : wires.stream().min(Comparator.comparingDouble(s -> s.distance(wanted)));
        if (at.isPresent()) {
            layout.tag(at.get(), share(at.get(), wanted), tag.width(), tag.height()).ifPresent(put::add);
        }
        for (Segment wire : wires) {
            boolean needed = put.isEmpty() || wire.length() > LONG_WIRE * unit
                    && put.stream().allMatch(b -> b.centre().distance(wire.middle()) > NAMES_APART * unit);
            if (needed && put.size() < MOST_NAMES) {
                layout.tag(wire, 0.5, tag.width(), tag.height()).ifPresent(put::add);
            }
        }
        for (int i = 0; i < put.size(); i++) {
            Box box = put.get(i);
            annotations.text(named(saying, name(id, i)), box.grow(unit), own ? Tint.BLUE : tint,
                    canvas -> tag.paint(canvas, box));
        }
        if (put.isEmpty()) {
            Point spot = wanted != null ? wanted : !wires.isEmpty() ? wires.get(0).middle()
                    : emphasis.pins(net, page).get(0);
            apart(tag, spot, named(saying, name(id, 0)), own ? Tint.BLUE : Tint.BLACK);
        }
    }

    private static Saying named(Saying s, String name) {
        return new Saying(s.layer(), name, s.subject(), s.contents(), s.made());
    }

    private static double share(Segment wire, Point p) {
        double length = wire.length();
        return length == 0 ? 0 : Math.max(0, Math.min(1, ((p.x() - wire.a().x()) * (wire.b().x() - wire.a().x())
                + (p.y() - wire.a().y()) * (wire.b().y() - wire.a().y())) / (length * length)));
    }

    private void looseName(LabelMark label) throws IOException {
        Saying saying = new Saying(Layer.LABELS, name(label.id(), 0), "Net name",
                "Net name, given by the technician: " + label.text(), label.when());
        apart(Tag.of(label.text(), true, Tint.BLUE, face, unit), label.at(), saying, Tint.BLUE);
    }

    /** A tag that stands away from its spot, with a leader. */
    private void apart(Tag tag, Point spot, Saying saying, Tint tint) throws IOException {
        Box box = layout.card(spot, tag.width(), tag.height());
        Segment leader = PageLayout.leader(spot, box);
        annotations.callOut(saying, box.union(Box.of(spot)).grow(2 * unit), box, leader, tint, canvas -> {
            canvas.line(List.of(leader.a(), leader.b()), tint, 0.8 * unit);
            tag.paint(canvas, box);
        });
    }

    private void place(Waiting c, Card card, Box box) throws IOException {
        Point at = c.mark().at();
        Segment leader = PageLayout.leader(at, box);
        annotations.callOut(c.saying(), box.union(Box.of(at)).grow(3 * unit), box, leader, c.tint(), canvas -> {
            card.paintLeader(canvas, at, leader.b());
            card.paint(canvas, box);
        });
    }
}
