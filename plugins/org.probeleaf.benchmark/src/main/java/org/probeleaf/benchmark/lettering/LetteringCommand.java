// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.lettering;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;

import org.probeleaf.recognition.lettering.FontAlphabet;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/**
 * Tells how well letters of a family of fonts are read with an alphabet made of all other families, by their outlines
 * alone, without the words they stand in.
 */
@Command(name = "lettering", mixinStandardHelpOptions = true,
        description = "Reads the letters of each family of fonts with what the others teach.")
public final class LetteringCommand implements Callable<Integer> {

    /** Letters that are one shape in many fonts, so that only words tell them apart. */
    private static final List<String> SAME = List.of("0Oo", "Il1|!", "Cc", "Ss", "Vv", "Ww", "Xx", "Zz");

    @Option(names = "--write", paramLabel = "FILE",
            description = "Writes the alphabet made of all families; it is kept as the recogniser's fonts.txt.")
    private Path write;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        PrintWriter print = spec.commandLine().getOut();
        Map<String, List<FontAlphabet.Sample>> families = new LinkedHashMap<>();
        for (FontFace face : FontFace.all()) {
            families.computeIfAbsent(face.family(), k -> new ArrayList<>()).addAll(FontLetters.of(face));
        }
        if (write != null) {
            FontAlphabet alphabet = FontAlphabet.of(families.values().stream().flatMap(List::stream).toList());
            List<String> lines = new ArrayList<>(FontAlphabet.head());
            lines.addAll(alphabet.lines());
            Files.write(write, lines);
            print.println(write + ": " + alphabet.size() + " shapes");
            return 0;
        }
        print.printf("%-18s %8s %8s %10s %8s%n", "family", "letters", "right", "or alike", "shapes");
        int[] sum = new int[3];
        for (String family : families.keySet()) {
            List<FontAlphabet.Sample> others = new ArrayList<>();
            families.forEach((name, samples) -> others.addAll(name.equals(family) ? List.of() : samples));
            FontAlphabet alphabet = FontAlphabet.of(others);
            int[] counts = count(families.get(family), alphabet);
            print(print, family, counts, String.valueOf(alphabet.size()));
            for (int i = 0; i < sum.length; i++) {
                sum[i] += counts[i];
            }
        }
        print(print, "all", sum, "");
        print.flush();
        return 0;
    }

    private static void print(PrintWriter print, String family, int[] counts, String shapes) {
        print.printf("%-18s %8d %8.4f %10.4f %8s%n", family, counts[0], counts[1] / (double) counts[0],
                counts[2] / (double) counts[0], shapes);
    }

    /** How many letters there are, how many are read right, and how many at least as one that looks the same. */
    private static int[] count(List<FontAlphabet.Sample> samples, FontAlphabet alphabet) {
        int[] counts = new int[3];
        for (FontAlphabet.Sample sample : samples) {
            char read = alphabet.likeliest(sample.outlines()).charAt(0);
            counts[0]++;
            counts[1] += read == sample.letter() ? 1 : 0;
            counts[2] += read == sample.letter() || SAME.stream().anyMatch(s -> s.indexOf(read) >= 0
                    && s.indexOf(sample.letter()) >= 0) ? 1 : 0;
        }
        return counts;
    }
}
