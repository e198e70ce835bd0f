// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.history;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import org.probeleaf.job.JobState;
import org.probeleaf.job.history.HistoryStep.Captured;
import org.probeleaf.job.history.HistoryStep.Done;
import org.probeleaf.job.history.HistoryStep.Read;
import org.probeleaf.job.mark.Board;
import org.probeleaf.job.mark.KeptBoardChange;
import org.probeleaf.job.mark.Mark;
import org.probeleaf.job.mark.ReadingMark;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.schematic.quantity.QuantityKind;
import org.probeleaf.trace.SignalGraph;

/**
 * The readings and waveforms of one place in order of time, with what was done to the board between them. What was read
 * anywhere on the same net, as it is drawn, counts as read at the place; each says where it was.
 *
 * @param steps the oldest first; from the first reading or waveform on
 */
public record PlaceHistory(List<HistoryStep> steps) {

    public PlaceHistory {
        steps = List.copyOf(steps);
    }

    /**
     * The history of a place.
     *
     * @param book knows the pins of parts
     */
    public static PlaceHistory of(JobState state, Place place, PartBook book) {
        SignalGraph graph = state.boards() == null || state.netlist() == null ? null
                : SignalGraph.of(state.boards().drawn(), book);
        Optional<Net> net = graph == null ? Optional.empty() : graph.netAt(place);
        List<HistoryStep> marks = new ArrayList<>();
        state.readings().stream().filter(r -> here(r, place, net, graph)).forEach(r -> marks.add(new Read(r, Double.NaN, "")));
        state.captures().stream().filter(c -> here(c, place, net, graph)).forEach(c -> marks.add(new Captured(c)));
        if (marks.isEmpty()) {
            return new PlaceHistory(List.of());
        }
        marks.sort(Comparator.comparing(HistoryStep::when));
        List<HistoryStep> all = new ArrayList<>(done(state));
        all.removeIf(d -> d.when().isBefore(marks.get(0).when()));
        all.addAll(marks);
        all.sort(Comparator.comparing(HistoryStep::when));
        return new PlaceHistory(compared(all));
    }

    /** The last reading; empty where there is none. */
    public Optional<ReadingMark> lastReading() {
        return steps.stream().filter(Read.class::isInstance).map(s -> ((Read) s).reading()).reduce((a, b) -> b);
    }

    private static boolean here(Mark mark, Place place, Optional<Net> net, SignalGraph graph) {
        return mark.place().equals(place) || net.isPresent() && net.equals(graph.netAt(mark.place()));
    }

    private static List<HistoryStep> done(JobState state) {
        List<HistoryStep> done = new ArrayList<>();
        for (KeptBoardChange kept : state.boards().kept()) {
            if (kept.board() == Board.THIS) {
                done.add(new Done(kept.when(), kept.words()));
                if (kept.putBack() != null) {
                    done.add(new Done(kept.putBack(), kept.words() + ": put back"));
                }
            }
        }
        return done;
    }

    /** Each reading against the one of its kind before. */
    private static List<HistoryStep> compared(List<HistoryStep> all) {
        List<HistoryStep> steps = new ArrayList<>();
        Map<QuantityKind, Integer> last = new EnumMap<>(QuantityKind.class);
        for (int i = 0; i < all.size(); i++) {
            if (!(all.get(i) instanceof Read read)) {
                steps.add(all.get(i));
                continue;
            }
            QuantityKind kind = read.reading().value().kind();
            Integer before = last.put(kind, i);
            steps.add(before == null ? read : new Read(read.reading(), kind.isState() ? Double.NaN
                    : read.reading().value().value() - ((Read) all.get(before)).reading().value().value(),
                    since(all.subList(before, i))));
        }
        return steps;
    }

    private static String since(List<HistoryStep> between) {
        String words = between.stream().filter(Done.class::isInstance).map(d -> ((Done) d).words())
                .collect(Collectors.joining(", "));
        return words.isEmpty() ? "" : "since " + words;
    }
}
