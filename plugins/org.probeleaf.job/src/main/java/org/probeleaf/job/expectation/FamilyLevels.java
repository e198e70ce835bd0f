// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.expectation;

import org.probeleaf.schematic.quantity.Bound;
import org.probeleaf.schematic.quantity.Quantity;
import org.probeleaf.schematic.quantity.QuantityKind;

/**
 * A steady logic level of a family: as low as the family's outputs give it or as high. Between that and what its
 * inputs take as low or high the level works with little to spare, which is unsure; between the input levels it is bad.
 *
 * @param family the family whose inputs read the level
 */
public record FamilyLevels(LogicFamily family) implements Expectation {

    /** How far past the supply or below ground a level may go before something is wrong, in volts. */
    private static final double BEYOND_RAILS = 0.5;

    @Override
    public QuantityKind kind() {
        return QuantityKind.VOLTAGE_DC;
    }

    @Override
    public String text() {
        return family.name();
    }

    /** A low stays one further down, as nobody writes "less than" of a voltage below ground; a high may end above the supply. */
    @Override
    public boolean alike(double limit, Bound beyond) {
        return beyond == Bound.ABOVE ? limit > family.supply() + BEYOND_RAILS : limit <= family.volMax();
    }

    @Override
    public Verdict judge(Quantity value) {
        if (value.kind() == QuantityKind.LOGIC) {
            return new Verdict(Outcome.GOOD, value.text() + " is a valid state");
        }
        if (value.kind() == QuantityKind.ACTIVITY && value.value() == 1) {
            return new Verdict(Outcome.GOOD, value.text() + " between valid states");
        }
        if (!Judge.comparable(kind(), value)) {
            return Judge.otherKind(kind(), value);
        }
        double v = value.value();
        String is = volts(v);
        if (v < -BEYOND_RAILS) {
            return new Verdict(Outcome.BAD, is + " is below ground");
        }
        if (v > family.supply() + BEYOND_RAILS) {
            return new Verdict(Outcome.BAD, is + " is above the " + volts(family.supply()) + " supply");
        }
        return level(v, is);
    }

    private Verdict level(double v, String is) {
        String name = family.name();
        if (v <= family.volMax()) {
            return new Verdict(Outcome.GOOD, is + " is a good low for " + name);
        }
        if (v >= family.vohMin()) {
            return new Verdict(Outcome.GOOD, is + " is a good high for " + name);
        }
        if (v <= family.vilMax()) {
            return new Verdict(Outcome.UNSURE, is + " is a weak low for " + name + ": an output gives "
                    + volts(family.volMax()) + " or less");
        }
        if (v >= family.vihMin()) {
            return new Verdict(Outcome.UNSURE, is + " is a weak high for " + name + ": an output gives "
                    + volts(family.vohMin()) + " or more");
        }
        return new Verdict(Outcome.BAD, is + " is neither low nor high for " + name + " (between "
                + volts(family.vilMax()) + " and " + volts(family.vihMin()) + ")");
    }

    private static String volts(double v) {
        return Quantity.of(QuantityKind.VOLTAGE_DC, v).text();
    }
}
