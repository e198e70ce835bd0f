// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.measure;

/**
 * One figure of a waveform, or the reason why there is none.
 *
 * @param value       in the SI unit of the figure; NaN where it has none
 * @param uncertainty by how much the true figure may differ, either way, in the same unit: what sampling, the step of the
 *                    converter and noise allow, the latter with three standard deviations; what the instrument itself is
 *                    out by is not in it. NaN where there is no value
 * @param reason      why there is no value; null where there is one
 */
public record Figure(double value, double uncertainty, String reason) {

    /** A figure that was had; none where it is no finite number. */
    public static Figure of(double value, double uncertainty) {
        return Double.isFinite(value) ? new Figure(value, Math.abs(uncertainty), null)
                : none("the values are too large to reckon with");
    }

    /** A figure that has no meaning here. */
    public static Figure none(String reason) {
        return new Figure(Double.NaN, Double.NaN, reason);
    }

    /** The same in a unit that is smaller by the given factor: 100 makes per cent of a share. */
    public Figure times(double factor) {
        return known() ? new Figure(value * factor, uncertainty * Math.abs(factor), null) : this;
    }

    /** Whether there is a value. */
    public boolean known() {
        return reason == null;
    }

    /** Whether a value lies within the uncertainty. */
    public boolean admits(double truth) {
        return known() && Math.abs(truth - value) <= uncertainty;
    }
}
