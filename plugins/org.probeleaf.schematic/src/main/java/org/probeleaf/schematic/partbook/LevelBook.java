// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.partbook;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Logic levels of families and chips, found by name or by a part's value. Any thread may use it. */
public final class LevelBook {

    /** A maker's letters, 74 or 54, the family's letters, a number. */
    private static final Pattern SEVENTY_FOUR = Pattern.compile("(?:[A-Z]{1,4}-?)?(54|74)([A-Z]*)\\d{2,5}.*");
    private static final Pattern FOUR_THOUSAND = Pattern.compile("(?:CD|HEF|HCF|TC|MC1|UPD)?4[0-5]\\d{2}(?:UB|B).*"
            + "|(?:CD|HEF|HCF|TC|MC1)4[0-5]\\d{2}.*|40\\d{2}|45\\d{2}");

    private final List<LogicLevels> levels;
    private final Map<String, List<Spelling>> unlike;
    private final Map<String, List<Spelling>> spelt;

    LevelBook(List<LogicLevels> levels, Map<String, List<Spelling>> unlike, Map<String, List<Spelling>> spelt) {
        this.levels = List.copyOf(levels);
        this.unlike = Map.copyOf(unlike);
        this.spelt = Map.copyOf(spelt);
    }

    /** The book that comes with the program. */
    public static LevelBook standard() {
        return Standard.BOOK;
    }

    /**
     * Reads a book of levels.
     *
     * @param text in the form that the head of the standard book, {@code levels.txt}, describes; not closed
     * @throws IOException where {@code text} fails or a line is wrong; the message names the line
     */
    public static LevelBook read(Reader text) throws IOException {
        return new LevelBookReader().read(new BufferedReader(text));
    }

    /** All that are known, families first. */
    public List<LogicLevels> levels() {
        return levels;
    }

    /** The family or chip of a name, letter case ignored. */
    public Optional<LogicLevels> named(String name) {
        return levels.stream().filter(l -> l.name().equalsIgnoreCase(name)).findFirst();
    }

    /**
     * The levels of a part.
     *
     * @param value  its value as printed, or null
     * @param supply of the part, in volts, or NaN for the usual one
     * @param parts  finds the type that the value means
     */
    public Optional<LogicLevels> of(String value, double supply, PartBook parts) {
        if (value == null) {
            return Optional.empty();
        }
        String even = Spelling.even(value, false);
        Optional<LogicLevels> spelled = levels.stream().filter(l -> spelt.getOrDefault(l.name(), List.of()).stream()
                .anyMatch(s -> s.fits(even))).findFirst();
        if (spelled.isPresent()) {
            return spelled;
        }
        Optional<PartType> type = parts.find(value);
        Optional<LogicLevels> chip = type.flatMap(t -> named(t.name())).filter(LogicLevels::chip);
        if (chip.isPresent()) {
            boolean other = unlike.getOrDefault(chip.get().name(), List.of()).stream().anyMatch(s -> s.fits(even));
            return other ? Optional.empty() : chip;
        }
        Matcher m = SEVENTY_FOUR.matcher(even);
        if (m.matches()) {
            return family(m.group(1) + m.group(2), supply);
        }
        return type.isEmpty() && FOUR_THOUSAND.matcher(even).matches() ? family("4000B", supply) : Optional.empty();
    }

    private Optional<LogicLevels> family(String name, double supply) {
        Optional<LogicLevels> exact = levels.stream().filter(l -> l.supply() == supply
                && l.name().toUpperCase(Locale.ROOT).startsWith(name + "@")).findFirst();
        return exact.or(() -> named(name).filter(l -> !l.chip()));
    }

    /** Read when it is first asked for. */
    private static final class Standard {

        static final LevelBook BOOK = load();

        private static LevelBook load() {
            try (InputStream in = LevelBook.class.getResourceAsStream("levels.txt")) {
                return read(new InputStreamReader(in, StandardCharsets.UTF_8));
            } catch (IOException e) {
                throw new UncheckedIOException("the levels of the program are unreadable", e);
            }
        }
    }
}
