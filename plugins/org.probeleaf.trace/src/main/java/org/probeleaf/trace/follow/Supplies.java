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
import org.probeleaf.schematic.partbook.PinDirection;
import org.probeleaf.schematic.partbook.PinRole;
import org.probeleaf.trace.TracedPin;

/**
 * Tells supplies from signals: by the power symbols on a net, by its name, and by the supply pins of known chips on it.
 * A pin says little where an output drives the net, so there it does not count.
 */
final class Supplies {

    private static final Set<String> GROUNDS = Set.of("GND", "AGND", "DGND", "PGND", "GNDA", "GNDD", "SGND", "0V", "VSS",
            "AVSS", "DVSS", "EARTH", "CHASSIS", "COM");
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
        if (!symbols.isEmpty()) {
            return symbols.stream().anyMatch(Supplies::ground) || net.name() != null && ground(net.name())
                    ? NetKind.GROUND : NetKind.SUPPLY;
        }
        if (net.name() != null && (ground(net.name()) || rail(net.name()))) {
            return ground(net.name()) ? NetKind.GROUND : NetKind.SUPPLY;
        }
        boolean driven = pins.stream().anyMatch(p -> p.direction() == PinDirection.OUT);
        return driven ? NetKind.SIGNAL : byPins(pins);
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
        return GROUNDS.contains(name.strip().toUpperCase(Locale.ROOT));
    }

    private static boolean rail(String name) {
        String plain = name.strip().toUpperCase(Locale.ROOT);
        return RAILS.contains(plain) || VOLTS.matcher(plain).matches();
    }
}
