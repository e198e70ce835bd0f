// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.window;

import java.awt.AWTException;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;

import javax.imageio.ImageIO;

import org.probeleaf.schematic.geometry.Point;

/** The running window, with a hand on mouse and keyboard. Closing ends its process. */
final class WindowDriver implements AutoCloseable {

    /** Generous: a busy machine that compiles beside the test is slow, and nothing waits longer than it must. */
    private static final Duration PATIENCE = Duration.ofSeconds(Integer.getInteger("probeleaf.window.patience", 120));

    private final Process process;
    private final Path report;
    private final Path log;
    private final Robot robot;

    private WindowDriver(Process process, Path report, Path log, Robot robot) {
        this.process = process;
        this.report = report;
        this.log = log;
        this.robot = robot;
    }

    /**
     * Starts the window.
     *
     * @param home   the assembled folder
     * @param folder an empty folder for what the window keeps
     * @param file   to open
     */
    static WindowDriver start(Path home, Path folder, Path file) throws IOException, AWTException {
        Path report = folder.resolve("report.json");
        Path log = folder.resolve("window.log");
        ProcessBuilder builder = new ProcessBuilder(List.of(home.resolve("launch").toString(), file.toString()));
        builder.environment().put("PROBELEAF_WINDOW_DATA", folder.resolve("data").toString());
        builder.environment().put("PROBELEAF_PARTS", folder.resolve("parts").toString());
        builder.environment().put("PROBELEAF_JAVA_OPTS", "-Dprobeleaf.window.report=" + report);
        builder.redirectErrorStream(true).redirectOutput(log.toFile());
        Robot robot = new Robot();
        robot.mouseMove(1, 1);
        return new WindowDriver(builder.start(), report, log, robot);
    }

    /** Waits until the window's report fits. */
    Report await(String what, Predicate<Report> condition) {
        Report[] last = new Report[1];
        until(what, () -> {
            Report r = Report.read(report).orElse(null);
            last[0] = r;
            return r != null && condition.test(r);
        });
        return last[0];
    }

    /** Waits until a condition holds; fails with what was waited for, a picture and the log of the window. */
    void until(String what, BooleanSupplier condition) {
        long end = System.nanoTime() + PATIENCE.toNanos();
        while (!condition.getAsBoolean()) {
            if (!process.isAlive()) {
                throw new AssertionError("the window ended while waiting for: " + what + "\n" + logText());
            }
            if (System.nanoTime() > end) {
                throw new AssertionError("waited in vain for: " + what + "\n" + Report.read(report) + "\nscreen: "
                        + picture("window-test-failed") + "\n" + logText());
            }
            robot.delay(40);
        }
    }

    private String logText() {
        try {
            return Files.exists(log) ? Files.readString(log) : "(no log)";
        } catch (IOException e) {
            return "(the log cannot be read: " + e + ")";
        }
    }

    /** Keeps a picture of the screen under target/ and names it. */
    String picture(String name) {
        File file = new File("target", name + ".png");
        try {
            java.awt.Dimension size = java.awt.Toolkit.getDefaultToolkit().getScreenSize();
            ImageIO.write(robot.createScreenCapture(new Rectangle(size)), "png", file);
        } catch (IOException e) {
            return "(no picture: " + e + ")";
        }
        return file.getAbsolutePath();
    }

    void move(Point screen) {
        robot.mouseMove((int) Math.round(screen.x()), (int) Math.round(screen.y()));
    }

    void click(Point screen) {
        move(screen);
        robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
        robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
    }

    /** Opens a list by a click and waits until it lies over what was below; keys sent before are lost. */
    void openList(Point list) {
        Rectangle below = new Rectangle((int) list.x() - 40, (int) list.y() + 24, 80, 24);
        move(list);
        int[] before = pixels(below);
        robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
        robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
        until("the list to open", () -> !Arrays.equals(before, pixels(below)));
        int[][] last = {pixels(below)};
        until("the list to stand still", () -> {
            int[] now = pixels(below);
            boolean still = Arrays.equals(now, last[0]);
            last[0] = now;
            return still;
        });
    }

    private int[] pixels(Rectangle area) {
        return robot.createScreenCapture(area).getRGB(0, 0, area.width, area.height, null, 0, area.width);
    }

    void rightClick(Point screen) {
        move(screen);
        robot.mousePress(InputEvent.BUTTON3_DOWN_MASK);
        robot.mouseRelease(InputEvent.BUTTON3_DOWN_MASK);
    }

    void key(int code, int... held) {
        for (int h : held) {
            robot.keyPress(h);
        }
        robot.keyPress(code);
        robot.keyRelease(code);
        for (int i = held.length - 1; i >= 0; i--) {
            robot.keyRelease(held[i]);
        }
    }

    /** Types letters, digits, points and spaces on an American keyboard, which a display without a screen has. */
    void type(String text) {
        for (char c : text.toCharArray()) {
            int code = KeyEvent.getExtendedKeyCodeForChar(Character.toUpperCase(c));
            if (c == '@') {
                // There is no key of its own for it on the layout that virtual displays have.
                key(KeyEvent.VK_2, KeyEvent.VK_SHIFT);
            } else if (Character.isUpperCase(c)) {
                key(code, KeyEvent.VK_SHIFT);
            } else {
                key(code);
            }
        }
    }

    BufferedImage screen(int[] area) {
        return robot.createScreenCapture(new Rectangle(area[0], area[1], area[2], area[3]));
    }

    /** Asks the window to close as the window manager does, and waits for its process to end. */
    int closeWindow() throws InterruptedException {
        key(KeyEvent.VK_F4, KeyEvent.VK_ALT);
        if (!process.waitFor(PATIENCE.toSeconds(), TimeUnit.SECONDS)) {
            throw new AssertionError("the window did not close\n" + logText());
        }
        return process.exitValue();
    }

    @Override
    public void close() throws InterruptedException {
        process.destroy();
        if (!process.waitFor(10, TimeUnit.SECONDS)) {
            process.destroyForcibly();
        }
    }
}
