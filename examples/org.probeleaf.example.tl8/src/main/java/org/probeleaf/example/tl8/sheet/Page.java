// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import org.probeleaf.example.tl8.ink.Ink;
import org.probeleaf.example.tl8.sheet.Placed.Words;
import org.probeleaf.example.tl8.symbol.Symbol;
import org.probeleaf.example.tl8.symbol.Turn;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.LabelKind;

/** One page while it is being filled: parts, wires, buses, names and notes, on a grid. */
public final class Page {
    private final int number;
    private final int columns;
    private final int rows;
    private final List<Placed> parts = new ArrayList<>();
    private final List<WireRun> runs = new ArrayList<>();
    private final List<NameTag> names = new ArrayList<>();
    private final List<Note> notes = new ArrayList<>();

    /**
     * An empty page.
     *
     * @param number  1-based
     * @param columns width in grid steps
     * @param rows    height in grid steps
     */
    public Page(int number, int columns, int rows) {
        this.number = number;
        this.columns = columns;
        this.rows = rows;
    }

    /** Places a part in one piece. */
    public Placed part(String ref, String value, Symbol symbol, Turn turn, int x, int y, Words words) {
        return add(new Placed(ref, null, value, symbol.turned(turn), new Spot(x, y), words));
    }

    /** Places a part in one piece as its symbol is drawn. */
    public Placed part(String ref, String value, Symbol symbol, int x, int y) {
        return part(ref, value, symbol, Turn.NONE, x, y, Words.ABOVE_AND_BELOW);
    }

    /** Places one unit of a part, its designator and value centred. */
    public Placed unit(String ref, String unit, String value, Symbol symbol, int x, int y) {
        return unit(ref, unit, value, symbol, x, y, Words.CENTRED);
    }

    /** Places one unit of a part. */
    public Placed unit(String ref, String unit, String value, Symbol symbol, int x, int y, Words words) {
        return add(new Placed(ref, unit, value, symbol, new Spot(x, y), words));
    }

    private Placed add(Placed placed) {
        parts.add(placed);
        return placed;
    }

    /** Starts a wire at a spot; it is on the page once {@link Pen#done} or an ending method is called. */
    public Pen wire(Spot from) {
        return new Pen(this, from, false);
    }

    /** Starts a wire at the given grid place. */
    public Pen wire(int x, int y) {
        return wire(new Spot(x, y));
    }

    /** Starts a bus at the given grid place. */
    public Pen bus(int x, int y) {
        return new Pen(this, new Spot(x, y), true);
    }

    void run(WireRun run) {
        runs.add(run);
    }

    /** Writes a name on the wire that passes the spot; the name starts there. */
    public void label(String text, Spot at) {
        names.add(NameTag.plain(text, at, LabelKind.LABEL));
    }

    /** Writes a name on the wire that passes the given grid place. */
    public void label(String text, int x, int y) {
        label(text, new Spot(x, y));
    }

    /** Writes the name of a bus at the given grid place; it joins nothing. */
    public void busName(String text, int x, int y) {
        names.add(NameTag.plain(text, new Spot(x, y), LabelKind.BUS));
    }

    /** Puts a supply symbol (bar for a voltage, three bars for ground) at a spot. */
    public void power(String text, Spot at) {
        names.add(NameTag.plain(text, at, LabelKind.POWER));
    }

    /**
     * Puts an off-sheet flag at a spot.
     *
     * @param right  whether it lies to the right of the spot or to its left
     * @param leaves whether the signal leaves the page there or enters
     */
    public void offSheet(String text, Spot at, boolean right, boolean leaves) {
        String where = "sheet " + (number == 1 ? 2 : 1);
        names.add(new NameTag(text, at, LabelKind.OFFSHEET, right, leaves, where));
    }

    /** Writes a note that starts at the given grid place. */
    public void note(String text, double x, double y, double size) {
        notes.add(new Note(new Ink.Words(text, new Point(x * Symbol.GRID, y * Symbol.GRID), 0, size, false)));
    }

    /** Draws lines that connect nothing, corner by corner, in grid steps x, y, x, y. */
    public void rule(double width, double... xy) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(new Point(xy[i] * Symbol.GRID, xy[i + 1] * Symbol.GRID));
        }
        notes.add(new Note(new Ink.Line(points, width, false, false)));
    }

    /** 1-based. */
    public int number() {
        return number;
    }

    /** Width in grid steps. */
    public int columns() {
        return columns;
    }

    /** Height in grid steps. */
    public int rows() {
        return rows;
    }

    /** The parts and units, in the order they were placed. */
    public List<Placed> parts() {
        return Collections.unmodifiableList(parts);
    }

    /** The wires and buses. */
    public List<WireRun> runs() {
        return Collections.unmodifiableList(runs);
    }

    /** The names. */
    public List<NameTag> names() {
        return Collections.unmodifiableList(names);
    }

    /** The notes and rules. */
    public List<Note> notes() {
        return Collections.unmodifiableList(notes);
    }
}
