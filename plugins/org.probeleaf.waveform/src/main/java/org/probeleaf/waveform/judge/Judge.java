// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.judge;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.measure.Figure;
import org.probeleaf.waveform.measure.Measures;
import org.probeleaf.waveform.measure.Si;

/** Judges a signal as a technician would: does it live, can the next stage read it, what is odd about it. */
public final class Judge {

    /** Less than this share of the time in a zone is an accident. */
    private static final double HARDLY = 0.002;
    private static final double SIGMAS = 3;
    private static final double RINGS = 20;
    private static final double SLOW_SHARE = 0.3;
    private static final String UNJUDGED = "No family and no threshold was said, so its levels are not judged.";
    private static final double BEARABLE = 0.2;

    private final Channel channel;
    private final Measures measures;
    private final Thresholds said;
    private final List<Verdict> findings = new ArrayList<>();
    private final List<String> reasons = new ArrayList<>();
    private final String unit;

    private Judge(Channel channel, Measures measures, Thresholds said) {
        this.channel = channel;
        this.measures = measures;
        this.said = said;
        unit = channel.unit();
    }

    /**
     * Judges a channel.
     *
     * @param measures   of the same channel
     * @param thresholds what the next stage needs, or null where nobody said: then levels are not judged, and what stays
     *                   at one level is told by TTL levels
     */
    public static Judgement judge(Channel channel, Measures measures, Thresholds thresholds) {
        return new Judge(channel, measures, thresholds).judge();
    }

    private Judgement judge() {
        if (measures.levels() == null) {
            return new Judgement(Verdict.NO_SIGNAL, List.of(Verdict.NO_SIGNAL), List.of("There is no sample to judge."),
                    Double.NaN, Double.NaN, null);
        }
        boolean two = measures.levels().two();
        if (!unit.equals("V")) {
            return withoutVolts(two);
        }
        Thresholds by = said != null ? said : two ? null : Thresholds.usual();
        double noise = Math.min(SIGMAS * measures.noise().sigma(), by == null || !by.band() ? Double.MAX_VALUE
                : 0.25 * (by.high() - by.low()));
        double low = by != null && by.band() ? by.low() : two ? measures.levels().reference(30) : by.low();
        double high = by != null && by.band() ? by.high() : two ? measures.levels().reference(70) : by.high();
        Visits visits = Visits.of(channel, low, high, noise);
        Visits against = by == null || by.band() ? visits : Visits.of(channel, by.low(), by.high(), noise);
        boolean lows = against.share(Visits.LOW) > HARDLY;
        boolean highs = against.share(Visits.HIGH) > HARDLY;
        if (by != null && (!lows || !highs)) {
            stays(by, lows, highs);
        } else {
            moves(by, visits, low, high);
        }
        return new Judgement(findings.get(0), findings, reasons, margin(by, false, lows), margin(by, true, highs),
                said == null ? null : lows && highs);
    }

    /** Levels mean nothing to a family; the beat can still be told. */
    private Judgement withoutVolts(boolean two) {
        if (two) {
            moves(null, Visits.of(channel, measures.levels().reference(30), measures.levels().reference(70),
                    SIGMAS * measures.noise().sigma()), measures.levels().reference(30), measures.levels().reference(70));
            reasons.remove(UNJUDGED);
        } else {
            find(Verdict.STATIC, "It stays at " + Si.text(measures.levels().low(), unit) + ".");
        }
        reasons.add(unit.isEmpty() ? "Nobody knows how many volts that is, so its levels are not judged; say the scale."
                : "It is no voltage, so its levels are not judged.");
        return new Judgement(findings.get(0), findings, reasons, Double.NaN, Double.NaN, null);
    }

    private double margin(Thresholds by, boolean upper, boolean there) {
        if (by == null || by.assumed()) {
            return Double.NaN;
        }
        boolean two = measures.levels().two();
        if (!two && !there) {
            return Double.NaN;
        }
        return upper ? measures.levels().high() - by.high() : by.low() - measures.levels().low();
    }

    /** It is never low, never high, or neither. */
    private void stays(Thresholds by, boolean lows, boolean highs) {
        String name = by.assumed() ? "TTL, as no family and no threshold was said" : by.name();
        boolean swings = measures.levels().two();
        String level = swings ? Si.text(measures.low().value(), unit) + " to " + Si.text(measures.high().value(), unit)
                : Si.text(measures.levels().low(), unit);
        String moves = swings ? "it moves from " + level : "it stays at " + level;
        if (highs && !lows) {
            boolean weak = swings && by.band() && measures.levels().low() < by.high();
            find(weak ? Verdict.WEAK_LOW : Verdict.STATIC_HIGH, weak
                    ? "Its lower level, " + Si.text(measures.low().value(), unit) + ", is no low for " + name + ", which wants "
                            + Si.text(by.low(), unit) + " or less: its driver is too weak, or another holds against it."
                    : capital(moves) + ", which is high for " + name + " (" + Si.text(by.high(), unit) + " or more).");
        } else if (lows) {
            boolean weak = swings && by.band() && measures.levels().high() > by.low();
            find(weak ? Verdict.WEAK_HIGH : Verdict.STATIC_LOW, weak
                    ? "Its upper level, " + Si.text(measures.high().value(), unit) + ", is no high for " + name + ", which wants "
                            + Si.text(by.high(), unit) + " or more: its driver is too weak, its pull-up is missing, or another"
                            + " output holds against it."
                    : capital(moves) + ", which is low for " + name + " (" + Si.text(by.low(), unit)
                            + (by.band() ? " or less)." : " is never passed)."));
        } else {
            find(Verdict.BETWEEN, capital(moves) + ", between the low (" + Si.text(by.low(), unit) + ") and the high ("
                    + Si.text(by.high(), unit) + ") of " + name + ": an open input, a missing pull-up, or two outputs against"
                    + " each other.");
        }
    }

    private void moves(Thresholds by, Visits visits, double low, double high) {
        Shape shape = Shape.of(channel, visits, measures, low, high);
        Beat beat = Beat.of(measures.instants());
        if (shape.plateaus() > 0) {
            find(Verdict.CONTENTION, "It stays at " + Si.text(shape.plateau(), unit) + ", between low and high, " + times(
                    shape.plateaus()) + ", for up to " + Si.text(shape.plateauFor(), "s")
                    + ": two outputs may drive against each other.");
        }
        if (shape.runts() > 0) {
            find(Verdict.RUNT, (shape.runts() == 1 ? "A pulse turns" : shape.runts() + " pulses turn")
                    + " back between low and high, the first at " + Si.text(shape.firstRunt(), "s") + ", which gets to "
                    + Si.text(shape.turned(), unit) + ".");
        }
        if (beat.missing() > 0) {
            find(Verdict.MISSING_PULSES, (beat.missing() == 1 ? "1 pulse is" : beat.missing() + " pulses are")
                    + " missing from a beat of " + Si.text(beat.usual(), "s") + "; the longest gap is "
                    + Si.text(beat.longest(), "s") + ".");
        }
        ringing(shape);
        slow(by);
        noise(by);
        boolean harm = !findings.isEmpty() && !bearable();
        Verdict plain = beat.even() ? Verdict.CLOCKING : Verdict.TOGGLING;
        String beats = measures.edges() == 0 ? "It passes from one state to the other." : beat.even()
                ? "It goes up and down every " + Si.text(beat.usual(), "s") + " ("
                        + Si.text(1 / beat.usual(), "Hz") + ")." : measures.edges() < 3
                        ? "It changes state " + times(measures.edges()) + "."
                        : "It goes up and down at uneven distances, " + measures.edges() + " edges in all.";
        if (harm) {
            reasons.add(beats);
        } else {
            findings.add(0, plain);
            reasons.add(0, beats);
        }
        levels(by);
    }

    /** Whether all that is odd are slow edges which leave most of the period alone: told, but it still clocks. */
    private boolean bearable() {
        double rise = measures.rise().known() ? measures.rise().value() : 0;
        double fall = measures.fall().known() ? measures.fall().value() : 0;
        return findings.equals(List.of(Verdict.SLOW_EDGES)) && measures.period().known()
                && Math.max(rise, fall) <= BEARABLE * measures.period().value();
    }

    /** Ringing that reaches back between the levels; strong ringing that does not is told without being the verdict. */
    private void ringing(Shape shape) {
        Figure over = measures.overshoot();
        Figure under = measures.undershoot();
        double worst = Math.max(over.known() ? over.value() : 0, under.known() ? under.value() : 0);
        if (shape.rings() > 0) {
            find(Verdict.RINGING, "It swings back between low and high after " + (shape.rings() == 1 ? "an edge"
                    : shape.rings() + " edges") + ", which may count as more edges.");
        } else if (worst > RINGS) {
            reasons.add("Its edges overshoot by " + Si.text(worst, 3, "%") + ", without harm to the levels.");
        }
    }

    private void slow(Thresholds by) {
        double rise = measures.rise().known() ? measures.rise().value() : 0;
        double fall = measures.fall().known() ? measures.fall().value() : 0;
        double slowest = Math.max(rise, fall);
        double amplitude = measures.levels().amplitude();
        if (by != null && by.band() && !Double.isNaN(by.slowest())) {
            double inBand = slowest * (by.high() - by.low()) / (0.8 * amplitude);
            if (inBand > by.slowest()) {
                find(Verdict.SLOW_EDGES, "Its " + (rise >= fall ? "rising" : "falling") + " edges take "
                        + Si.text(inBand, 3, "s") + " from one level of " + by.name() + " to the other, where "
                        + Si.text(by.slowest(), "s") + " is the limit (data sheets, from memory).");
                return;
            }
        }
        if (measures.period().known() && slowest > SLOW_SHARE * measures.period().value()) {
            reasons.add("Its edges take " + Si.text(slowest, 3, "s") + ", a good part of its period.");
        }
    }

    private void noise(Thresholds by) {
        double noise = 2 * SIGMAS * measures.noise().sigma();
        if (by == null || !by.band()) {
            if (noise > 0.3 * measures.levels().amplitude()) {
                reasons.add("Noise of " + Si.text(noise, 2, unit) + " peak to peak lies on it.");
            }
            return;
        }
        double spare = Math.min(measures.levels().high() - by.high(), by.low() - measures.levels().low());
        if (noise / 2 > spare && spare > 0) {
            find(Verdict.NOISE, "Noise of " + Si.text(noise, 2, unit) + " peak to peak takes up what its levels have to spare, "
                    + Si.text(spare, 3, unit) + ".");
        }
    }

    /** Whether both levels are good enough, where somebody said for what. */
    private void levels(Thresholds by) {
        if (by == null) {
            reasons.add(UNJUDGED);
            return;
        }
        double low = by.low() - measures.levels().low();
        double high = measures.levels().high() - by.high();
        if (high < 0 && by.band()) {
            find(Verdict.WEAK_HIGH, "Its upper level, " + Si.text(measures.levels().high(), unit) + ", is no high for "
                    + by.name() + ", which wants " + Si.text(by.high(), unit) + " or more.");
        }
        if (low < 0 && by.band()) {
            find(Verdict.WEAK_LOW, "Its lower level, " + Si.text(measures.levels().low(), unit) + ", is no low for " + by.name()
                    + ", which wants " + Si.text(by.low(), unit) + " or less.");
        }
        if (low >= 0 && high >= 0) {
            reasons.add("Its levels are good for " + by.name() + ": " + Si.text(low, 3, unit) + " to spare when low, "
                    + Si.text(high, 3, unit) + " when high.");
        }
    }

    private void find(Verdict verdict, String reason) {
        findings.add(verdict);
        reasons.add(findings.size() - 1, reason);
    }

    private static String times(int n) {
        return n == 1 ? "once" : n == 2 ? "twice" : n + " times";
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
