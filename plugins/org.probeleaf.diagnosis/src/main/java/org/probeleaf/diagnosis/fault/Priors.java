// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.fault;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.partbook.PartBook;

/**
 * How readily parts fail, before anything is measured: a weight for each class of part times a weight for each kind of
 * fault. Only their proportions count. Immutable; any thread may use it.
 */
public final class Priors {

    /** What stands for every class without a line of its own. */
    private static final String OTHER = "other";

    private final Map<String, Double> parts;
    private final Map<FaultKind, Double> faults;

    private Priors(Map<String, Double> parts, Map<FaultKind, Double> faults) {
        this.parts = parts;
        this.faults = faults;
    }

    /** The weights that come with the program; {@code priors.txt} says where they are from. */
    public static Priors standard() {
        return Standard.PRIORS;
    }

    /**
     * Reads weights. What the text does not name keeps the weight of {@link #standard}.
     *
     * @param text in the form that the head of {@code priors.txt} describes
     * @throws IllegalArgumentException with one sentence that names the line, where one is wrong
     */
    public static Priors parse(String text) {
        return parse(text, standard());
    }

    private static Priors parse(String text, Priors base) {
        Map<String, Double> parts = new TreeMap<>(base.parts);
        Map<FaultKind, Double> faults = new EnumMap<>(FaultKind.class);
        faults.putAll(base.faults);
        int number = 0;
        for (String line : text.lines().toList()) {
            number++;
            String plain = line.replaceFirst("#.*", "").strip();
            if (!plain.isEmpty()) {
                String[] words = plain.split("\\s+");
                if (words.length != 3) {
                    throw wrong(number, "must be: part CLASS WEIGHT, or fault KIND WEIGHT");
                }
                double weight = weight(words[2], number);
                switch (words[0]) {
                    case "part" -> parts.put(PartKinds.known(words[1], number), weight);
                    case "fault" -> faults.put(kind(words[1], number), weight);
                    default -> throw wrong(number, "begins with neither part nor fault");
                }
            }
        }
        return new Priors(Map.copyOf(parts), Map.copyOf(faults));
    }

    /** All weights as text, which {@link #parse} reads back. */
    public String format() {
        StringBuilder out = new StringBuilder();
        new TreeMap<>(parts).forEach((name, weight) -> line(out, "part", name, weight));
        new TreeMap<>(faults).forEach((kind, weight) -> line(out, "fault", kind.word(), weight));
        return out.toString();
    }

    private static void line(StringBuilder out, String what, String name, double weight) {
        String number = weight == Math.rint(weight) ? String.format(Locale.ROOT, "%.0f", weight)
                : Double.toString(weight);
        out.append(what).append(' ').append(name).append(' ').append(number).append('\n');
    }

    /** These weights with another one for a class of part, as the file names it. */
    public Priors withPart(String className, double weight) {
        return parse("part " + className + " " + weight, this);
    }

    /** These weights with another one for a kind of fault. */
    public Priors withFault(FaultKind kind, double weight) {
        return parse("fault " + kind.word() + " " + weight, this);
    }

    /** The weight of each class that has one, by name. */
    public Map<String, Double> parts() {
        return new LinkedHashMap<>(new TreeMap<>(parts));
    }

    /** The weight of a kind of fault; 0 rules it out. */
    public double of(FaultKind kind) {
        return faults.getOrDefault(kind, 1.0);
    }

    /** The class of a part as the file names it ({@code "electrolytic"}). */
    public static String className(Part part, PartBook book) {
        return PartKinds.of(part, book);
    }

    /** The weight of a part by its class. */
    public double of(Part part, PartBook book) {
        return parts.getOrDefault(PartKinds.of(part, book), parts.getOrDefault(OTHER, 1.0));
    }

    private static double weight(String word, int line) {
        try {
            double weight = Double.parseDouble(word);
            if (weight >= 0 && Double.isFinite(weight)) {
                return weight;
            }
        } catch (NumberFormatException e) {
            // said below
        }
        throw wrong(line, "needs a weight of 0 or more in place of " + word);
    }

    private static FaultKind kind(String word, int line) {
        for (FaultKind kind : FaultKind.values()) {
            if (kind.word().equals(word)) {
                return kind;
            }
        }
        throw wrong(line, "names a kind of fault that is not known: " + word);
    }

    static IllegalArgumentException wrong(int line, String what) {
        return new IllegalArgumentException("weights of faults, line " + line + ": " + what);
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof Priors p && p.parts.equals(parts) && p.faults.equals(faults);
    }

    @Override
    public int hashCode() {
        return 31 * parts.hashCode() + faults.hashCode();
    }

    /** Read when it is first asked for. */
    private static final class Standard {

        static final Priors PRIORS = load();

        private static Priors load() {
            try (InputStream in = Priors.class.getResourceAsStream("priors.txt")) {
                return parse(new String(in.readAllBytes(), StandardCharsets.UTF_8), new Priors(Map.of(), Map.of()));
            } catch (IOException e) {
                throw new UncheckedIOException("the weights of the program are unreadable", e);
            }
        }
    }
}
