// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.sheet;

import java.io.IOException;
import java.util.List;
import java.util.Random;

import org.apache.pdfbox.pdmodel.PDDocument;

/** Draws one page of a made sheet on a pitch of 10 points. */
final class PageMaker {

    private static final double CELL_WIDE = 260;
    private static final double CELL_HIGH = 90;
    private static final double MARGIN = 80;
    /** From one pin of a chip to the next below it. */
    private static final double PIN = 20;
    private static final double LEAD = 20;
    private static final double CHIP = 60;
    private static final double ACROSS = 2 * LEAD + CHIP;
    private static final double STUB = 45;
    private static final double LETTERS = 6;
    private static final double SMALL_LETTERS = 4;

    private final PDDocument document;
    private final NetModel model;
    private final MadeSheet.Names names;
    private final Random random;
    private SheetPen pen;
    private int left;

    PageMaker(PDDocument document, NetModel model, MadeSheet.Names names, Random random) {
        this.document = document;
        this.model = model;
        this.names = names;
        this.random = random;
    }

    /** Draws a page with the given number of parts. */
    void draw(int parts) throws IOException {
        left = parts;
        // About two parts to a cell, and a page half as wide again as it is high.
        int columns = Math.max(1, (int) Math.round(Math.sqrt(parts / 1.5 * 1.5 * CELL_HIGH / CELL_WIDE)));
        int rows = (int) Math.ceil(parts / 1.2 / columns) + 2;
        double width = 2 * MARGIN + columns * CELL_WIDE;
        try (SheetPen page = new SheetPen(document, (float) width, (float) (2 * MARGIN + rows * CELL_HIGH))) {
            pen = page;
            String[] above = new String[columns];
            for (int row = 0; left > 0; row++) {
                above = row(MARGIN + row * CELL_HIGH, columns, above);
            }
        }
    }

    /** Draws a row; for each column a pin on the lower wire that leads to the right, or null where there is none. */
    private String[] row(double y, int columns, String[] above) throws IOException {
        String[] below = new String[columns];
        String chip = null;
        for (int column = 0; column < columns && left > 0; column++) {
            double x = MARGIN + column * CELL_WIDE;
            String next = chip(x, y);
            if (chip == null) {
                stub(x, y, -STUB, next + ".1");
                stub(x, y + PIN, -STUB, next + ".2");
            } else {
                between(x - CELL_WIDE + ACROSS, y, x, chip, next);
                below[column - 1] = lower(x - CELL_WIDE + ACROSS, y + PIN, x, chip + ".4", next + ".2",
                        above[column - 1]);
            }
            chip = next;
            if (column == columns - 1 || left == 0) {
                stub(x + ACROSS, y, STUB, chip + ".3");
                stub(x + ACROSS, y + PIN, STUB, chip + ".4");
            }
        }
        return below;
    }

    private String chip(double x, double y) throws IOException {
        String ref = model.ref("IC");
        left--;
        pen.box(x + LEAD, y - 10, x + LEAD + CHIP, y + PIN + 10);
        for (int i = 0; i < 2; i++) {
            double at = y + i * PIN;
            pen.lead(x, at, x + LEAD, at);
            pen.text(String.valueOf(i + 1), x + 8, at - 1, SMALL_LETTERS);
            pen.lead(x + LEAD + CHIP, at, x + ACROSS, at);
            pen.text(String.valueOf(i + 3), x + LEAD + CHIP + 8, at - 1, SMALL_LETTERS);
        }
        pen.text(ref, x + LEAD, y - 12, LETTERS);
        return ref;
    }

    /** The upper wire between two chips, with a resistor in it or without. */
    private void between(double from, double y, double to, String chip, String next) throws IOException {
        if (left == 0 || random.nextInt(4) == 0) {
            pen.wire(from, y, to, y);
            model.join(List.of(chip + ".3", next + ".1"));
            return;
        }
        String ref = model.ref("R");
        left--;
        double x = from + 40;
        pen.wire(from, y, x, y);
        pen.lead(x, y, x + 10, y);
        pen.box(x + 10, y - 3, x + 30, y + 3);
        pen.lead(x + 30, y, x + 40, y);
        pen.wire(x + 40, y, to, y);
        pen.text(ref, x + 13, y - 5, LETTERS);
        model.join(List.of(chip + ".3", ref + ".1"));
        model.join(List.of(ref + ".2", next + ".1"));
    }

    /** The lower wire between two chips, perhaps with a tee up to that of the row above; or two names. */
    private String lower(double from, double y, double to, String pin, String nextPin, String above)
            throws IOException {
        if (random.nextInt(3) == 0) {
            stub(from, y, STUB, pin);
            stub(to, y, -STUB, nextPin);
            return null;
        }
        pen.wire(from, y, to, y);
        model.join(List.of(pin, nextPin));
        if (above != null && random.nextInt(3) == 0) {
            double x = to - 30;
            pen.wire(x, y - CELL_HIGH, x, y);
            pen.dot(x, y - CELL_HIGH);
            pen.dot(x, y);
            model.join(List.of(pin, above));
        }
        return pin;
    }

    /** A wire that ends with a name above it. */
    private void stub(double x, double y, double length, String pin) throws IOException {
        pen.wire(x, y, x + length, y);
        pen.text(names.at(pin), Math.min(x, x + length) + 8, y - 2, LETTERS);
    }
}
