// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8.sheet;

import java.util.ArrayList;
import java.util.List;

/** Draws one wire or bus on a page, step by step. */
public final class Pen {
    private final Page page;
    private final boolean bus;
    private final List<Spot> spots = new ArrayList<>();

    Pen(Page page, Spot from, boolean bus) {
        this.page = page;
        this.bus = bus;
        spots.add(from);
    }

    private Spot here() {
        return spots.get(spots.size() - 1);
    }

    private Pen go(Spot to) {
        if (!to.equals(here())) {
            spots.add(to);
        }
        return this;
    }

    /** Moves right (left if negative). */
    public Pen right(int steps) {
        return go(here().plus(steps, 0));
    }

    /** Moves left. */
    public Pen left(int steps) {
        return right(-steps);
    }

    /** Moves down (up if negative). */
    public Pen down(int steps) {
        return go(here().plus(0, steps));
    }

    /** Moves at 45 degrees, or as given. */
    public Pen slant(int dx, int dy) {
        return go(here().plus(dx, dy));
    }

    /** Moves level to a column. */
    public Pen toX(int x) {
        return go(new Spot(x, here().y()));
    }

    /** Moves upright to a row. */
    public Pen toY(int y) {
        return go(new Spot(here().x(), y));
    }

    /** Level to the column of {@code to}, then upright to it; ends the wire there. */
    public Spot levelTo(Spot to) {
        return toX(to.x()).toY(to.y()).done();
    }

    /** Upright to the row of {@code to}, then level to it; ends the wire there. */
    public Spot uprightTo(Spot to) {
        return toY(to.y()).toX(to.x()).done();
    }

    /** Ends the wire here and puts it on the page. */
    public Spot done() {
        if (spots.size() < 2) {
            throw new IllegalStateException("a wire at " + here() + " goes nowhere");
        }
        page.run(new WireRun(spots, bus));
        return here();
    }
}
