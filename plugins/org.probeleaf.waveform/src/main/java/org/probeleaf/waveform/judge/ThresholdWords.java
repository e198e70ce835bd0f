// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.judge;

import java.util.Optional;
import java.util.stream.Collectors;

import org.probeleaf.schematic.partbook.LevelBook;
import org.probeleaf.schematic.partbook.LogicLevels;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.quantity.BenchValue;
import org.probeleaf.schematic.quantity.Quantity;
import org.probeleaf.schematic.quantity.QuantityKind;
import org.probeleaf.waveform.measure.Si;

/** What a signal is held against, as people type it: {@code 74LS}, {@code 74HC 4.5V}, {@code SN74LS32N}, {@code 2.0V}. */
public final class ThresholdWords {

    /** What a person says who wants no levels judged. */
    public static final String NOTHING = "nothing";

    private final LevelBook book;
    private final PartBook parts;

    /**
     * @param book  the levels that are known
     * @param parts finds the type that a part's value means
     */
    public ThresholdWords(LevelBook book, PartBook parts) {
        this.book = book;
        this.parts = parts;
    }

    /**
     * Reads a line.
     *
     * @return nothing of a blank line, and of {@link #NOTHING}
     * @throws IllegalArgumentException with one sentence for a person where it is none
     */
    public Optional<Thresholds> parse(String line) {
        String text = line.strip();
        if (text.isEmpty() || text.equalsIgnoreCase(NOTHING)) {
            return Optional.empty();
        }
        Optional<LogicLevels> named = book.named(text);
        Optional<Double> volts = named.isPresent() ? Optional.empty() : volts(text);
        if (volts.isPresent()) {
            return Optional.of(Thresholds.plain(volts.get()));
        }
        int space = text.lastIndexOf(' ');
        Optional<Double> supply = space < 0 ? Optional.empty() : volts(text.substring(space + 1));
        return Optional.of(Thresholds.of(named.orElseGet(() -> supply.isPresent()
                ? levels(text.substring(0, space).strip(), supply.get()) : levels(text, Double.NaN))));
    }

    /**
     * The levels of a family at a supply.
     *
     * @param family a family, a chip, or a part's value
     * @param supply in volts; NaN for the usual one
     * @throws IllegalArgumentException with one sentence for a person where they are not known
     */
    public LogicLevels levels(String family, double supply) {
        LogicLevels levels = book.named(family).or(() -> book.of(family, supply, parts)).orElseThrow(
                () -> new IllegalArgumentException("there is no family \"" + family + "\"; known are " + book.levels().stream()
                        .map(LogicLevels::name).collect(Collectors.joining(", "))));
        if (Double.isNaN(supply)) {
            return levels;
        }
        String plain = plain(levels);
        return book.levels().stream().filter(l -> plain(l).equals(plain) && l.supply() == supply).findFirst()
                .or(() -> Optional.of(levels).filter(l -> l.supplyMin() <= supply && supply <= l.supplyMax()))
                .orElseThrow(() -> new IllegalArgumentException("the levels of " + plain + " at " + Si.text(supply, "V")
                        + " are not known; known are those at " + book.levels().stream().filter(l -> plain(l).equals(plain))
                                .map(l -> Si.text(l.supply(), "V")).collect(Collectors.joining(", "))));
    }

    /** The name without a supply. */
    private static String plain(LogicLevels levels) {
        return levels.name().replaceFirst("@.*", "");
    }

    private static Optional<Double> volts(String text) {
        try {
            Quantity quantity = BenchValue.parse(text, QuantityKind.VOLTAGE_DC).quantity();
            return quantity.kind() == QuantityKind.VOLTAGE_DC ? Optional.of(quantity.value()) : Optional.empty();
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}
