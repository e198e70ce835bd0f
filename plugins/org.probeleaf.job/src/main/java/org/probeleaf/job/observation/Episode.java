// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.observation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import org.probeleaf.diagnosis.Observation;
import org.probeleaf.job.JobState;
import org.probeleaf.job.mark.Board;
import org.probeleaf.job.mark.KeptBoardChange;
import org.probeleaf.job.mark.ReadingMark;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.trace.board.BoardState;

/**
 * What was read while the board on the bench was in one state: a reading speaks of the board as it was then. Lifting a
 * pin for now does not make earlier readings void, since what was wrong then still is; what is done for good does, since
 * it may have mended it.
 *
 * @param board the board as it was
 * @param seen  what its readings say, in the order they were taken; nothing where none says anything
 */
public record Episode(BoardState board, List<Observation> seen) {

    public Episode {
        seen = List.copyOf(seen);
    }

    /**
     * The episodes since something was last done for good, by the time of their last reading; the last is the board as
     * it is now, be it without readings. None before recognition.
     *
     * @param book knows the logic family of parts
     */
    public static List<Episode> of(JobState state, PartBook book) {
        if (state.onBench() == null) {
            return List.of();
        }
        List<KeptBoardChange> changes = state.boards().kept().stream().filter(k -> k.board() == Board.THIS).toList();
        Set<String> now = standing(changes, null);
        Map<Set<String>, List<Observation>> byState = new LinkedHashMap<>();
        ReadingSense sense = new ReadingSense(state, book);
        for (ReadingMark reading : state.readings()) {
            Set<String> then = standing(changes, reading);
            if (then.containsAll(forGood(changes))) {
                List<Observation> before = byState.remove(then);
                List<Observation> all = before == null ? new ArrayList<>() : before;
                all.addAll(sense.of(reading));
                byState.put(then, all);
            }
        }
        List<Observation> last = byState.remove(now);
        List<Episode> episodes = new ArrayList<>();
        byState.forEach((then, seen) -> {
            if (!seen.isEmpty()) {
                episodes.add(new Episode(board(state, changes, then), seen));
            }
        });
        episodes.add(new Episode(state.boards().thisBoard(), last == null ? List.of() : last));
        return episodes;
    }

    /** Ids of what was done when a reading was taken and stood then; of what stands now for no reading. */
    private static Set<String> standing(List<KeptBoardChange> changes, ReadingMark reading) {
        return changes.stream().filter(k -> reading == null ? k.stands() : !k.when().isAfter(reading.when())
                && (k.putBack() == null || k.putBack().isAfter(reading.when()))).map(KeptBoardChange::id)
                .collect(Collectors.toUnmodifiableSet());
    }

    private static Set<String> forGood(List<KeptBoardChange> changes) {
        return changes.stream().filter(k -> k.stands() && !k.temporary()).map(KeptBoardChange::id)
                .collect(Collectors.toUnmodifiableSet());
    }

    private static BoardState board(JobState state, List<KeptBoardChange> changes, Set<String> ids) {
        return BoardState.of(state.boards().drawn(), changes.stream().filter(k -> ids.contains(k.id()))
                .map(KeptBoardChange::change).toList());
    }
}
