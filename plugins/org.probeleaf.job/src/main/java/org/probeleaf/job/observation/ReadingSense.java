// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.observation;

import java.util.List;
import java.util.Optional;

import org.probeleaf.diagnosis.Observation;
import org.probeleaf.diagnosis.Seen;
import org.probeleaf.job.JobState;
import org.probeleaf.job.expectation.FamilyLevels;
import org.probeleaf.job.expectation.LogicFamily;
import org.probeleaf.job.expectation.Outcome;
import org.probeleaf.job.mark.ReadingMark;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.partbook.LevelBook;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.quantity.Quantity;
import org.probeleaf.schematic.quantity.QuantityKind;
import org.probeleaf.trace.SignalGraph;

/**
 * What a reading says to the diagnosis. A logic state, or a voltage that is one for its family, is that state: whether
 * it is the right one is for the diagnosis to say. Otherwise its verdict counts. What the technician says of it counts
 * before both. A reading without verdict that is no logic state says nothing.
 */
final class ReadingSense {

    private final SignalGraph graph;
    private final PartBook book;

    ReadingSense(JobState state, PartBook book) {
        this.graph = SignalGraph.of(state.boards().drawn(), book);
        this.book = book;
    }

    /** At most one observation. */
    List<Observation> of(ReadingMark reading) {
        return seen(reading).map(s -> List.of(new Observation(reading.place(), s))).orElse(List.of());
    }

    private Optional<Seen> seen(ReadingMark reading) {
        Quantity value = reading.value();
        if (reading.overruled()) {
            return ofVerdict(reading);
        }
        if (value.kind() == QuantityKind.LOGIC) {
            return Optional.of(value.value() == 1 ? Seen.HIGH : Seen.LOW);
        }
        Optional<LogicFamily> family = reading.expectation() instanceof FamilyLevels levels
                ? Optional.of(levels.family()) : reading.expectation() == null ? familyAt(reading) : Optional.empty();
        boolean bare = value.kind() == QuantityKind.NUMBER && !reading.remark().startsWith("%");
        boolean volts = value.kind() == QuantityKind.VOLTAGE_DC || bare;
        Optional<Seen> level = volts ? family.flatMap(f -> level(f, reading)) : Optional.empty();
        return level.or(() -> ofVerdict(reading));
    }

    private static Optional<Seen> ofVerdict(ReadingMark reading) {
        return reading.verdict() == null || reading.verdict().outcome() == Outcome.UNSURE ? Optional.empty()
                : Optional.of(reading.verdict().outcome() == Outcome.GOOD ? Seen.GOOD : Seen.BAD);
    }

    /** A value that moves is a state only where both its ends are the same one. */
    private static Optional<Seen> level(LogicFamily family, ReadingMark reading) {
        double low = reading.span().map(s -> s.low().value()).orElse(reading.value().value());
        double high = reading.span().map(s -> s.high().value()).orElse(reading.value().value());
        return level(family, low).filter(s -> level(family, high).equals(Optional.of(s)));
    }

    private static Optional<Seen> level(LogicFamily family, double volts) {
        boolean within = volts >= -0.5 && volts <= family.supply() + 0.5;
        return !within ? Optional.empty() : volts <= family.vilMax() ? Optional.of(Seen.LOW)
                : volts >= family.vihMin() ? Optional.of(Seen.HIGH) : Optional.empty();
    }

    /** The family of the first chip on the net whose family is known: its levels are the net's. */
    private Optional<LogicFamily> familyAt(ReadingMark reading) {
        Optional<Net> net = graph.netAt(reading.place());
        return net.flatMap(n -> graph.pinsOn(n.id()).stream().map(p -> family(p.part())).flatMap(Optional::stream)
                .findFirst());
    }

    private Optional<LogicFamily> family(Part part) {
        return part.value() == null ? Optional.empty()
                : LevelBook.standard().of(part.value(), Double.NaN, book).flatMap(l -> LogicFamily.named(l.name()));
    }
}
