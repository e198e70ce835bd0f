// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.circuit;

import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.regex.Pattern;

import org.probeleaf.schematic.netlist.LabelKind;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.partbook.PinRole;

/** Which nets are supplies and grounds, and what a logic input sees there. */
final class Rails {

    private static final Pattern GROUND = Pattern.compile("[ADPS]?GND[A-Z0-9]?|0V|VSS[A-Z]?|EARTH|COM");
    private static final Pattern NEGATIVE = Pattern.compile("-.*|VEE|VBB");
    private static final Pattern POSITIVE =
            Pattern.compile("\\+.*|[AD]?V(CC|DD)[A-Z0-9]?|\\d+(V\\d*|[.,]\\d+V)|VPP|V\\+");

    private Rails() {
    }

    /** The level of a rail; empty for a net that is none. */
    static OptionalInt level(Net net, List<Terminal> terminals) {
        List<String> symbols = net.labels().stream().filter(l -> l.kind() == LabelKind.POWER)
                .map(l -> even(l.text())).toList();
        String name = net.name() == null ? "" : even(net.name());
        if (symbols.stream().anyMatch(s -> GROUND.matcher(s).matches()) || GROUND.matcher(name).matches()) {
            return OptionalInt.of(Level.LOW);
        }
        if (symbols.stream().anyMatch(s -> NEGATIVE.matcher(s).matches())) {
            return OptionalInt.of(Level.UNKNOWN);
        }
        if (!symbols.isEmpty() || POSITIVE.matcher(name).matches()) {
            return OptionalInt.of(Level.HIGH);
        }
        return byPins(terminals);
    }

    /** A net without a name that chips are supplied from. */
    private static OptionalInt byPins(List<Terminal> terminals) {
        boolean ground = has(terminals, PinRole.GROUND);
        boolean supply = has(terminals, PinRole.SUPPLY);
        return ground == supply ? OptionalInt.empty() : OptionalInt.of(ground ? Level.LOW : Level.HIGH);
    }

    private static boolean has(List<Terminal> terminals, PinRole role) {
        return terminals.stream().anyMatch(t -> t.type() != null && t.type().role() == role);
    }

    private static String even(String name) {
        return name.strip().toUpperCase(Locale.ROOT).replaceAll("\\s", "");
    }
}
