// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.format;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.probeleaf.waveform.capture.Capture;
import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.capture.DigitalChannel;
import org.probeleaf.waveform.capture.Samples;
import org.probeleaf.waveform.capture.TimeBase;
import org.probeleaf.waveform.measure.Si;

/** Reads a value change dump with four states (IEEE 1364-1995, clause 15; clause from memory), streamed. */
final class VcdReader {

    private static final Map<String, Double> UNITS = Map.of("s", 1.0, "ms", 1e-3, "us", 1e-6, "ns", 1e-9, "ps", 1e-12,
            "fs", 1e-15);
    private static final int WIDEST = 1 << 16;

    private final VcdTokens tokens;
    private final Deque<String> scopes = new ArrayDeque<>();
    private final Map<String, VcdVariable> byName = new LinkedHashMap<>();
    private final Map<String, VcdVariable> byCode = new HashMap<>();
    private final VcdVariable[] byLetter = new VcdVariable[128];
    private final List<String> notes = new ArrayList<>();
    private double tick = Double.NaN;
    private long now;
    private boolean timed;
    private byte[] states = new byte[64];

    VcdReader(InputStream in) {
        tokens = new VcdTokens(in);
    }

    /** @throws CaptureException naming the line, where something else stands there than was expected */
    Imported read() throws IOException {
        header();
        while (tokens.next()) {
            change();
        }
        if (Double.isNaN(tick)) {
            tick = 1e-9;
            notes.add("Nothing tells the unit of the times; nanoseconds are assumed.");
        } else {
            notes.add(0, "Times count in steps of " + Si.text(tick, "s") + ".");
        }
        List<Channel> values = new ArrayList<>();
        List<DigitalChannel> digital = new ArrayList<>();
        List<String> silent = new ArrayList<>();
        byName.forEach((name, v) -> {
            if (v.size() == 0) {
                silent.add(name);
            } else if (v.real()) {
                values.add(new Channel(name, "V", new TimeBase.Stamped(v.times(tick)), Samples.of(v.values()), Double.NaN, true));
            } else {
                digital.add(v.digital(name, tick, now));
            }
        });
        if (!values.isEmpty()) {
            notes.add("Real values are taken for volts.");
        }
        if (!silent.isEmpty()) {
            notes.add("No value is given for " + String.join(", ", silent) + ".");
        }
        return new Imported(new Capture(values, digital), new ImportNotes("value change dump", notes));
    }

    private void header() throws IOException {
        while (tokens.next()) {
            long line = tokens.line();
            String word = tokens.text(0);
            switch (word) {
                case "$timescale" -> timescale(line, body(line, word));
                case "$scope" -> {
                    List<String> b = body(line, word);
                    scopes.addLast(b.size() > 1 ? b.get(1) : "");
                }
                case "$upscope" -> {
                    body(line, word);
                    scopes.pollLast();
                }
                case "$var" -> variable(line, body(line, word));
                case "$enddefinitions" -> {
                    body(line, word);
                    if (byName.isEmpty()) {
                        throw CaptureException.row(line, "the definitions end without a $var; at least one was expected");
                    }
                    return;
                }
                default -> {
                    if (!word.startsWith("$")) {
                        throw CaptureException.row(line, "\"" + word + "\" stands before $enddefinitions, where a definition"
                                + " such as $var was expected");
                    }
                    body(line, word);
                }
            }
        }
        throw CaptureException.row(tokens.line(), "the file ends before $enddefinitions, which was expected");
    }

    /** The words up to {@code $end}. */
    private List<String> body(long line, String keyword) throws IOException {
        List<String> words = new ArrayList<>();
        while (tokens.next()) {
            String word = tokens.text(0);
            if (word.equals("$end")) {
                return words;
            }
            words.add(word);
        }
        throw CaptureException.row(line, keyword + " is not closed; $end was expected");
    }

    private void timescale(long line, List<String> words) throws CaptureException {
        String text = String.join("", words);
        String digits = text.replaceFirst("[^0-9].*", "");
        Double unit = UNITS.get(text.substring(digits.length()));
        if (unit == null || !List.of("1", "10", "100").contains(digits)) {
            throw CaptureException.row(line, "\"" + text + "\" is no time scale; 1, 10 or 100 of s, ms, us, ns, ps or fs was"
                    + " expected");
        }
        tick = Integer.parseInt(digits) * unit;
    }

    private void variable(long line, List<String> words) throws CaptureException {
        if (words.size() < 4 || !words.get(1).matches("\\d{1,5}") || Integer.parseInt(words.get(1)) > WIDEST) {
            throw CaptureException.row(line, "\"$var " + String.join(" ", words) + "\" is no variable; its kind, width, code"
                    + " and name were expected");
        }
        boolean real = words.get(0).equals("real") || words.get(0).equals("realtime");
        int width = real ? 1 : Math.max(1, Integer.parseInt(words.get(1)));
        String code = words.get(2);
        String reference = words.get(3);
        boolean bit = words.size() > 4 && words.get(4).matches("\\[\\d+\\]");
        String name = String.join(".", scopes.stream().filter(s -> !s.isEmpty()).toList()) + (scopes.isEmpty() ? "" : ".")
                + reference + (bit ? words.get(4) : "");
        VcdVariable known = byCode.get(code);
        VcdVariable variable = known != null && known.width() == width && known.real() == real ? known
                : new VcdVariable(code, real, width);
        byCode.put(code, variable);
        if (code.length() == 1) {
            byLetter[code.charAt(0) & 127] = variable;
        }
        byName.put(byName.containsKey(name) ? name + " " + code : name, variable);
    }

    private void change() throws IOException {
        char first = tokens.at(0);
        switch (first) {
            case '#' -> time();
            case '0', '1', 'x', 'X', 'z', 'Z' -> {
                states[0] = (byte) Character.toLowerCase(first);
                VcdVariable v = variable(1);
                if (v.real()) {
                    throw CaptureException.row(tokens.line(), "a logic state is given for " + name(v) + ", where a real value"
                            + " such as r1.5 was expected");
                }
                v.state(now, states, 1);
            }
            case 'b', 'B' -> vector();
            case 'r', 'R' -> real();
            case 's', 'S' -> tokens.next();
            case '$' -> command();
            default -> throw CaptureException.row(tokens.line(), "\"" + tokens.text(0) + "\" is no value change; one such as 0!,"
                    + " b0101 ! or #10 was expected");
        }
    }

    private void command() throws IOException {
        String word = tokens.text(0);
        switch (word) {
            case "$dumpvars", "$dumpall", "$dumpon", "$dumpoff", "$end" -> { /* The values inside are read as any others. */ }
            default -> body(tokens.line(), word);
        }
    }

    private void time() throws CaptureException {
        long t = 0;
        boolean good = tokens.length() > 1 && tokens.length() < 20;
        for (int i = 1; i < tokens.length() && good; i++) {
            int d = tokens.at(i) - '0';
            good = d >= 0 && d <= 9;
            t = t * 10 + d;
        }
        if (!good || t < 0) {
            throw CaptureException.row(tokens.line(), "\"" + tokens.text(0) + "\" is no time; # and a whole number were expected");
        }
        if (timed && t < now) {
            throw CaptureException.row(tokens.line(), "the time goes back from #" + now + " to #" + t + ", where rising times"
                    + " were expected");
        }
        now = t;
        timed = true;
    }

    private void vector() throws IOException {
        int n = tokens.length() - 1;
        long line = tokens.line();
        String text = tokens.text(0);
        if (n > states.length) {
            states = new byte[n];
        }
        boolean good = n > 0;
        for (int i = 0; i < n; i++) {
            char c = Character.toLowerCase(tokens.at(i + 1));
            good &= c == '0' || c == '1' || c == 'x' || c == 'z';
            states[i] = (byte) c;
        }
        if (!good) {
            throw CaptureException.row(line, "\"" + text + "\" is no vector; b and states 0, 1, x or z were expected");
        }
        VcdVariable v = code(line);
        if (v.real() || n > v.width()) {
            throw CaptureException.row(line, "\"" + text + "\" has " + n + " states, where " + name(v) + " has "
                    + (v.real() ? "a real value" : v.width() == 1 ? "1 line" : v.width() + " lines"));
        }
        v.state(now, states, n);
    }

    private void real() throws IOException {
        long line = tokens.line();
        String text = tokens.text(1);
        VcdVariable v = code(line);
        if (!v.real()) {
            throw CaptureException.row(line, "a real value is given for " + name(v) + ", where logic states were expected");
        }
        try {
            v.value(now, Double.parseDouble(text));
        } catch (NumberFormatException e) {
            throw CaptureException.row(line, "\"r" + text + "\" is no real value; one such as r1.5 was expected");
        }
    }

    private String name(VcdVariable v) {
        return byName.entrySet().stream().filter(e -> e.getValue() == v).map(Map.Entry::getKey).findFirst().orElse(v.code());
    }

    /** The variable whose code is the next word. */
    private VcdVariable code(long line) throws IOException {
        if (!tokens.next()) {
            throw CaptureException.row(line, "the file ends behind a value, where the code of a variable was expected");
        }
        return variable(0);
    }

    /** The variable whose code begins at a letter of the word. */
    private VcdVariable variable(int from) throws CaptureException {
        VcdVariable v = tokens.length() == from + 1 ? byLetter[tokens.at(from) & 127] : byCode.get(tokens.text(from));
        if (v == null) {
            throw CaptureException.row(tokens.line(), tokens.length() == from ? "a state stands without the code of a variable"
                    : "no variable has the code \"" + tokens.text(from) + "\"; one that a $var defines was expected");
        }
        return v;
    }
}
