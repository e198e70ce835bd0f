// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.quantity;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A value that does not stand still, typed with the ends between which it moves: {@code 4.7-5.1V}, {@code 4.7 V to 5.1 V},
 * {@code 4.7..5.1V}. A unit that only one end has is that of both.
 *
 * @param low    the lower end
 * @param high   the upper end, of the same kind
 * @param remark the rest of the text, empty where there is none, never null
 */
public record Span(Quantity low, Quantity high, String remark) {

    private static final Pattern ENDS = Pattern.compile("^(\\S.*?)(?:\\s*(?:\\.\\.\\.?|\u2026|\u2013)\\s*|\\s+to\\s+|\\s+-\\s+|(?<![eE])-)"
            + "(?=[+-]?[.,]?\\d)(.+)$");
    private static final Pattern NUMBER = Pattern.compile("([+-]?\\d*[.,]?\\d+)(.*)");

    /** Reads the ends; empty where the text is no such value. */
    public static Optional<Span> of(String typed) {
        String t = Bound.of(typed).strip(typed).strip();
        Matcher m = ENDS.matcher(t);
        if (!m.matches()) {
            return Optional.empty();
        }
        try {
            return between(m.group(1), m.group(2));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static Optional<Span> between(String first, String second) {
        Matcher bare = NUMBER.matcher(first);
        Matcher other = NUMBER.matcher(second);
        if (!other.matches() || other.group(2).startsWith("%")) {
            return Optional.empty();
        }
        boolean unitBehind = bare.matches() && bare.group(2).isEmpty();
        BenchValue b = BenchValue.parse(second);
        BenchValue a = BenchValue.parse(unitBehind ? first + other.group(2) : first);
        boolean unitBefore = b.quantity().kind() == QuantityKind.NUMBER && !unitBehind && bare.matches();
        if (unitBefore) {
            b = BenchValue.parse(other.group(1) + bare.group(2) + other.group(2));
        }
        if (a.quantity().kind() == QuantityKind.NUMBER && b.quantity().kind() != QuantityKind.NUMBER) {
            a = BenchValue.parse(first, b.quantity().kind());
        }
        boolean plain = unitBehind || a.remark().isEmpty();
        boolean pair = a.quantity().kind() == b.quantity().kind() && !a.quantity().kind().isState();
        if (!plain || !pair) {
            return Optional.empty();
        }
        boolean ordered = a.quantity().value() <= b.quantity().value();
        return Optional.of(new Span(ordered ? a.quantity() : b.quantity(), ordered ? b.quantity() : a.quantity(), b.remark()));
    }

    /** The value half way, which stands for the whole. */
    public Quantity middle() {
        return Quantity.of(low.kind(), low.value() + (high.value() - low.value()) / 2);
    }

    /** For a person, as it can be typed: {@code 4.7 V to 5.1 V}. */
    public String text() {
        return low.text() + " to " + high.text();
    }
}
