// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.follow;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

import org.probeleaf.schematic.netlist.LabelKind;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.NetLabel;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.partbook.PartClass;
import org.probeleaf.schematic.partbook.PinDirection;
import org.probeleaf.schematic.partbook.PinRole;
import org.probeleaf.trace.TracedPin;

/**
 * Tells supplies from signals: by the power symbols on a net, by its name, and by the supply pins of known chips on it.
 * A pin says little where an output drives the net, so there it does not count. A power symbol counts where its text is
 * that of a voltage, or a capacitor hangs on the net; some sheets name signals with such symbols.
 */
final class Supplies {

    private static final Set<String> GROUNDS = Set.of("GND", "AGND", "DGND", "PGND", "GNDA", "GNDD", "SGND", "0V", "VSS",
            "AVSS", "DVSS", "0");
    private static final Pattern GROUND_WORD = Pattern.compile("(?:^|[_. -])(?:[AD]?GND|GROUND|EARTH|CHASSIS)(?:$|[_. \\d-])");
    private static final Pattern VOLTAGE_WORD = Pattern.compile("^V[A-Z]|VCC|VDD|VBAT|VBUS|VREF|VMOT|PWR|POWER|SUPPLY|BATT?"
            + "|\\d+V|V\\d|^[+-]\\d");
    private static final Set<String> RAILS = Set.of("VCC", "VDD", "VEE", "VBB", "AVCC", "AVDD", "DVDD", "VDDA", "V+",
            "V-");
    private static final Pattern VOLTS = Pattern.compile("[+-]\\d+(?:[.V]\\d*)?V?\\w{0,2}");

    private final PartBook book;

    Supplies(PartBook book) {
        this.book = book;
    }

    /** What a net carries. */
    NetKind kind(Net net, List<TracedPin> pins) {
        List<String> symbols = net.labels().stream().filter(l -> l.kind() == LabelKind.POWER).map(NetLabel::text).toList();
        if (symbols.stream().anyMatch(Supplies::ground) || net.name() != null && ground(net.name())) {
            return NetKind.GROUND;
        }
        if (symbols.stream().anyMatch(Supplies::voltage) || net.name() != null && rail(net.name())) {
            return NetKind.SUPPLY;
        }
        boolean driven = pins.stream().anyMatch(p -> p.direction() == PinDirection.OUT);
        NetKind told = driven ? NetKind.SIGNAL : byPins(pins);
        return told == NetKind.SIGNAL && !symbols.isEmpty() && !driven && pins.stream().anyMatch(this::buffered)
                ? NetKind.SUPPLY : told;
    }

    /** Whether a pin is that of a capacitor: a net with a power symbol and a capacitor is a supply, whatever its name. */
    private boolean buffered(TracedPin pin) {
        return book.classOf(pin.part().ref()) == PartClass.CAPACITOR;
    }

    private NetKind byPins(List<TracedPin> pins) {
        NetKind kind = NetKind.SIGNAL;
        for (TracedPin pin : pins) {
            if (pin.direction() == PinDirection.POWER) {
                Optional<PinRole> role = book.pin(pin.part(), pin.pin()).map(t -> t.role());
                boolean ground = role.map(r -> r == PinRole.GROUND).orElse(pin.name() != null && ground(pin.name()));
                if (ground) {
                    return NetKind.GROUND;
                }
                kind = NetKind.SUPPLY;
            }
        }
        return kind;
    }

    private static boolean ground(String name) {
        String plain = name.strip().toUpperCase(Locale.ROOT);
        return GROUNDS.contains(plain) || GROUND_WORD.matcher(plain).find();
    }

    private static boolean rail(String name) {
        String plain = name.strip().toUpperCase(Locale.ROOT);
        return RAILS.contains(plain) || VOLTS.matcher(plain).matches();
    }

    /** Whether the text of a power symbol is that of a supply; some sheets use such symbols for other names, too. */
    private static boolean voltage(String symbol) {
        return rail(symbol) || VOLTAGE_WORD.matcher(symbol.strip().toUpperCase(Locale.ROOT)).find();
    }
}
