// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;

import org.junit.jupiter.api.Test;
import org.probeleaf.job.Job;
import org.probeleaf.job.JobException;
import org.probeleaf.job.JobState;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Wire;
import org.probeleaf.schematic.quantity.QuantityKind;

/** The way from a sheet to a reading and back, with mouse and keyboard on the example; see {@link WindowCase} for what is needed. */
class WindowTest extends WindowCase {

    /** Sky blue of the palette, 55 % on white: the band of the selected net. */
    private static final int BAND = 0xA2D6F3;

    @Test
    void example_tracedMeasuredUndone_showsOnScreenAndIsInTheJob() throws Exception {
        Path sheet = Files.copy(EXAMPLE, folder.resolve("board.pdf"));
        Path job = folder.resolve("board.probeleaf");
        try (WindowDriver window = WindowDriver.start(HOME, folder, sheet)) {
            Report report = window.await("the sheets to be read", r -> r.flag("recognised") && !r.flag("recognising"));
            Net strobe = netNamed(state(job).netlist(), "/RD");
            Point[] wire = longestPiece(strobe, 1);
            Point spot = report.onScreen(1, between(wire, 0.31)).orElseThrow();

            window.click(spot);
            window.await("the net to be selected", r -> r.text("selected").equals(strobe.id()) && r.flag("focus"));
            window.until("the band under the wire", () -> bandShare(window, report, wire) > 0.8);
            BufferedImage before = settled(window, report);

            window.key(KeyEvent.VK_R);
            window.await("the entry to take the keyboard", r -> r.flag("typing"));
            window.type("4.98V flat");
            window.key(KeyEvent.VK_ENTER);
            window.until("the reading in the job", () -> state(job).readings().size() == 1);
            assertEquals(4.98, state(job).readings().get(0).value().value(), 1e-9);
            assertEquals(QuantityKind.VOLTAGE_DC, state(job).readings().get(0).value().kind());
            assertEquals("flat", state(job).readings().get(0).remark());
            window.until("the card on the screen", () -> difference(before, settled(window, report)) > 400);
            BufferedImage with = settled(window, report);

            window.key(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
            window.until("the reading gone from the job", () -> state(job).readings().isEmpty());
            window.until("the card gone from the screen", () -> difference(before, settled(window, report)) == 0);

            window.key(KeyEvent.VK_Y, KeyEvent.VK_CONTROL);
            window.until("the reading back in the job", () -> state(job).readings().size() == 1);
            window.until("the card back on the screen", () -> difference(with, settled(window, report)) == 0);
            window.picture("window-test");
            assertEquals(0, window.closeWindow());
        }
        try (Job again = Job.open(job)) {
            assertEquals(1, again.state().readings().size(), "the reading outlives the window");
            assertTrue(again.check().isEmpty(), "the job is sound");
        }
    }

    @Test
    void fileThatIsNoSheet_opened_saysSoAndTheWindowLives() throws Exception {
        Path sheet = Files.writeString(folder.resolve("notes.pdf"), "no sheet at all");
        try (WindowDriver window = WindowDriver.start(HOME, folder, sheet)) {
            Report report = window.await("a word on what is wrong", r -> !r.text("trouble").isEmpty());
            assertTrue(report.text("trouble").contains("notes.pdf"), report.text("trouble"));
            assertFalse(Files.exists(folder.resolve("notes.probeleaf")), "no job is left behind");
            assertEquals(0, window.closeWindow());
        }
    }

    private static JobState state(Path file) {
        try (Job job = Job.openToRead(file)) {
            return job.state();
        } catch (JobException e) {
            throw new AssertionError(e.getMessage(), e);
        }
    }

    private static Net netNamed(Netlist netlist, String name) {
        return netlist.nets().stream().filter(n -> name.equals(n.name())).findFirst()
                .orElseThrow(() -> new AssertionError("the example has no net " + name));
    }

    private static Point[] longestPiece(Net net, int page) {
        return net.wires().stream().filter(w -> w.page() == page).flatMap(WindowTest::pieces)
                .max(Comparator.comparingDouble(p -> p[0].distance(p[1]))).orElseThrow();
    }

    private static java.util.stream.Stream<Point[]> pieces(Wire wire) {
        return java.util.stream.IntStream.range(1, wire.points().size())
                .mapToObj(i -> new Point[] {wire.points().get(i - 1), wire.points().get(i)});
    }

    private static Point between(Point[] ends, double t) {
        return new Point(ends[0].x() + t * (ends[1].x() - ends[0].x()), ends[0].y() + t * (ends[1].y() - ends[0].y()));
    }

    /** How much of the wire has the band's colour just beside its ink. */
    private static double bandShare(WindowDriver window, Report report, Point[] wire) {
        int[] area = report.canvas();
        BufferedImage screen = window.screen(area);
        boolean flat = Math.abs(wire[0].y() - wire[1].y()) < Math.abs(wire[0].x() - wire[1].x());
        int hits = 0;
        int all = 0;
        for (double t = 0.4; t < 0.95; t += 0.05) {
            Point p = report.onScreen(1, between(wire, t)).orElseThrow();
            int x = (int) Math.round(p.x()) - area[0] + (flat ? 0 : 2);
            int y = (int) Math.round(p.y()) - area[1] + (flat ? 2 : 0);
            if (x >= 0 && y >= 0 && x < screen.getWidth() && y < screen.getHeight()) {
                all++;
                hits += near(screen.getRGB(x, y), BAND) ? 1 : 0;
            }
        }
        return all == 0 ? 0 : (double) hits / all;
    }

    private static boolean near(int rgb, int wanted) {
        int off = 0;
        for (int shift = 0; shift <= 16; shift += 8) {
            off = Math.max(off, Math.abs((rgb >> shift & 0xFF) - (wanted >> shift & 0xFF)));
        }
        return off < 14;
    }

    /** The canvas as soon as two pictures of it in a row are alike. */
    private static BufferedImage settled(WindowDriver window, Report report) {
        BufferedImage[] last = {window.screen(report.canvas())};
        window.until("the screen to come to rest", () -> {
            BufferedImage now = window.screen(report.canvas());
            boolean alike = difference(last[0], now) == 0;
            last[0] = now;
            return alike;
        });
        return last[0];
    }

    private static int difference(BufferedImage a, BufferedImage b) {
        int count = 0;
        for (int y = 0; y < a.getHeight(); y++) {
            for (int x = 0; x < a.getWidth(); x++) {
                count += (a.getRGB(x, y) & 0xFFFFFF) == (b.getRGB(x, y) & 0xFFFFFF) ? 0 : 1;
            }
        }
        return count;
    }
}
