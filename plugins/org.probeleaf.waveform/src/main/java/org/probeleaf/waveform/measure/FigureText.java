// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.measure;

/** Figures for people: the value with its unit, and behind it by how much it may differ. */
public final class FigureText {

    /** Below this a percentage is what rounding left of zero. */
    private static final double SCRAP = 1e-3;
    private static final int DIGITS = 2;

    private FigureText() {
    }

    /**
     * The value alone.
     *
     * @param figure one that is known
     * @param digits at most
     * @param unit   that the figure is in, without prefix; may be empty
     */
    public static String value(Figure figure, int digits, String unit) {
        boolean scrap = unit.equals("%") && Math.abs(figure.value()) < SCRAP;
        return Si.text(scrap ? 0 : figure.value(), digits, unit);
    }

    /**
     * By how much it may differ ({@code ± 2 mV}); empty where that is a matter of rounding only.
     *
     * @param figure one that is known
     * @param unit   that the figure is in, without prefix; may be empty
     */
    public static String uncertainty(Figure figure, String unit) {
        boolean exact = figure.uncertainty() <= 1e-7 * Math.max(Math.abs(figure.value()), 1e-9);
        return exact ? "" : "\u00b1 " + Si.text(figure.uncertainty(), DIGITS, unit);
    }

    /** Both, as {@code 1.5 V ± 33 mV}; parameters as of {@link #value}. */
    public static String both(Figure figure, int digits, String unit) {
        return (value(figure, digits, unit) + " " + uncertainty(figure, unit)).strip();
    }
}
