// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.partbook;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Reads the text of a part book; the head of the standard one describes it. */
final class PartBookReader {

    private final Map<String, PartClass> classes = new HashMap<>();
    private final List<PartBook.Entry> entries = new ArrayList<>();
    private int line;

    private String name;
    private String title;
    private int count;
    private List<Spelling> spelt;
    private List<Spelling> unlike;
    private List<PinType> pins;
    private List<UnitType> units;
    private final List<String> written = new ArrayList<>();

    PartBook read(BufferedReader in) throws IOException {
        for (String text = in.readLine(); text != null; text = in.readLine()) {
            line++;
            String plain = text.strip();
            if (!plain.isEmpty() && !plain.startsWith("#")) {
                boolean within = Character.isWhitespace(text.charAt(0));
                if (!within) {
                    endPart();
                }
                written.add(text.stripTrailing());
                List<String> words = Arrays.asList(plain.split("\\s+"));
                if (within) {
                    need(name != null, "belongs to no part");
                    inPart(words);
                } else {
                    onTop(words);
                }
            }
        }
        endPart();
        return new PartBook(Map.copyOf(classes), List.copyOf(entries));
    }

    private void onTop(List<String> words) throws IOException {
        switch (words.get(0)) {
            case "class" -> {
                need(words.size() == 3, "must be: class LETTERS CLASS");
                classes.put(words.get(1), word(PartClass.class, words.get(2)));
            }
            case "part" -> {
                need(words.size() >= 4, "must be: part NAME PINS TITLE");
                name = words.get(1);
                count = number(words.get(2));
                title = String.join(" ", words.subList(3, words.size()));
                spelt = new ArrayList<>();
                unlike = new ArrayList<>();
                pins = new ArrayList<>();
                units = new ArrayList<>();
            }
            default -> throw bad("begins with neither class nor part");
        }
    }

    private void inPart(List<String> words) throws IOException {
        List<String> rest = words.subList(1, words.size());
        switch (words.get(0)) {
            case "spelt" -> rest.forEach(f -> spelt.add(Spelling.of(f)));
            case "unlike" -> rest.forEach(f -> unlike.add(Spelling.of(f)));
            case "nc" -> rest.forEach(n -> pins.add(new PinType(n, PinRole.NOT_CONNECTED, List.of())));
            case "unit" -> units.add(unit(rest));
            default -> {
                need(words.size() >= 3, "must be: NUMBER ROLE NAME");
                pins.add(new PinType(words.get(0), role(words.get(1)), words.subList(2, words.size())));
            }
        }
    }

    private UnitType unit(List<String> words) throws IOException {
        need(words.size() >= 5 && words.get(3).equals(">"), "must be: unit NAME FUNCTION INPUTS > OUTPUTS");
        Map<String, List<String>> controls = new HashMap<>();
        for (String control : words.subList(5, words.size())) {
            int is = control.indexOf('=');
            need(is > 0, "needs CONTROL=PINS in place of " + control);
            controls.put(control.substring(0, is), pinList(control.substring(is + 1)));
        }
        return new UnitType(words.get(0), words.get(1), pinList(words.get(2)), pinList(words.get(4)), controls);
    }

    private static List<String> pinList(String commas) {
        return List.of(commas.split(","));
    }

    private void endPart() throws IOException {
        if (name == null) {
            written.clear();
            return;
        }
        Set<String> numbers = new HashSet<>();
        for (PinType pin : pins) {
            need(numbers.add(pin.number()), "ends part " + name + ", which has pin " + pin.number() + " twice");
        }
        need(numbers.size() == count, "ends part " + name + ", which lists " + numbers.size() + " of " + count
                + " pins");
        for (UnitType unit : units) {
            need(numbers.containsAll(unit.inputs()) && numbers.containsAll(unit.outputs()),
                    "ends part " + name + ", whose unit " + unit.name() + " has pins that it has not");
        }
        pins.sort((a, b) -> a.number().length() != b.number().length()
                ? a.number().length() - b.number().length() : a.number().compareTo(b.number()));
        entries.add(new PartBook.Entry(new PartType(name, title, pins, units), List.copyOf(spelt), List.copyOf(unlike),
                String.join("\n", written) + "\n"));
        name = null;
        written.clear();
    }

    private PinRole role(String word) throws IOException {
        for (PinRole role : PinRole.values()) {
            if (role.word().equals(word)) {
                return role;
            }
        }
        throw bad("has a role that is not known: " + word);
    }

    private <E extends Enum<E>> E word(Class<E> type, String word) throws IOException {
        try {
            return Enum.valueOf(type, word.toUpperCase(Locale.ROOT));
        } catch (IllegalArgumentException e) {
            throw bad("has a word that is not known: " + word);
        }
    }

    private int number(String word) throws IOException {
        try {
            return Integer.parseInt(word);
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
        return new IOException("part book, line " + line + ": " + what);
    }
}
