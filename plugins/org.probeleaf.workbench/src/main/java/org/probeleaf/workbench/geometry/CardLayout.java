// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.geometry;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/**
 * Finds room for the cards of a page. Each card is tried at eight sides of its anchor and at growing distances; the
 * place that covers least ink and no other card wins, the nearer one where they are alike. Cards that a person has
 * moved stand first and stay.
 */
public final class CardLayout {

    private static final double[] DISTANCES = {14, 26, 42, 62, 86, 115, 150, 195, 250};
    private static final double INK = 650;
    private static final double OVERLAP = 4000;
    private static final double OUTSIDE = 3000;

    private CardLayout() {
    }

    /**
     * A card that wants room.
     *
     * @param anchor on the page, in points
     * @param width  in points at the zoom in question
     * @param height in points
     * @param moved  top left corner that a person chose, or null
     */
    public record Card(Point anchor, double width, double height, Point moved) {
    }

    /**
     * Lays out the cards of one page.
     *
     * @param cards  in order of importance
     * @param page   the page in points
     * @param ink    of the page, or null where it is not known yet
     * @param pixel  points per logical pixel
     * @return the box of each card, in the order given
     */
    public static List<Box> place(List<Card> cards, Box page, InkMap ink, double pixel) {
        Box[] boxes = new Box[cards.size()];
        List<Box> taken = new ArrayList<>();
        for (int i = 0; i < boxes.length; i++) {
            Card c = cards.get(i);
            if (c.moved != null) {
                boxes[i] = new Box(c.moved.x(), c.moved.y(), c.moved.x() + c.width, c.moved.y() + c.height);
                taken.add(boxes[i]);
            }
        }
        for (int i = 0; i < boxes.length; i++) {
            if (boxes[i] == null) {
                boxes[i] = best(cards.get(i), page, ink, pixel, taken, cards);
                taken.add(boxes[i]);
            }
        }
        return List.of(boxes);
    }

    private static Box best(Card card, Box page, InkMap ink, double pixel, List<Box> taken, List<Card> all) {
        Box best = null;
        double least = Double.MAX_VALUE;
        for (double distance : DISTANCES) {
            for (int side = 0; side < 8; side++) {
                Box box = beside(card, side, distance * pixel);
                double cost = distance + (side % 2 == 0 ? 6 : 0) + (ink == null ? 0 : INK * ink.inked(box));
                for (Box t : taken) {
                    cost += t.grow(4 * pixel).intersects(box) ? OVERLAP : 0;
                }
                for (Card other : all) {
                    cost += box.grow(3 * pixel).contains(other.anchor) ? OVERLAP / 4 : 0;
                }
                cost += page.contains(box) ? 0 : OUTSIDE;
                if (cost < least) {
                    least = cost;
                    best = box;
                }
            }
        }
        return best;
    }

    /** The card at one of eight sides: 1 up right, 3 up left, 5 down left, 7 down right, even ones between. */
    private static Box beside(Card c, int side, double d) {
        double[] dx = {1, 1, 0, -1, -1, -1, 0, 1};
        double[] dy = {0, -1, -1, -1, 0, 1, 1, 1};
        double x = c.anchor.x() + dx[side] * d + (dx[side] < 0 ? -c.width : dx[side] == 0 ? -c.width / 2 : 0);
        double y = c.anchor.y() + dy[side] * d + (dy[side] < 0 ? -c.height : dy[side] == 0 ? -c.height / 2 : 0);
        return new Box(x, y, x + c.width, y + c.height);
    }

    /** The point on a card's edge where its leader line to {@code anchor} ends. */
    public static Point leaderEnd(Box card, Point anchor) {
        double x = Math.max(card.x0(), Math.min(card.x1(), anchor.x()));
        double y = Math.max(card.y0(), Math.min(card.y1(), anchor.y()));
        return new Point(x, y);
    }
}
