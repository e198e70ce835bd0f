// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.drive;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.probeleaf.schematic.partbook.LevelBook;
import org.probeleaf.schematic.partbook.LogicLevels;
import org.probeleaf.schematic.partbook.LogicLevels.Drive;
import org.probeleaf.schematic.partbook.PartClass;
import org.probeleaf.schematic.partbook.PinDirection;
import org.probeleaf.schematic.partbook.PinRole;
import org.probeleaf.schematic.partbook.PinType;
import org.probeleaf.trace.TracedPin;
import org.probeleaf.trace.follow.OutputState;
import org.probeleaf.trace.follow.SignalNetwork;

/**
 * Whether an output carries all that hangs on its net: the sum of the currents of the inputs, of outputs that are
 * switched off, and of resistors to a supply or ground, against what the output guarantees. Inputs of one section that
 * are joined count each for itself, as in the data sheets' worst case.
 *
 * @param driver  the output
 * @param levels  of its family or chip, or null where they are not known
 * @param lets    whether it only pulls down, so that resistors alone make the high
 * @param loads   what hangs on the net and what each takes, as far as it is known
 * @param unknown pins on the net that take a current nobody knows
 * @param high    current that the loads take from a high output together, in amperes
 * @param low     current that they put into a low one, in amperes
 */
public record DriveBudget(TracedPin driver, LogicLevels levels, boolean lets, List<Load> loads, List<TracedPin> unknown,
        double high, double low) {

    /** Absorbs what sums leave over in binary fractions: ten times 0.4 mA are 4 mA. */
    private static final double ROUNDING = 1e-9;

    public DriveBudget {
        loads = List.copyOf(loads);
        unknown = List.copyOf(unknown);
    }

    /**
     * Something that hangs on a net.
     *
     * @param at     its pin there
     * @param levels of its family or chip; null for a resistor
     * @param high   current that it takes from a high net, in amperes
     * @param low    current that it puts into a low net, in amperes
     */
    public record Load(TracedPin at, LogicLevels levels, double high, double low) {
    }

    /**
     * The budgets of the outputs that drive a net, each alone, the one with the least to spare first; empty where no
     * driver is known.
     *
     * @param network the board
     * @param netId   the net
     * @param book    what families guarantee
     */
    public static List<DriveBudget> of(SignalNetwork network, String netId, LevelBook book) {
        List<DriveBudget> all = new ArrayList<>();
        for (TracedPin driver : Drivers.of(network, netId).pins()) {
            if (network.book().classOf(driver.part().ref()) != PartClass.TRANSISTOR) {
                all.add(new Sum(network, netId, book).against(driver));
            }
        }
        all.sort(Comparator.comparingDouble(DriveBudget::use).reversed());
        return all;
    }

    /** What the output guarantees with these loads, or null where its family is not known. */
    public Drive drive() {
        return levels == null ? null : levels.driveFor(lets ? 0 : high * (1 - ROUNDING), low * (1 - ROUNDING));
    }

    /** What is left of the output's current while high, in amperes; NaN where it is not known or not the output's task. */
    public double marginHigh() {
        return levels == null || lets ? Double.NaN : drive().ioh() - high;
    }

    /** What is left of the output's current while low, in amperes; NaN where it is not known. */
    public double marginLow() {
        return levels == null ? Double.NaN : drive().iol() - low;
    }

    /** The part of its current that the output gives, 1 for all of it; NaN where it is not known. */
    public double use() {
        return levels == null ? Double.NaN : Math.max(lets ? 0 : high / drive().ioh(), low / drive().iol());
    }

    /** Whether the output carries the known loads; empty where its family is not known. */
    public Optional<Boolean> carries() {
        double use = use();
        return Double.isNaN(use) ? Optional.empty() : Optional.of(use <= 1 + ROUNDING);
    }

    /**
     * The pull-up resistor that an output which only pulls down needs, without those that are there; empty for other
     * outputs and where levels are not known. The high is to be that of the output's family, as data books have it.
     */
    public Optional<PullUp> pullUp() {
        if (!lets || levels == null || Double.isNaN(levels.leak())) {
            return Optional.empty();
        }
        List<Load> inputs = loads.stream().filter(l -> l.levels() != null).toList();
        return Optional.of(PullUp.of(levels.supply(), levels.drive().vohMin(), levels.drive().volMax(), levels.drive().iol(),
                levels.leak(), inputs.stream().mapToDouble(Load::high).sum(),
                inputs.stream().mapToDouble(Load::low).sum()));
    }

    /** Sums up what hangs on a net. */
    private static final class Sum {

        private final SignalNetwork network;
        private final String net;
        private final LevelBook book;
        private final List<Load> loads = new ArrayList<>();
        private final List<TracedPin> unknown = new ArrayList<>();

        Sum(SignalNetwork network, String net, LevelBook book) {
            this.network = network;
            this.net = net;
            this.book = book;
        }

        DriveBudget against(TracedPin driver) {
            LogicLevels levels = levels(driver);
            boolean lets = network.output(driver) == OutputState.PULLS_DOWN;
            List<Pull> pulls = Pull.on(network, net);
            for (TracedPin pin : network.signals().pinsOn(net)) {
                if (pin.pin() != driver.pin() && pulls.stream().noneMatch(p -> p.at().pin() == pin.pin())) {
                    add(pin);
                }
            }
            Drive drive = levels == null ? null : levels.drive();
            for (Pull pull : pulls) {
                add(pull, drive);
            }
            return new DriveBudget(driver, levels, lets, loads, unknown,
                    loads.stream().mapToDouble(Load::high).sum(), loads.stream().mapToDouble(Load::low).sum());
        }

        private void add(TracedPin pin) {
            PartClass kind = network.book().classOf(pin.part().ref());
            if (kind == PartClass.CAPACITOR || kind == PartClass.TESTPOINT) {
                return;
            }
            LogicLevels levels = levels(pin);
            boolean listens = pin.direction() == PinDirection.IN || pin.direction() == PinDirection.BIDIR;
            boolean off = role(pin) == PinRole.THREE_STATE || role(pin) == PinRole.OPEN_COLLECTOR;
            double high = levels == null ? Double.NaN : listens ? levels.iih() : off ? levels.leak() : Double.NaN;
            double low = levels == null ? Double.NaN : listens ? levels.iil()
                    : off ? role(pin) == PinRole.OPEN_COLLECTOR ? 0 : levels.leak() : Double.NaN;
            if (Double.isNaN(high) || Double.isNaN(low)) {
                unknown.add(pin);
            } else {
                loads.add(new Load(pin, levels, high, low));
            }
        }

        private void add(Pull pull, Drive drive) {
            double supply = pull.up() ? pull.volts() : 0;
            if (drive == null || Double.isNaN(pull.ohms()) || Double.isNaN(supply) || pull.ohms() <= 0) {
                unknown.add(pull.at());
            } else if (pull.up()) {
                loads.add(new Load(pull.at(), null, 0, Math.max(0, (supply - drive.volMax()) / pull.ohms())));
            } else {
                loads.add(new Load(pull.at(), null, drive.vohMin() / pull.ohms(), 0));
            }
        }

        private PinRole role(TracedPin pin) {
            return network.book().pin(pin.part(), pin.pin()).map(PinType::role).orElse(PinRole.OUT);
        }

        private LogicLevels levels(TracedPin pin) {
            return PinLevels.of(network, pin, book).orElse(null);
        }
    }
}
