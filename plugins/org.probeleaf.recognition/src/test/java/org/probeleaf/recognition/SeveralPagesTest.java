// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;

import org.junit.jupiter.api.Test;
import org.probeleaf.drawing.SheetException;
import org.probeleaf.drawing.SheetException.Problem;
import org.probeleaf.drawing.primitive.Drawing;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.partbook.PartBook;

/** Pages in work at the same time. */
class SeveralPagesTest {

    @Test
    void recognise_onSeveralCores_readsTheSameAsOnOne() {
        List<Drawing> pages = new ArrayList<>();
        for (int page = 1; page <= 12; page++) {
            pages.add(sheet(page));
        }

        Netlist one = new Recogniser(PartBook.standard(), 1).recognise("t.pdf", "", pages, Progress.NONE);
        Netlist many = new Recogniser(PartBook.standard(), 5).recognise("t.pdf", "", pages, Progress.NONE);

        assertEquals(12, one.parts().size() / 2);
        assertEquals(one, many);
    }

    @Test
    void recognise_severalPages_tellsOfEachInOrderOnTheThreadThatAsked() {
        List<String> heard = new ArrayList<>();
        Thread asked = Thread.currentThread();
        Progress progress = new Progress() {
            @Override
            public void pageRead(int page, double draw, double read) {
                assertTrue(draw >= 0 && read >= 0);
                assertSame(asked, Thread.currentThread());
                heard.add("page " + page);
            }

            @Override
            public void pagesDone(int done, int total) {
                heard.add(done + " of " + total);
            }
        };

        new Recogniser(PartBook.standard(), 3).recognise("t.pdf", "", List.of(sheet(1), sheet(2), sheet(3)), progress);

        assertEquals(List.of("page 1", "1 of 3", "page 2", "2 of 3", "page 3", "3 of 3"), heard);
    }

    @Test
    void recognise_twoPagesThatCannotBeDrawn_tellsOfTheFirstAndClosesEveryHand() {
        AtomicInteger open = new AtomicInteger();
        PageSource source = source(6, open, (index, stop) -> {
            if (index == 2 || index == 4) {
                throw new SheetException(Problem.DAMAGED, "page " + (index + 1) + " is damaged", null);
            }
            return sheet(index + 1);
        });

        SheetException e = assertThrows(SheetException.class,
                () -> new Recogniser(PartBook.standard(), 4).recognise("t.pdf", "", source, Progress.NONE));

        assertEquals("page 3 is damaged", e.getMessage());
        assertEquals(0, open.get());
    }

    @Test
    void recognise_stoppedWhileAPageIsDrawn_givesItUp() {
        AtomicInteger open = new AtomicInteger();
        CountDownLatch drawing = new CountDownLatch(1);
        PageSource source = source(2, open, (index, stop) -> {
            drawing.countDown();
            while (!stop.getAsBoolean()) {
                Thread.onSpinWait();
            }
            throw new CancellationException();
        });
        Progress progress = new Progress() {
            @Override
            public boolean cancelled() {
                return drawing.getCount() == 0;
            }
        };

        assertThrows(CancellationException.class,
                () -> new Recogniser(PartBook.standard(), 2).recognise("t.pdf", "", source, progress));

        assertEquals(0, open.get());
    }

    private interface Drawer {
        Drawing draw(int index, BooleanSupplier stop) throws SheetException;
    }

    private static PageSource source(int size, AtomicInteger open, Drawer drawer) {
        return new PageSource() {
            @Override
            public int size() {
                return size;
            }

            @Override
            public Hand open() {
                open.incrementAndGet();
                return new Hand() {
                    @Override
                    public Drawing draw(int index, BooleanSupplier stop) throws SheetException {
                        return drawer.draw(index, stop);
                    }

                    @Override
                    public void close() {
                        open.decrementAndGet();
                    }
                };
            }
        };
    }

    /** Two chips of its own, joined by a wire, and a name that all pages share. */
    private static Drawing sheet(int page) {
        return new Sketch().chip("IC" + (2 * page - 1), 100, 100, 2, 2).chip("IC" + 2 * page, 400, 100, 2, 2)
                .wire(200, 100, 400, 100).wire(200, 110, 260, 110).text("/RD", 210, 108, 6).page(page);
    }
}
