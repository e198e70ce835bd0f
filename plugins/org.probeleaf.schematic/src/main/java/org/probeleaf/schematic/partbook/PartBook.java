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
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;

/**
 * What is known of parts beyond what a sheet prints: the class that a designator's letters stand for, and the pins of
 * common types, found by a part's value. Any thread may use it.
 */
public final class PartBook {

    private static final Set<String> SUPPLY_NAMES = Set.of("VCC", "VDD", "VSS", "VEE", "GND", "AGND", "DGND", "PGND",
            "VBB", "AVCC", "AVDD", "AVSS", "DVDD", "DVSS", "0V", "V+", "V-");

    /** The letters of a designator after a number, which may be that of a board with a unit letter ({@code 1A_R5}). */
    private static final Pattern LETTERS = Pattern.compile("(?:\\d+[A-Z]*_)?[^\\p{L}]*(\\p{L}+)");

    private final Map<String, PartClass> classes;
    private final List<Entry> entries;
    private final Map<String, Optional<PartType>> found = new ConcurrentHashMap<>();

    PartBook(Map<String, PartClass> classes, List<Entry> entries) {
        this.classes = classes;
        this.entries = entries;
    }

    /** A book that knows nothing. */
    public static PartBook empty() {
        return new PartBook(Map.of(), List.of());
    }

    /** The book that comes with the program. */
    public static PartBook standard() {
        return Standard.BOOK;
    }

    /**
     * Reads a part book.
     *
     * @param text in the form that the head of the standard book, {@code parts.txt}, describes; not closed
     * @throws IOException where {@code text} fails or a line is wrong; the message names the line
     */
    public static PartBook read(Reader text) throws IOException {
        return new PartBookReader().read(new BufferedReader(text));
    }

    /**
     * This book laid over another: its classes count before those of the other, its parts are found before those of
     * the other, and a part of its name hides the other's.
     */
    public PartBook over(PartBook base) {
        Set<String> own = entries.stream().map(e -> e.type().name()).collect(Collectors.toSet());
        Map<String, PartClass> both = new HashMap<>(base.classes);
        both.putAll(classes);
        List<Entry> all = new ArrayList<>(entries);
        base.entries.stream().filter(e -> !own.contains(e.type().name())).forEach(all::add);
        return new PartBook(Map.copyOf(both), List.copyOf(all));
    }

    /** The classes by the letters of a designator. */
    public Map<String, PartClass> classes() {
        return classes;
    }

    /** All types in the book. */
    public List<PartType> types() {
        return entries.stream().map(Entry::type).toList();
    }

    /** The lines that tell the book of a type, as they were written; empty where it has no type of that name. */
    public Optional<String> text(String name) {
        return entries.stream().filter(e -> e.type().name().equals(name)).findFirst().map(Entry::text);
    }

    /**
     * The type of part that a value means, in any of its common spellings: {@code 7400}, {@code 74LS00},
     * {@code SN74HCT00N} are one.
     *
     * @param value as printed, or null
     */
    public Optional<PartType> find(String value) {
        if (value == null || value.isBlank()) {
            return Optional.empty();
        }
        Optional<PartType> known = found.get(value);
        return known != null ? known : found.computeIfAbsent(value, this::search);
    }

    /** The class that the letters of a designator stand for; a unit letter or a number before them do not count. */
    public PartClass classOf(String ref) {
        Matcher m = LETTERS.matcher(ref.strip().toUpperCase(Locale.ROOT));
        return m.lookingAt() ? classes.getOrDefault(m.group(1), PartClass.UNKNOWN) : PartClass.UNKNOWN;
    }

    /**
     * What the book knows of a part's pin: by its printed name where that fits one pin of the type, else by its
     * number.
     */
    public Optional<PinType> pin(Part part, Pin pin) {
        Optional<PartType> type = find(part.value());
        if (type.isEmpty()) {
            return Optional.empty();
        }
        Optional<PinType> named = pin.name() == null ? Optional.empty() : type.get().pinNamed(pin.name());
        return named.isPresent() || pin.number() == null ? named : type.get().pinNumbered(pin.number());
    }

    /** Which way a part's pin works: by the type of part, else by a supply's name, else by the class of part. */
    public PinDirection direction(Part part, Pin pin) {
        Optional<PinType> known = pin(part, pin);
        if (known.isPresent()) {
            return known.get().role().direction();
        }
        PartClass kind = classOf(part.ref());
        if (kind.pins() != PinDirection.UNKNOWN) {
            return kind.pins();
        }
        String name = pin.name() == null ? "" : pin.name().toUpperCase(Locale.ROOT);
        if (SUPPLY_NAMES.contains(name)) {
            return PinDirection.POWER;
        }
        return kind == PartClass.TRANSISTOR && Set.of("B", "G").contains(name) ? PinDirection.IN
                : PinDirection.UNKNOWN;
    }

    private Optional<PartType> search(String value) {
        for (String form : List.of(Spelling.even(value, false), Spelling.even(value, true))) {
            for (Entry entry : entries) {
                if (entry.fits(form)) {
                    return Optional.of(entry.type());
                }
            }
        }
        return Optional.empty();
    }

    /** A type, the forms it is written in, and its lines in the book. */
    record Entry(PartType type, List<Spelling> spelt, List<Spelling> unlike, String text) {

        boolean fits(String value) {
            return spelt.stream().anyMatch(s -> s.fits(value)) && unlike.stream().noneMatch(s -> s.fits(value));
        }
    }

    /** Read when it is first asked for. */
    private static final class Standard {

        static final PartBook BOOK = load();

        private static PartBook load() {
            try (InputStream in = PartBook.class.getResourceAsStream("parts.txt")) {
                return read(new InputStreamReader(in, StandardCharsets.UTF_8));
            } catch (IOException e) {
                throw new UncheckedIOException("the part book of the program is unreadable", e);
            }
        }
    }
}
