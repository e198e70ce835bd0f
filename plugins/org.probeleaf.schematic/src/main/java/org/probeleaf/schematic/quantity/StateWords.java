// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.quantity;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Words for states, as they are common at the bench: high, open, pulsing, no signal, good. */
final class StateWords {

    private static final Pattern WORD = Pattern.compile("(\u221e|[\\p{L}]+(?:[./]\\p{L})?)(?![\\p{L}\\d./-])");
    private static final Pattern TWO = Pattern.compile("(no|short|open|square)\\s+(\\p{L}+)(?![\\p{L}\\d./-])",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern STUCK = Pattern.compile("stuck\\s+(?:at\\s+)?", Pattern.CASE_INSENSITIVE);
    private static final Map<String, Quantity> STATES = states();

    private StateWords() {
    }

    /** Reads a state at the start of a text. */
    static Optional<BenchValue> at(String t) {
        Matcher stuck = STUCK.matcher(t);
        if (stuck.lookingAt()) {
            return at(t.substring(stuck.end())).filter(v -> v.quantity().kind() == QuantityKind.LOGIC)
                    .map(v -> new BenchValue(v.quantity(), ("stuck " + v.remark()).strip()));
        }
        Matcher two = TWO.matcher(t);
        if (two.lookingAt()) {
            Quantity state = STATES.get(two.group(1).toLowerCase(Locale.ROOT) + " " + two.group(2).toLowerCase(Locale.ROOT));
            if (state != null) {
                return Optional.of(new BenchValue(state, remark(t, two.end())));
            }
        }
        Matcher m = WORD.matcher(t);
        return m.lookingAt() ? Optional.ofNullable(STATES.get(m.group(1).toLowerCase(Locale.ROOT)))
                .map(q -> new BenchValue(q, remark(t, m.end()))) : Optional.empty();
    }

    private static String remark(String t, int from) {
        return t.substring(from).replaceFirst("^[\\s,;:]+", "").strip();
    }

    private static Map<String, Quantity> states() {
        Map<String, Quantity> map = new HashMap<>();
        put(map, QuantityKind.LOGIC, 1, "h", "hi", "high");
        put(map, QuantityKind.LOGIC, 0, "l", "lo", "low");
        put(map, QuantityKind.ACTIVITY, 1, "pulsing", "pulses", "toggling", "toggles", "clocking", "clocks", "moving",
                "square wave");
        put(map, QuantityKind.ACTIVITY, 0, "still", "flat", "dead", "static", "no signal", "no activity", "no pulses");
        put(map, QuantityKind.CONTINUITY, 1, "short", "shorted", "cont", "continuity", "joined", "beep", "beeps", "s/c",
                "short circuit");
        put(map, QuantityKind.CONTINUITY, 0, "open", "ol", "o.l", "o/c", "inf", "infinite", "infinity", "\u221e",
                "open circuit", "no beep", "no continuity", "no connection");
        put(map, QuantityKind.CONDITION, 1, "good", "ok", "okay", "fine");
        put(map, QuantityKind.CONDITION, 0, "bad", "wrong", "faulty");
        return Map.copyOf(map);
    }

    private static void put(Map<String, Quantity> map, QuantityKind kind, int value, String... words) {
        for (String word : words) {
            map.put(word, Quantity.of(kind, value));
        }
    }
}
