// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.video;

/**
 * The scanning systems, with the levels into 75 ohms. Nominal values are from a published table of composite parameters and
 * from the histories of RS-170; the tolerances are from memory (SMPTE 170M, BT.470, BT.1700).
 */
public enum VideoSystem {
    /** RS-170, monochrome. Its 1 V levels are those of the colour system. */
    MONO_525("525/60", 525, 15750, 60, 0.2857, 0.7143, 4.7e-6, 0.3e-6, 1.5e-6, 9.4e-6),
    /** SMPTE 170M: 4.5 MHz / 286 lines a second, 60/1.001 fields. */
    COLOUR_525("525/59.94", 525, 4.5e6 / 286, 60 / 1.001, 0.2857, 0.7143, 4.7e-6, 0.1e-6, 1.5e-6, 9.4e-6),
    /** BT.470 systems B and G, now BT.1700. */
    COLOUR_625("625/50", 625, 15625, 50, 0.300, 0.700, 4.7e-6, 0.2e-6, 1.5e-6, 10.5e-6);

    private final String title;
    private final int lines;
    private final double lineRate;
    private final double fieldRate;
    private final double sync;
    private final double white;
    private final double syncWidth;
    private final double syncWidthTolerance;
    private final double frontPorch;
    private final double syncToPicture;

    VideoSystem(String title, int lines, double lineRate, double fieldRate, double sync, double white, double syncWidth,
            double syncWidthTolerance, double frontPorch, double syncToPicture) {
        this.title = title;
        this.lines = lines;
        this.lineRate = lineRate;
        this.fieldRate = fieldRate;
        this.sync = sync;
        this.white = white;
        this.syncWidth = syncWidth;
        this.syncWidthTolerance = syncWidthTolerance;
        this.frontPorch = frontPorch;
        this.syncToPicture = syncToPicture;
    }

    /** Lines and fields, as in {@code 625/50}. */
    public String title() {
        return title;
    }

    /** Lines of a frame. */
    public int lines() {
        return lines;
    }

    /** Lines a second, in hertz. */
    public double lineRate() {
        return lineRate;
    }

    /** Fields a second, in hertz. */
    public double fieldRate() {
        return fieldRate;
    }

    /** How far sync lies below blanking, in volts. */
    public double sync() {
        return sync;
    }

    /** How far white lies above blanking, in volts. */
    public double white() {
        return white;
    }

    /** Duration of line sync at half of its depth, in seconds. */
    public double syncWidth() {
        return syncWidth;
    }

    /** By how much that may be off either way, in seconds; from memory. */
    public double syncWidthTolerance() {
        return syncWidthTolerance;
    }

    /** From the end of the picture to sync, in seconds. */
    public double frontPorch() {
        return frontPorch;
    }

    /** From the start of sync to the start of the picture, in seconds. */
    public double syncToPicture() {
        return syncToPicture;
    }
}
