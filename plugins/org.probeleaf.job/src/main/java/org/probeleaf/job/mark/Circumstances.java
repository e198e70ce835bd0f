// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.mark;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Under what conditions a reading was taken, and with what.
 *
 * @param conditions the state of the unit ({@code reset held, warm}); empty where nothing was said, never null
 * @param instrument what it was read with ({@code scope, 10:1 probe}); empty where nothing was said, never null
 */
public record Circumstances(String conditions, String instrument) {

    /** Nothing was said. */
    public static final Circumstances NONE = new Circumstances("", "");

    private static final Pattern INSTRUMENT = Pattern.compile("^(.*?)\\s*\\[([^\\[\\]]*)\\]\\s*$", Pattern.DOTALL);
    private static final Pattern AGAIN = Pattern.compile("^(.*?)\\s*\\[\\s*\\]\\s*$", Pattern.DOTALL);
    private static final Pattern CONDITIONS = Pattern.compile("^(.*?)(?:^|\\s)@\\s*(\\S.*)$", Pattern.DOTALL);

    public Circumstances {
        conditions = conditions.strip();
        instrument = instrument.strip();
    }

    /**
     * A typed line and what it says of its circumstances.
     *
     * @param rest          the line without them
     * @param circumstances never null
     */
    public record Typed(String rest, Circumstances circumstances) {
    }

    /**
     * Takes them off the end of a typed line: the instrument stands in square brackets, the conditions behind an at sign
     * ({@code 2.2V flat @ reset held [scope, 10:1]}).
     */
    public static Typed typed(String line) {
        String rest = line.strip();
        String instrument = "";
        Matcher with = INSTRUMENT.matcher(rest);
        if (with.matches()) {
            rest = with.group(1);
            instrument = with.group(2);
        }
        String conditions = "";
        Matcher at = CONDITIONS.matcher(rest);
        if (at.matches()) {
            rest = at.group(1);
            conditions = at.group(2);
        }
        return new Typed(rest.strip(), new Circumstances(conditions, instrument));
    }

    /**
     * A typed line with empty brackets at its end filled in with the instrument that was named last: {@code 2.2V []}.
     *
     * @param readings what was read so far, the oldest first
     * @throws IllegalArgumentException with one sentence for a person where none was named yet
     */
    public static String sameInstrument(String line, List<ReadingMark> readings) {
        Matcher again = AGAIN.matcher(line);
        if (!again.matches()) {
            return line;
        }
        String last = readings.stream().map(r -> r.circumstances().instrument()).filter(i -> !i.isEmpty())
                .reduce((a, b) -> b).orElseThrow(() -> new IllegalArgumentException(
                        "[] stands for the instrument used last, but none was named yet; write it like [DMM]"));
        return again.group(1) + " [" + last + "]";
    }

    /** These, and where they say nothing what others say. */
    public Circumstances or(Circumstances others) {
        return new Circumstances(conditions.isEmpty() ? others.conditions : conditions,
                instrument.isEmpty() ? others.instrument : instrument);
    }

    /** Whether nothing was said. */
    public boolean isEmpty() {
        return conditions.isEmpty() && instrument.isEmpty();
    }

    /** For a person: {@code @ reset held [scope, 10:1]}, as it is typed; empty where nothing was said. */
    public String text() {
        String at = conditions.isEmpty() ? "" : "@ " + conditions;
        String with = instrument.isEmpty() ? "" : "[" + instrument + "]";
        return at.isEmpty() || with.isEmpty() ? at + with : at + " " + with;
    }
}
