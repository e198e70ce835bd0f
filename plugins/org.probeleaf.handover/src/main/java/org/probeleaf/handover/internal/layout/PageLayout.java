// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover.internal.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/**
 * Finds places on one page for cards, tags and the legend, one after the other; what was placed is kept clear of. Each
 * place is the cheapest of many tried: ink under it costs most, then a leader that crosses cards, leaders or ink, then
 * the way from what it belongs to.
 */
public final class PageLayout {

    private static final double INK_AT_ALL = 500;
    private static final double INK_SHARE = 4000;
    private static final double LEADER_OVER_INK = 11;
    private static final double LEADER_OVER_LEADER = 60;
    private static final double LEADER_OVER_CARD = 400;
    private static final double ANCHOR_COVERED = 200;
    private static final double IN_A_PART = 80;

    private final InkMap ink;
    private final Box page;
    private final double unit;
    private final List<Box> taken = new ArrayList<>();
    private final List<Segment> leaders = new ArrayList<>();
    private final List<Point> anchors = new ArrayList<>();
    private final List<Box> parts = new ArrayList<>();

    /**
     * @param ink    where the page has ink
     * @param width  of the page, points
     * @param height of the page, points
     * @param unit   points that one design point takes on this page; distances grow with it
     */
    public PageLayout(InkMap ink, double width, double height, double unit) {
        this.ink = ink;
        this.page = new Box(0, 0, width, height).grow(-5 * unit);
        this.unit = unit;
    }

    /** Tells of a spot that a card placed later should not hide. */
    public void keepVisible(Point anchor) {
        anchors.add(anchor);
    }

    /** Tells of a part's body: a card inside would look as if it were drawn there. */
    public void part(Box body) {
        parts.add(body);
    }

    /** Takes the place where a person moved a card, or the nearest to it that is on the page. */
    public Box moved(Point anchor, Box wanted) {
        Box box = inside(wanted);
        take(box, anchor);
        return box;
    }

    private void take(Box box, Point anchor) {
        taken.add(box);
        leaders.add(leader(anchor, box));
    }

    /** The line from an anchor to the nearest point of its card. */
    public static Segment leader(Point anchor, Box card) {
        return new Segment(anchor, new Point(Math.max(card.x0(), Math.min(card.x1(), anchor.x())),
                Math.max(card.y0(), Math.min(card.y1(), anchor.y()))));
    }

    /** Finds and takes a place for a card near its anchor. */
    public Box card(Point anchor, double width, double height) {
        Priced best = cheapest(anchor, width, height);
        Box chosen = best.box() != null ? best.box() : inside(new Box(anchor.x() + 10 * unit, anchor.y() + 10 * unit,
                anchor.x() + 10 * unit + width, anchor.y() + 10 * unit + height));
        take(chosen, anchor);
        return chosen;
    }

    /** What the best place for a card of that size costs; more for one that covers something or stands far away. */
    public double cardCost(Point anchor, double width, double height) {
        return cheapest(anchor, width, height).cost();
    }

    private Priced cheapest(Point anchor, double width, double height) {
        double reach = 330 * unit;
        double step = 4 * unit;
        Priced best = new Priced(null, Double.MAX_VALUE);
        for (double x = anchor.x() - reach - width; x <= anchor.x() + reach; x += step) {
            for (double y = anchor.y() - reach - height; y <= anchor.y() + reach; y += step) {
                Box box = new Box(x, y, x + width, y + height);
                double cost = page.contains(box) ? cardCost(box, anchor, best.cost()) : Double.MAX_VALUE;
                best = cost < best.cost() ? new Priced(box, cost) : best;
            }
        }
        return best;
    }

    private double cardCost(Box box, Point anchor, double least) {
        double gap = box.distance(anchor) / unit;
        double cost = gap < 7 ? 40 + (7 - gap) * 40 : gap + Math.max(0, gap - 50) * 0.8;
        if (cost >= least || overlapsTaken(box.grow(2.5 * unit))) {
            return Double.MAX_VALUE;
        }
        cost += inkCost(box.grow(2.5 * unit));
        if (cost >= least) {
            return cost;
        }
        Segment leader = leader(anchor, box);
        double slant = Math.min(Math.abs(leader.a().x() - leader.b().x()), Math.abs(leader.a().y() - leader.b().y()));
        cost += slant / unit * 0.08;
        cost += LEADER_OVER_INK * ink.trouble(leader.a(), leader.b());
        for (Segment other : leaders) {
            cost += leader.crosses(other) ? LEADER_OVER_LEADER : 0;
        }
        for (Segment other : leaders) {
            cost += other.enters(box.grow(unit)) ? LEADER_OVER_CARD : 0;
        }
        for (Box other : taken) {
            cost += leader.enters(other) ? LEADER_OVER_CARD : 0;
        }
        for (Box other : parts) {
            cost += other.intersects(box) ? IN_A_PART : 0;
        }
        for (Point other : anchors) {
            cost += box.distance(other) < 4 * unit ? ANCHOR_COVERED : 0;
        }
        return cost;
    }

    private double inkCost(Box box) {
        double share = ink.share(box);
        return share == 0 ? 0 : INK_AT_ALL + share * INK_SHARE;
    }

    private boolean overlapsTaken(Box box) {
        for (Box other : taken) {
            if (box.intersects(other)) {
                return true;
            }
        }
        return false;
    }

    private Box inside(Box box) {
        double dx = Math.max(page.x0() - box.x0(), Math.min(0, page.x1() - box.x1()));
        double dy = Math.max(page.y0() - box.y0(), Math.min(0, page.y1() - box.y1()));
        return new Box(box.x0() + dx, box.y0() + dy, box.x1() + dx, box.y1() + dy);
    }

    /**
     * Finds and takes a place for a tag beside a wire, as near to a wanted spot of it as can be.
     *
     * @param wire the straight piece of wire
     * @param near share of the way along it that is wanted
     * @return the place, or empty where every place along the wire covers ink or something placed before
     */
    public Optional<Box> tag(Segment wire, double near, double width, double height) {
        Box best = null;
        double least = Double.MAX_VALUE;
        double off = 2.2 * unit;
        for (int i = 0; i <= 40; i++) {
            Point p = wire.at(i / 40.0);
            double away = Math.abs(i / 40.0 - near) * wire.length();
            Box[] sides = wire.lies()
                    ? new Box[] {above(p, width, height, off), below(p, width, height, off)}
                    : new Box[] {right(p, width, height, off), left(p, width, height, off)};
            for (int side = 0; side < 2; side++) {
                Box box = sides[side];
                double cost = away / unit + side * 6;
                if (cost < least && page.contains(box) && !overlapsTaken(box.grow(unit)) && hidesNothing(box)
                        && ink.share(box) == 0) {
                    least = cost;
                    best = box;
                }
            }
        }
        if (best != null) {
            taken.add(best);
        }
        return Optional.ofNullable(best);
    }

    private boolean hidesNothing(Box box) {
        return anchors.stream().noneMatch(a -> box.distance(a) < 3 * unit);
    }

    private static Box above(Point p, double w, double h, double off) {
        return new Box(p.x() - w / 2, p.y() - off - h, p.x() + w / 2, p.y() - off);
    }

    private static Box below(Point p, double w, double h, double off) {
        return new Box(p.x() - w / 2, p.y() + off, p.x() + w / 2, p.y() + off + h);
    }

    private static Box right(Point p, double w, double h, double off) {
        return new Box(p.x() + off, p.y() - h / 2, p.x() + off + w, p.y() + h / 2);
    }

    private static Box left(Point p, double w, double h, double off) {
        return new Box(p.x() - off - w, p.y() - h / 2, p.x() - off, p.y() + h / 2);
    }

    /** A place and what it costs. */
    private record Priced(Box box, double cost) {
    }

    /** Finds and takes the emptiest place of the page, near an edge where there are several. */
    public Box legend(double width, double height) {
        Priced best = emptiest(width, height);
        Box chosen = best.box() != null ? best.box()
                : inside(new Box(page.x0(), page.y0(), page.x0() + width, page.y0() + height));
        taken.add(chosen);
        return chosen;
    }

    /** What the best place for a legend of that size costs; more for one that covers something. */
    public double legendCost(double width, double height) {
        return emptiest(width, height).cost();
    }

    private Priced emptiest(double width, double height) {
        double step = 6 * unit;
        Priced best = new Priced(null, Double.MAX_VALUE);
        for (double x = page.x0(); x + width <= page.x1(); x += step) {
            for (double y = page.y0(); y + height <= page.y1(); y += step) {
                Box box = new Box(x, y, x + width, y + height);
                double cost = legendCost(box, best.cost());
                best = cost < best.cost() ? new Priced(box, cost) : best;
            }
        }
        return best;
    }

    /** What a place for the legend costs, or something no less than {@code least} where it costs that much. */
    private double legendCost(Box box, double least) {
        double edge = Math.min(Math.min(box.x0() - page.x0(), page.x1() - box.x1()),
                Math.min(box.y0() - page.y0(), page.y1() - box.y1()));
        Box wide = box.grow(3 * unit);
        double cost = edge / unit * 0.05 + inkCost(wide);
        if (cost >= least) {
            return cost;
        }
        return cost + (overlapsTaken(wide) ? 1e6 : 0)
                + (leaders.stream().anyMatch(l -> l.enters(box)) ? 1e5 : 0)
                + (hidesNothing(box) ? 0 : 1e4);
    }
}
