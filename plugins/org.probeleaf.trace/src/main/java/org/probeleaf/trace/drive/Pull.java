// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.drive;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.partbook.PartClass;
import org.probeleaf.schematic.quantity.BenchValue;
import org.probeleaf.schematic.quantity.QuantityKind;
import org.probeleaf.trace.TracedPin;
import org.probeleaf.trace.follow.NetKind;
import org.probeleaf.trace.follow.SignalNetwork;
import org.probeleaf.trace.follow.Step;

/**
 * A resistor that pulls a net up to a supply or down to ground.
 *
 * @param at    its pin on the net
 * @param to    the supply or ground
 * @param up    whether {@code to} is a supply
 * @param ohms  its value, in ohms; NaN where the sheet prints none that can be read
 * @param volts of the supply by its name, 0 for ground; NaN where the name does not tell
 */
public record Pull(TracedPin at, Net to, boolean up, double ohms, double volts) {

    private static final Pattern VOLTS = Pattern.compile("([+-]?)(\\d+)(?:[.V](\\d+))?V?[A-Z]*\\d?");

    /** The resistors that pull a net. */
    static List<Pull> on(SignalNetwork network, String netId) {
        List<Pull> all = new ArrayList<>();
        for (Step step : network.waysFrom(netId)) {
            NetKind kind = network.kind(step.toNet());
            if (step.kind().passive() && kind.isSupply()
                    && network.book().classOf(step.part().ref()) == PartClass.RESISTOR) {
                Net to = network.net(step.toNet());
                all.add(new Pull(step.in(), to, kind == NetKind.SUPPLY, ohms(step.part()),
                        kind == NetKind.SUPPLY ? volts(to.name()) : 0));
            }
        }
        return all;
    }

    /** {@code R10 (4.7 kΩ) pulls it up to +5V}. */
    public String text() {
        String value = Double.isNaN(ohms) ? "" : " (" + BenchValue.parse(at.part().value(), QuantityKind.RESISTANCE)
                .quantity().text() + ")";
        return at.part().ref() + value + " pulls it " + (up ? "up" : "down") + " to " + to.title();
    }

    /** The voltage that the name of a supply tells ({@code +5V}, {@code 3V3}, {@code -12V}), or NaN. */
    static double volts(String name) {
        Matcher m = VOLTS.matcher(name == null ? "" : name.strip().toUpperCase(java.util.Locale.ROOT));
        if (!m.matches()) {
            return Double.NaN;
        }
        double volts = Double.parseDouble(m.group(2) + "." + (m.group(3) == null ? "0" : m.group(3)));
        return "-".equals(m.group(1)) ? -volts : volts;
    }

    private static double ohms(Part part) {
        try {
            BenchValue value = part.value() == null ? null : BenchValue.parse(part.value(), QuantityKind.RESISTANCE);
            return value == null || value.quantity().kind() != QuantityKind.RESISTANCE ? Double.NaN
                    : value.quantity().value();
        } catch (IllegalArgumentException e) {
            return Double.NaN;
        }
    }
}
