// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover.internal.pdf;

import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.probeleaf.handover.internal.layout.PageLayout;
import org.probeleaf.handover.internal.layout.Segment;
import org.probeleaf.handover.internal.paint.Tag;
import org.probeleaf.handover.internal.paint.Tint;
import org.probeleaf.handover.internal.paint.TypeFace;
import org.probeleaf.handover.internal.pdf.Annotations.Saying;
import org.probeleaf.job.mark.LabelMark;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Net;

/**
 * Puts the names of nets on one page: beside the wire near the label's own spot, on the longest wire, and on other long
 * ones; where no wire has room beside it, a little away with a leader.
 */
final class NetNamer {

    /** A piece of wire this long gets a name of its own, this far from the next. */
    private static final double LONG_WIRE = 150;
    private static final double NAMES_APART = 190;
    private static final int MOST_NAMES = 4;

    private final int page;
    private final double unit;
    private final Emphasis emphasis;
    private final Annotations annotations;
    private final PageLayout layout;
    private final TypeFace face;

    NetNamer(int page, double unit, Emphasis emphasis, Annotations annotations, PageLayout layout, TypeFace face) {
        this.page = page;
        this.unit = unit;
        this.emphasis = emphasis;
        this.annotations = annotations;
        this.layout = layout;
        this.face = face;
    }

    /**
     * A name on its way to the page.
     *
     * @param tag    how it looks
     * @param id     for the names of its annotations
     * @param says   what the annotations say
     * @param made   when it was made
     * @param tint   their colour
     */
    private record Name(Tag tag, String id, String says, Instant made, Tint tint) {
    }

    /** Puts the technician's own names on a net, or where there is none the net's. */
    void name(Net net, Tint tint) throws IOException {
        List<Segment> wires = new ArrayList<>(Emphasis.segments(net, page));
        wires.sort(Comparator.comparingDouble(Segment::length).reversed());
        Point spare = wires.isEmpty() ? emphasis.pins(net, page).get(0) : wires.get(0).middle();
        List<LabelMark> own = emphasis.labels(net);
        if (own.isEmpty()) {
            String title = emphasis.title(net);
            along(new Name(Tag.of(title, false, tint, face, unit), "name-" + net.id(), "Net " + title,
                    annotations.now(), tint), wires, null, spare);
        }
        List<String> said = new ArrayList<>();
        for (LabelMark label : own) {
            boolean here = label.page() == page;
            if (here && label.card() != null) {
                apart(own(label), label.at(), moved(label));
            } else if (!said.contains(label.text())) {
                along(own(label), wires, here ? label.at() : null, here ? label.at() : spare);
            }
            said.add(label.text());
        }
    }

    /** Puts a label where no net is known. */
    void nameSpot(LabelMark label) throws IOException {
        Name name = own(label);
        apart(name, label.at(), label.card() != null ? moved(label)
                : layout.card(label.at(), name.tag().width(), name.tag().height()));
    }

    private Name own(LabelMark label) {
        return new Name(Tag.of(label.text(), true, Tint.BLUE, face, unit), label.id(),
                "Net name, given by the technician: " + label.text(), label.when(), Tint.BLUE);
    }

    private Box moved(LabelMark label) {
        Tag tag = own(label).tag();
        return layout.moved(label.at(), PageMarker.box(label, tag.width(), tag.height()));
    }

    /**
     * @param wires  by falling length
     * @param wanted where the label was put, or null
     * @param spare  where a leader leads to if there is no room beside any wire
     */
    private void along(Name name, List<Segment> wires, Point wanted, Point spare) throws IOException {
        double w = name.tag().width();
        double h = name.tag().height();
        List<Box> put = new ArrayList<>();
        if (wanted != null) {
            Optional<Segment> at = wires.stream().min(Comparator.comparingDouble(s -> s.distance(wanted)));
            at.flatMap(s -> layout.tag(s, share(s, wanted), w, h)).ifPresent(put::add);
        }
        for (Segment wire : wires) {
            boolean needed = put.isEmpty() || wire.length() > LONG_WIRE * unit
                    && put.stream().allMatch(b -> b.centre().distance(wire.middle()) > NAMES_APART * unit);
            if (needed && put.size() < MOST_NAMES) {
                layout.tag(wire, 0.5, w, h).ifPresent(put::add);
            }
        }
        for (int i = 0; i < put.size(); i++) {
            Box box = put.get(i);
            annotations.text(saying(name, i), box.grow(unit), name.tint(), canvas -> name.tag().paint(canvas, box));
        }
        if (put.isEmpty()) {
            apart(name, spare, layout.card(spare, w, h));
        }
    }

    private Saying saying(Name name, int count) {
        return new Saying(Layer.LABELS, "probeleaf-" + name.id() + "-" + page + (count == 0 ? "" : "-" + count),
                "Net name", name.says(), name.made());
    }

    private static double share(Segment wire, Point p) {
        double length = wire.length();
        return length == 0 ? 0 : Math.max(0, Math.min(1, ((p.x() - wire.a().x()) * (wire.b().x() - wire.a().x())
                + (p.y() - wire.a().y()) * (wire.b().y() - wire.a().y())) / (length * length)));
    }

    /** A tag that stands away from its spot, with a leader. */
    private void apart(Name name, Point spot, Box box) throws IOException {
        Tint tint = name.tag().own() ? Tint.BLUE : Tint.BLACK;
        Segment leader = PageLayout.leader(spot, box);
        annotations.callOut(saying(name, 0), box.union(Box.of(spot)).grow(2 * unit), box, leader, tint, canvas -> {
            canvas.line(List.of(leader.a(), leader.b()), tint, 0.8 * unit);
            name.tag().paint(canvas, box);
        });
    }
}
