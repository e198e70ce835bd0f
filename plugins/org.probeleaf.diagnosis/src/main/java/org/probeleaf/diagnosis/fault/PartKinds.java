// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.fault;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.partbook.PartClass;
import org.probeleaf.schematic.quantity.BenchValue;

/** The classes of parts that weights are given for: those of the part book, and some finer ones that a value tells. */
final class PartKinds {

    private static final String ELECTROLYTIC = "electrolytic";
    private static final String REGULATOR = "regulator";
    private static final String MEMORY = "memory";
    private static final List<String> FINER = List.of(ELECTROLYTIC, REGULATOR, MEMORY);

    /** From here up a capacitor is nearly always an electrolytic one, in farads. */
    private static final double ELECTROLYTIC_FROM = 0.99e-6;

    private PartKinds() {
    }

    static String of(Part part, PartBook book) {
        PartClass kind = book.classOf(part.ref());
        String value = part.value() == null ? "" : part.value().strip().toUpperCase(Locale.ROOT);
        if (kind == PartClass.CAPACITOR && farads(value) >= ELECTROLYTIC_FROM) {
            return ELECTROLYTIC;
        }
        if (value.matches("[A-Z]{0,3}-?(78|79)[A-Z]{0,2}\\d\\d.*|LM[123]17.*|LM[123]37.*")) {
            return REGULATOR;
        }
        boolean memory = book.find(part.value()).filter(t -> t.title().matches(".*(RAM|ROM).*")).isPresent();
        return memory ? MEMORY : word(kind);
    }

    /** The class that a file names. */
    static String known(String word, int line) {
        boolean known = Stream.concat(FINER.stream(), Arrays.stream(PartClass.values()).map(PartKinds::word))
                .anyMatch(word::equals);
        if (!known) {
            throw Priors.wrong(line, "names a class that is not known: " + word + "; known are "
                    + Stream.concat(Arrays.stream(PartClass.values()).map(PartKinds::word), FINER.stream()).sorted()
                            .collect(Collectors.joining(", ")));
        }
        return word;
    }

    private static String word(PartClass kind) {
        return kind.name().toLowerCase(Locale.ROOT);
    }

    private static double farads(String value) {
        try {
            String first = value.split("[\\s/]")[0].toLowerCase(Locale.ROOT);
            return BenchValue.parse(first.endsWith("f") ? first : first + "F").quantity().value();
        } catch (IllegalArgumentException e) {
            return 0;
        }
    }
}
