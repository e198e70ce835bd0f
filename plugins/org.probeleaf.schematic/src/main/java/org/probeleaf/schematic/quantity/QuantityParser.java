// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.quantity;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads values as people write them on the bench. A text is a state word, a letter code ({@code 4R7}) or a number
 * with a prefix and a unit; what follows after a space or a comma is a remark. The decimal sign is a point or a comma;
 * there are no thousands signs.
 */
final class QuantityParser {

    private static final Pattern NUMBER = Pattern.compile(
            "([+-]?(?:\\d{1,400}(?:[.,]\\d{0,400})?|[.,]\\d{1,400}))([eE][+-]?\\d{1,3}(?![\\d\\p{L}]))?");
    private static final Pattern WORD = Pattern.compile("[\\p{L}\u00b0\u2126~]+(?:-pk?(?!\\p{L}))?");
    private static final Pattern OVERLOAD = Pattern.compile("\\.?[0O]\\.?L(?![\\p{L}\\d])");

    private QuantityParser() {
    }

    /** As {@link BenchValue#parse(String, QuantityKind)}; {@code NUMBER} for an unknown kind. */
    static BenchValue parse(String text, QuantityKind kind) {
        String t = clean(Bound.of(text).strip(text));
        Optional<BenchValue> read = StateWords.at(t).or(() -> code(t, kind)).or(() -> number(t, kind)).map(TestKind::behind)
                .or(() -> TestKind.before(t));
        return read.orElseThrow(() -> refusal(text));
    }

    /** Signs that keyboards and paper write in several ways made one; every character keeps its place. */
    private static String clean(String text) {
        String t = text.replace('\u00a0', ' ').replace('\u202f', ' ').replace('\u2009', ' ').strip();
        if (OVERLOAD.matcher(t).lookingAt()) {
            // Meters show OL in seven segments, where O is 0.
            return "OL" + t.substring(t.indexOf('L') + 1);
        }
        return t.startsWith("\u2212") || t.startsWith("\u2013") ? "-" + t.substring(1) : t;
    }

    private static IllegalArgumentException refusal(String text) {
        return new IllegalArgumentException(text.isBlank() ? "there is no value; type one like 5.03, 11.8V, 3k3 or H"
                : "\"" + text.strip() + "\" does not begin with a value; write it like 5.03, 11.8V, 3k3, 100n, H, open or bad");
    }

    private static Optional<BenchValue> code(String t, QuantityKind expected) {
        Optional<LetterCode> found = LetterCode.at(t);
        if (found.isEmpty()) {
            return Optional.empty();
        }
        LetterCode code = found.get();
        Tail tail = Tail.after(t, code.end(), false);
        if (!tail.ends(t)) {
            return Optional.empty();
        }
        QuantityKind said = tail.kind() != null ? tail.kind() : code.kind();
        boolean exact = tail.kind() != null ? tail.exact() : code.exact();
        String rest = remark(t, tail.end());
        String remark = code.tolerance().isEmpty() ? rest : (code.tolerance() + " " + rest).strip();
        return Optional.of(new BenchValue(quantity(code.number(), 0, kind(said, exact, expected)), remark));
    }

    private static Optional<BenchValue> number(String t, QuantityKind expected) {
        Matcher m = NUMBER.matcher(t);
        if (!m.lookingAt()) {
            return Optional.empty();
        }
        String exponent = m.group(2) == null ? "" : m.group(2);
        BigDecimal number = new BigDecimal(m.group(1).replace(',', '.') + exponent);
        if (fahrenheit(t, m.end())) {
            double celsius = (number.doubleValue() - 32) * 5 / 9;
            return Optional.of(new BenchValue(Quantity.of(QuantityKind.TEMPERATURE, celsius),
                    remark(t, t.indexOf('F', m.end()) + 1)));
        }
        Tail tail = Tail.after(t, m.end(), true);
        String remark = remark(t, tail.end());
        boolean twoNumbers = !tail.found() && !remark.isEmpty() && Character.isDigit(remark.charAt(0));
        if (!tail.ends(t) || twoNumbers) {
            return Optional.empty();
        }
        QuantityKind said = tail.kind() == null ? QuantityKind.NUMBER : tail.kind();
        return Optional.of(new BenchValue(
                quantity(number, tail.exponent(), kind(said, tail.exact(), expected)), remark));
    }

    private static boolean fahrenheit(String t, int from) {
        return Pattern.compile("\\s*(?:\u00b0|deg)\\s?F(?![\\p{L}\\d])").matcher(t).region(from, t.length()).lookingAt();
    }

    /** The kind that the text says, or the expected one where the text leaves it open. */
    private static QuantityKind kind(QuantityKind said, boolean exact, QuantityKind expected) {
        if (expected == QuantityKind.ESR && said == QuantityKind.RESISTANCE) {
            return expected;
        }
        if (expected == QuantityKind.NUMBER || exact) {
            return said;
        }
        boolean bothVolts = said.isVoltage() && expected.isVoltage();
        return !said.isVoltage() || bothVolts ? expected : said;
    }

    private static Quantity quantity(BigDecimal number, int exponent, QuantityKind kind) {
        double value = number.movePointRight(exponent).doubleValue();
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("the number is too large to be a reading");
        }
        if (kind.isState() && value != 0 && value != 1) {
            throw new IllegalArgumentException(kind == QuantityKind.LOGIC ? "a logic state is H or L"
                    : kind == QuantityKind.CONTINUITY ? "continuity is open or short"
                    : kind == QuantityKind.ACTIVITY ? "write pulsing or no signal" : "write good or bad");
        }
        return Quantity.of(kind, value);
    }

    private static String remark(String t, int from) {
        return t.substring(from).replaceFirst("^(?:[\\s,;:]+|\\.$)", "").strip();
    }

    /**
     * The prefix, unit and AC or DC behind a number.
     *
     * @param found    whether there is any
     * @param exponent power of ten
     * @param kind     or null where no unit is said
     * @param exact    whether the kind is certain
     * @param end      where in the text it ends
     */
    private record Tail(boolean found, int exponent, QuantityKind kind, boolean exact, int end) {

        private static final Pattern SORT = Pattern.compile("\\s?(?:(AC|ac|rms|RMS|~)|(DC|dc)|(pp|p-p|pk-pk|peak[- ]to[- ]peak)|pk|peak)(?![\\p{L}\\d])");

        static Tail after(String t, int from, boolean withPrefix) {
            int start = from;
            while (start < t.length() && t.charAt(start) == ' ') {
                start++;
            }
            Matcher word = WORD.matcher(t).region(start, t.length());
            Tail none = new Tail(false, 0, null, false, from);
            if (!word.lookingAt()) {
                return none;
            }
            Optional<Suffix> read = start == from ? Suffix.attached(word.group()) : Suffix.apart(word.group());
            if (read.isEmpty() || !withPrefix && read.get().exponent() != 0) {
                return none;
            }
            Suffix s = read.get();
            Tail unit = new Tail(true, s.exponent(), s.kind(), s.exact(), word.end()).withUnitApart(t);
            return unit.kind == QuantityKind.VOLTAGE_DC && !unit.exact ? unit.sorted(t) : unit;
        }

        /** A prefix may stand away from its unit: {@code 10k ohm}. */
        private Tail withUnitApart(String t) {
            Matcher word = kind != null || end >= t.length() || t.charAt(end) != ' ' ? null
                    : WORD.matcher(t).region(end + 1, t.length());
            return word == null || !word.lookingAt() ? this : Suffix.apart(word.group())
                    .filter(s -> s.kind() != null && s.exponent() == 0)
                    .map(s -> new Tail(true, exponent, s.kind(), s.exact(), word.end())).orElse(this);
        }

        private Tail sorted(String t) {
            Matcher m = SORT.matcher(t).region(end, t.length());
            if (!m.lookingAt()) {
                return this;
            }
            QuantityKind sort = m.group(1) != null ? QuantityKind.VOLTAGE_AC
                    : m.group(2) != null ? QuantityKind.VOLTAGE_DC
                    : m.group(3) != null ? QuantityKind.VOLTAGE_PP : QuantityKind.VOLTAGE_PEAK;
            return new Tail(true, exponent, sort, true, m.end());
        }

        /** Whether the value ends where this ends: at the end of the text or where a remark may begin. */
        boolean ends(String t) {
            return end == t.length() || ".".equals(t.substring(end)) || " ,;:(?!%\u00b1".indexOf(t.charAt(end)) >= 0
                    && !(t.charAt(end) == ',' && end + 1 < t.length() && Character.isDigit(t.charAt(end + 1)));
        }
    }
}
