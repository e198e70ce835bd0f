// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.video;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.waveform.measure.Figure;
import org.probeleaf.waveform.measure.Si;

/**
 * Holds what was measured against the systems. How far a display follows is from memory: lines within 3 %, fields from 45 to
 * 65 Hz, sync half as deep as it should be, 3.2 to 7 us wide, line to line within 1 us.
 */
final class VideoVerdict {

    private static final double FOLLOWS_LINES = 0.03;
    private static final double KNOWN_RATE = 0.0025;
    private static final double LEAST_FIELD = 45;
    private static final double MOST_FIELD = 65;
    private static final double NARROWEST = 3.2e-6;
    private static final double WIDEST = 7e-6;
    private static final double UNSTEADY = 1e-6;

    private final LineTiming timing;
    private final Figure sync;
    private final Figure width;
    private final Figure front;
    private final Figure back;
    private final Figure blank;
    private final Figure white;
    private final String unit;
    private final List<String> reasons = new ArrayList<>();
    private boolean locks = true;

    VideoVerdict(LineTiming timing, Figure sync, Figure width, Figure front, Figure back, Figure blank, Figure white,
            String unit) {
        this.timing = timing;
        this.sync = sync;
        this.width = width;
        this.front = front;
        this.back = back;
        this.blank = blank;
        this.white = white;
        this.unit = unit;
    }

    VideoSignal signal() {
        VideoSystem system = system();
        Boolean interlaced = interlaced();
        rates(system, interlaced);
        boolean volts = unit.equals("V");
        if (volts && sync.value() <= VideoSignal.LOGIC) {
            levels(system == null ? VideoSystem.COLOUR_625 : system);
        } else if (volts) {
            reasons.add("Sync is " + Si.text(sync.value(), 3, "V") + " deep: these are sync pulses at logic levels, no composite"
                    + " video.");
        } else {
            reasons.add("The capture knows no volts, so its levels are not judged.");
        }
        widths(system);
        reasons.add(0, locks ? "A display would lock to it." : "A display would not lock to it as it is.");
        return new VideoSignal(system, timing.lineRate(), timing.fieldRate(), timing.lines(), interlaced, sync, width, front,
                back, blank, white, locks, reasons);
    }

    private VideoSystem system() {
        VideoSystem nearest = null;
        for (VideoSystem s : VideoSystem.values()) {
            double off = off(s);
            nearest = off <= KNOWN_RATE && (nearest == null || off < off(nearest)) ? s : nearest;
        }
        return nearest;
    }

    private double off(VideoSystem s) {
        return Math.abs(timing.lineRate().value() / s.lineRate() - 1);
    }

    /** Half a line over in each field is interlaced, whole lines are not. */
    private Boolean interlaced() {
        if (!timing.lines().known()) {
            return null;
        }
        double over = timing.lines().value() - Math.floor(timing.lines().value());
        double half = Math.abs(over - 0.5);
        return half < 0.1 ? Boolean.TRUE : half > 0.4 ? Boolean.FALSE : null;
    }

    private void rates(VideoSystem system, Boolean interlaced) {
        String rate = Si.text(timing.lineRate().value(), 6, "Hz");
        double near = Math.min(off(VideoSystem.COLOUR_525), Math.min(off(VideoSystem.COLOUR_625), off(VideoSystem.MONO_525)));
        if (system != null) {
            reasons.add("The line rate is " + rate + ": the " + system.title() + " system.");
        } else if (near <= FOLLOWS_LINES) {
            reasons.add("The line rate is " + rate + ", " + Si.text(near * 100, 2, "%")
                    + " off the nearest system; most displays follow that (from memory).");
        } else {
            locks = false;
            reasons.add("The line rate is " + rate + ", where 15.625 kHz or 15.734 kHz is due.");
        }
        if (timing.jitter() > UNSTEADY) {
            locks = false;
            reasons.add("Its lines are unsteady by " + Si.text(timing.jitter(), 2, "s") + ".");
        }
        if (timing.fieldRate().known()) {
            double field = timing.fieldRate().value();
            reasons.add("The field rate is " + Si.text(field, 5, "Hz") + ", " + Si.text(timing.lines().value(), 4, "")
                    + " lines a field" + (interlaced == null ? "." : interlaced ? ": interlaced." : ": not interlaced."));
            if (field < LEAST_FIELD || field > MOST_FIELD) {
                locks = false;
                reasons.add("Displays want 50 or 60 fields a second.");
            }
        } else {
            reasons.add("The field rate cannot be had: " + timing.fieldRate().reason() + ".");
        }
    }

    private void levels(VideoSystem system) {
        double ratio = sync.value() / system.sync();
        String depth = "Sync is " + Si.text(sync.value(), 3, "V") + " deep, where " + Si.text(system.sync(), 3, "V") + " is due";
        if (ratio < 0.5) {
            locks = false;
            reasons.add(depth + "; that is too little.");
        } else if (ratio > 1.7 && ratio < 2.3) {
            reasons.add(depth + ": about twice, as where the 75 \u03a9 at the end of the cable are missing.");
        } else if (ratio > 0.58 && ratio < 0.75) {
            reasons.add(depth + ": about two thirds, as where the cable ends in 75 \u03a9 twice.");
        } else if (Math.abs(ratio - 1) * system.sync() <= 0.035 + sync.uncertainty()) {
            reasons.add(depth + ", within 35 mV.");
        } else {
            reasons.add(depth + ".");
        }
        double share = white.value() / sync.value();
        if (white.value() > 0 && share > 1.3 * system.white() / system.sync()) {
            reasons.add("The picture is " + Si.text(share, 2, "") + " times as high as sync is deep, where "
                    + Si.text(system.white() / system.sync(), 2, "") + " is due: sync is squeezed, or the picture too strong.");
        }
    }

    private void widths(VideoSystem system) {
        double due = 4.7e-6;
        double tolerance = system == null ? 0.3e-6 : system.syncWidthTolerance();
        String text = "Line sync is " + Si.text(width.value(), 3, "s") + " wide";
        if (width.value() < NARROWEST || width.value() > WIDEST) {
            locks = false;
            reasons.add(text + ", where " + Si.text(due, "s") + " is due; displays do not take it for line sync.");
        } else if (Math.abs(width.value() - due) > tolerance + width.uncertainty()) {
            reasons.add(text + ", outside of " + Si.text(due, "s") + " \u00b1 " + Si.text(tolerance, "s")
                    + " (tolerance from memory), which displays follow.");
        } else {
            reasons.add(text + ", as it should be.");
        }
    }
}
