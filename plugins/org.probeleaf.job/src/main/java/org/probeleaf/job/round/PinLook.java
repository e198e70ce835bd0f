// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.round;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.probeleaf.job.expectation.LogicFamily;
import org.probeleaf.job.expectation.RailName;
import org.probeleaf.schematic.netlist.LabelKind;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.NetLabel;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.partbook.PinDirection;
import org.probeleaf.schematic.partbook.PinRole;
import org.probeleaf.schematic.partbook.PinType;

/**
 * What a pin should look like: a rail with the usual tolerance of its supply (5 % for logic, common practice), ground,
 * the levels of a logic family.
 *
 * @param words    for a person; empty where nothing can be said
 * @param expected as an expectation is typed; empty where there is none
 */
record PinLook(String words, String expected) {

    private static final PinLook NONE = new PinLook("", "");
    private static final Pattern GROUND = Pattern.compile("(?:[ADPS]?GND[A-Z]?|0V|VSS|EARTH)");
    private static final Pattern LOGIC = Pattern.compile("(?:[A-Z]{1,3}-?)?(74|54)([A-Z]{0,4})\\d{2,4}.*");
    private static final Pattern CMOS = Pattern.compile("(?:[A-Z]{1,3}-?)?1?4[05]\\d\\dB?[A-Z]*");

    static PinLook of(Part part, Pin pin, PinType type, Net net, Netlist board, boolean lifted) {
        PinRole role = type == null ? null : type.role();
        if (role == PinRole.NOT_CONNECTED) {
            return new PinLook("not connected inside", "");
        }
        if (lifted || net == null) {
            return new PinLook(lifted ? "lifted: what the pin does alone" : "on no net", "");
        }
        Optional<String> rail = rail(net);
        if (role == PinRole.GROUND || rail.filter("0"::equals).isPresent()) {
            return new PinLook("ground", "0V\u00b10.1V");
        }
        if (rail.isPresent()) {
            return new PinLook("supply, " + rail.get() + " V", rail.get() + "V\u00b15%");
        }
        if (role == PinRole.SUPPLY) {
            return new PinLook("supply", "");
        }
        return type == null || role == PinRole.TIMING ? NONE : logic(part, type);
    }

    private static PinLook logic(Part part, PinType type) {
        Optional<LogicFamily> family = family(part.value());
        if (family.isEmpty()) {
            return NONE;
        }
        LogicFamily f = family.get();
        boolean out = type.role().direction() == PinDirection.OUT;
        String levels = out ? "low under " + volts(f.volMax()) + ", high over " + volts(f.vohMin())
                : "low under " + volts(f.vilMax()) + ", high over " + volts(f.vihMin());
        return new PinLook((out ? "output: " : "input: ") + levels, f.name());
    }

    private static String volts(double v) {
        return String.format(Locale.ROOT, "%.1f V", v);
    }

    /** The family that a value is of; types of the part book with no letters of a family are taken for NMOS. */
    private static Optional<LogicFamily> family(String value) {
        String plain = value == null ? "" : value.toUpperCase(Locale.ROOT).replaceAll("\\s", "");
        Matcher logic = LOGIC.matcher(plain);
        if (logic.matches()) {
            return LogicFamily.named(logic.group(1) + logic.group(2));
        }
        return LogicFamily.named(CMOS.matcher(plain).matches() ? "4000B" : "NMOS");
    }

    /** The voltage that a supply net's name tells, without its unit; {@code "0"} for ground. */
    private static Optional<String> rail(Net net) {
        boolean supply = net.labels().stream().anyMatch(l -> l.kind() == LabelKind.POWER);
        return net.labels().stream().filter(l -> l.kind() == LabelKind.POWER).map(NetLabel::text)
                .map(n -> voltage(n, true)).flatMap(Optional::stream).findFirst()
                .or(() -> net.name() != null && (supply || net.name().matches("[+-].*")
                        || GROUND.matcher(net.name().toUpperCase(Locale.ROOT)).matches()) ? voltage(net.name(), supply)
                        : Optional.empty());
    }

    private static Optional<String> voltage(String name, boolean supply) {
        if (GROUND.matcher(name.strip().toUpperCase(Locale.ROOT)).matches()) {
            return Optional.of("0");
        }
        OptionalDouble volts = RailName.volts(name, supply);
        return volts.isEmpty() ? Optional.empty()
                : Optional.of(BigDecimal.valueOf(volts.getAsDouble()).stripTrailingZeros().toPlainString());
    }
}
