// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8;

import org.probeleaf.example.tl8.sheet.Page;

/** The border of a page with its zones, and the title block. */
final class Frame {
    private static final double OUTER = 1.6;
    private static final int COLUMNS = 238;
    private static final int ROWS = 168;
    private static final int INNER = 6;
    private static final int ZONES_ACROSS = 8;
    private static final int ZONES_DOWN = 6;

    private Frame() {
    }

    /** An empty page with its frame and title block. */
    static Page page(int number, String title) {
        Page page = new Page(number, COLUMNS, ROWS);
        border(page);
        titleBlock(page, number, title);
        return page;
    }

    private static void border(Page page) {
        int right = COLUMNS - INNER;
        int foot = ROWS - INNER;
        page.rule(1.2, INNER, INNER, right, INNER, right, foot, INNER, foot, INNER, INNER);
        double across = (right - INNER) / (double) ZONES_ACROSS;
        for (int i = 0; i < ZONES_ACROSS; i++) {
            double x = INNER + across * (i + 0.5);
            page.note(String.valueOf(i + 1), x, INNER - 0.8, 5.5);
            page.note(String.valueOf(i + 1), x, foot + 1.7, 5.5);
            if (i > 0) {
                page.rule(0.5, INNER + across * i, INNER - OUTER, INNER + across * i, INNER);
                page.rule(0.5, INNER + across * i, foot, INNER + across * i, foot + OUTER);
            }
        }
        double down = (foot - INNER) / (double) ZONES_DOWN;
        for (int i = 0; i < ZONES_DOWN; i++) {
            double y = INNER + down * (i + 0.5);
            String letter = String.valueOf((char) ('A' + i));
            page.note(letter, INNER - 1.8, y, 5.5);
            page.note(letter, right + 0.9, y, 5.5);
            if (i > 0) {
                page.rule(0.5, INNER - OUTER, INNER + down * i, INNER, INNER + down * i);
                page.rule(0.5, right, INNER + down * i, right + OUTER, INNER + down * i);
            }
        }
    }

    private static void titleBlock(Page page, int number, String title) {
        int x0 = COLUMNS - INNER - 62;
        int x1 = COLUMNS - INNER;
        int y0 = ROWS - INNER - 17;
        int y1 = ROWS - INNER;
        page.rule(0.9, x0, y1, x0, y0, x1, y0);
        page.rule(0.5, x0, y0 + 7, x1, y0 + 7);
        page.rule(0.5, x0, y0 + 12, x1, y0 + 12);
        page.rule(0.5, x0 + 22, y0 + 12, x0 + 22, y1);
        page.rule(0.5, x0 + 42, y0 + 12, x0 + 42, y1);
        page.note("TERN INSTRUMENTS", x0 + 1.6, y0 + 3.6, 11);
        page.note("Wharf Road, Eastmere", x0 + 1.6, y0 + 5.9, 6);
        page.note("TL-8 harbour tide logger", x0 + 32, y0 + 3.6, 9);
        page.note("main board", x0 + 32, y0 + 5.9, 6);
        page.note(title, x0 + 1.6, y0 + 10.3, 9);
        page.note("Drawing TL8-4-101", x0 + 1.6, y0 + 15.3, 6.5);
        page.note("Issue C, 14.3.1986", x0 + 23.4, y0 + 15.3, 6.5);
        page.note("Sheet " + number + " of 2", x0 + 43.6, y0 + 15.3, 7.5);
    }
}
