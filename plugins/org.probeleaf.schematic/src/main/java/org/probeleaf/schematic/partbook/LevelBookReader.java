// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.partbook;

import java.io.BufferedReader;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.probeleaf.schematic.partbook.LogicLevels.Drive;

/** Reads the text of a book of levels; the head of the standard one describes it. */
final class LevelBookReader {

    private static final int MILLI = 3;

    private final List<LogicLevels> all = new ArrayList<>();
    private final Map<String, List<Spelling>> unlike = new HashMap<>();
    private final Map<String, List<Spelling>> spelt = new HashMap<>();
    private int line;

    private List<String> head;
    private double[] input;
    private List<Drive> drives;
    private double leak;
    private String source;

    LevelBook read(BufferedReader in) throws IOException {
        for (String text = in.readLine(); text != null; text = in.readLine()) {
            line++;
            String plain = text.strip();
            if (!plain.isEmpty() && !plain.startsWith("#")) {
                List<String> words = Arrays.asList(plain.split("\\s+"));
                if (!Character.isWhitespace(text.charAt(0))) {
                    end();
                    begin(words);
                } else {
                    need(head != null, "belongs to nothing");
                    within(words, words.subList(1, words.size()));
                }
            }
        }
        end();
        return new LevelBook(all, unlike, spelt);
    }

    private void begin(List<String> words) throws IOException {
        need(words.size() > 5 && List.of("family", "chip").contains(words.get(0)),
                "must be: family NAME MIN TYP MAX TITLE, or chip and the same");
        head = words;
        input = null;
        drives = new ArrayList<>();
        leak = Double.NaN;
        source = "";
    }

    private void within(List<String> words, List<String> rest) throws IOException {
        switch (words.get(0)) {
            case "in" -> {
                need(rest.size() == 4, "must be: in VIH VIL IIH IIL");
                input = new double[] {volts(rest.get(0)), volts(rest.get(1)), amperes(rest.get(2)), amperes(rest.get(3))};
            }
            case "out" -> {
                need(rest.size() == 4, "must be: out VOH IOH VOL IOL");
                drives.add(new Drive(volts(rest.get(0)), amperes(rest.get(1)), volts(rest.get(2)), amperes(rest.get(3))));
            }
            case "leak" -> leak = amperes(rest.get(0));
            case "source" -> source = String.join(" ", rest);
            case "unlike" -> unlike.put(head.get(1), rest.stream().map(Spelling::of).toList());
            case "spelt" -> spelt.put(head.get(1), rest.stream().map(Spelling::of).toList());
            default -> throw bad("has a word that is not known: " + words.get(0));
        }
    }

    private void end() throws IOException {
        if (head == null) {
            return;
        }
        need(input != null && !drives.isEmpty() && !source.isEmpty(), "ends " + head.get(1)
                + ", which needs an in, an out and a source");
        all.add(new LogicLevels(head.get(1), String.join(" ", head.subList(5, head.size())), head.get(0).equals("chip"),
                volts(head.get(2)), volts(head.get(3)), volts(head.get(4)), input[0], input[1], input[2], input[3],
                drives, leak, source));
    }

    private double volts(String word) throws IOException {
        return number(word, 0);
    }

    private double amperes(String word) throws IOException {
        return word.equals("-") ? Double.NaN : number(word, MILLI);
    }

    private double number(String word, int down) throws IOException {
        try {
            return new BigDecimal(word).movePointLeft(down).doubleValue();
        } catch (NumberFormatException e) {
            throw bad("needs a number in place of " + word);
        }
    }

    private void need(boolean held, String otherwise) throws IOException {
        if (!held) {
            throw bad(otherwise);
        }
    }

    private IOException bad(String what) {
        return new IOException("levels, line " + line + ": " + what);
    }
}
