// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.answer;

import java.util.List;

import org.probeleaf.schematic.partbook.LevelBook;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.trace.NetTrace;
import org.probeleaf.trace.SignalPath;
import org.probeleaf.trace.drive.DriveBudget;
import org.probeleaf.trace.drive.Drivers;
import org.probeleaf.trace.follow.CutOff;
import org.probeleaf.trace.follow.FollowOptions;
import org.probeleaf.trace.follow.Followed;
import org.probeleaf.trace.follow.SignalNetwork;

/**
 * What {@code trace} finds.
 *
 * @param net      the net at the place
 * @param drivers  what drives it
 * @param budgets  whether they carry what hangs on it
 * @param followed where it goes on to, or comes from
 * @param to       the place that the ways lead to, or null
 * @param paths    the ways there, the shortest first
 * @param cuts     what single lifts and removals would cut off, or null where that was not asked
 */
public record TraceAnswer(NetTrace net, Drivers drivers, List<DriveBudget> budgets, Followed followed, Place to,
        List<SignalPath> paths, List<CutOff> cuts) {

    private static final int MOST_PATHS = 20;

    /**
     * Asks a board.
     *
     * @param from    the place
     * @param to      another place, or null
     * @param options what to follow the signal through; where it is neither series parts nor gates, ways to {@code to}
     *                and cuts go through both
     * @param cuts    whether to say what lifts and removals would cut off
     */
    public static TraceAnswer of(SignalNetwork network, Place from, Place to, FollowOptions options, boolean cuts) {
        NetTrace net = network.signals().trace(from);
        FollowOptions through = options.series() || options.gates() ? options : FollowOptions.all().with(options.flow());
        return new TraceAnswer(net, Drivers.of(network, net.net().id()),
                DriveBudget.of(network, net.net().id(), LevelBook.standard()), network.follow(from, options), to,
                to == null ? List.of() : network.paths(from, to, through.withEnables(through.gates()), MOST_PATHS),
                cuts ? CutOff.all(network, from, through) : null);
    }

    /** Whether the signal was to be followed beyond its net. */
    boolean goesOn() {
        return followed.options().series() || followed.options().gates();
    }
}
