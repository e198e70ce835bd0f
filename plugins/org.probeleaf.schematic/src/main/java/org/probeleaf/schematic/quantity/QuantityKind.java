// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.quantity;

/** What a bench value says. */
public enum QuantityKind {
    /** A number whose unit is not known ({@code 5.03}, {@code 1.2M}). */
    NUMBER(Unit.NONE, "number"),
    /** Volts, direct. */
    VOLTAGE_DC(Unit.VOLT, "DC voltage"),
    /** Volts, alternating, RMS. */
    VOLTAGE_AC(Unit.VOLT, "AC voltage"),
    /** Volts, from the lowest to the highest point of an alternating voltage. */
    VOLTAGE_PP(Unit.VOLT, "peak-to-peak voltage"),
    /** Volts, from zero to the highest point of an alternating voltage. */
    VOLTAGE_PEAK(Unit.VOLT, "peak voltage"),
    /** Volts that a meter's diode test shows across a junction. */
    DIODE_DROP(Unit.VOLT, "diode drop"),
    /** A steady logic state: 1 high, 0 low. */
    LOGIC(Unit.NONE, "logic state"),
    /** Hertz. */
    FREQUENCY(Unit.HERTZ, "frequency"),
    /** Seconds. */
    TIME(Unit.SECOND, "time"),
    /** Ohms. */
    RESISTANCE(Unit.OHM, "resistance"),
    /** Ohms of equivalent series resistance, as of an electrolytic capacitor. */
    ESR(Unit.OHM, "equivalent series resistance"),
    /** Whether a signal moves, as a logic probe or a glance at a screen tells: 1 pulsing, 0 no signal. */
    ACTIVITY(Unit.NONE, "activity"),
    /** Whether two places are joined: 1 joined, 0 open. */
    CONTINUITY(Unit.NONE, "continuity"),
    /** No measure but what the person makes of it: 1 good, 0 bad. */
    CONDITION(Unit.NONE, "word"),
    /** Degrees Celsius. */
    TEMPERATURE(Unit.DEGREE_CELSIUS, "temperature"),
    /** Amperes. */
    CURRENT(Unit.AMPERE, "current"),
    /** Farads. */
    CAPACITANCE(Unit.FARAD, "capacitance");

    private final Unit unit;
    private final String title;

    QuantityKind(Unit unit, String title) {
        this.unit = unit;
        this.title = title;
    }

    /** The unit its values are held in. */
    public Unit unit() {
        return unit;
    }

    /** Its name for a person, in lower case ({@code "DC voltage"}). */
    public String title() {
        return title;
    }

    /** Whether it is one of the voltages. */
    public boolean isVoltage() {
        return unit == Unit.VOLT;
    }

    /** Whether its values are one of two states rather than a measure. */
    public boolean isState() {
        return this == LOGIC || this == ACTIVITY || this == CONTINUITY || this == CONDITION;
    }
}
