// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.expectation;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.probeleaf.schematic.quantity.BenchValue;
import org.probeleaf.schematic.quantity.Quantity;
import org.probeleaf.schematic.quantity.QuantityKind;

/** Reads expectations: tries a logic family, a range, a tolerance and a state, in this order. */
final class ExpectationParser {

    private static final Pattern KNOWN_GOOD = Pattern.compile("(?i)(?:known[ -])?good:?\\s+(.+)");
    private static final Pattern RANGE = Pattern.compile("(.+?)\\s*(?:\\.\\.\\.?|\u2026)\\s*(.+)");
    private static final Pattern TOLERANCE = Pattern.compile("(.+?)\\s*\u00b1\\s*(.+)");
    private static final Pattern PERCENT = Pattern.compile("(\\d+(?:[.,]\\d+)?)\\s*%");
    private static final Pattern BARE = Pattern.compile("[-+\u2212]?[\\d.,]+");

    private ExpectationParser() {
    }

    static Expectation parse(String text) {
        String t = text.strip().replaceFirst("\\s*\\+/?-\\s*", "\u00b1");
        Matcher good = KNOWN_GOOD.matcher(t);
        if (good.matches()) {
            return knownGood(good.group(1));
        }
        Optional<LogicFamily> family = LogicFamily.named(t);
        if (family.isPresent()) {
            return new FamilyLevels(family.get());
        }
        Matcher range = RANGE.matcher(t);
        if (range.matches()) {
            return range(range.group(1), range.group(2), t);
        }
        Matcher tolerance = TOLERANCE.matcher(t);
        if (tolerance.matches()) {
            return tolerance(tolerance.group(1), tolerance.group(2), t);
        }
        try {
            BenchValue state = BenchValue.parse(t);
            if (state.quantity().kind().isState() && state.remark().isEmpty()) {
                return new Tolerance(state.quantity(), 0, t);
            }
        } catch (IllegalArgumentException e) {
            throw refusal(text, e);
        }
        throw refusal(text, null);
    }

    /** The value of a board that works; ten per cent to either side are taken where nothing is said (common practice). */
    private static Expectation knownGood(String value) {
        boolean bare = !value.contains("\u00b1");
        Expectation said = bare && !state(value) ? parse(value + "\u00b110%") : parse(value);
        return said instanceof Tolerance t ? new Tolerance(t.nominal(), t.margin(), "known good " + t.text()) : said;
    }

    private static boolean state(String text) {
        return BenchValue.parse(text).quantity().kind().isState();
    }

    private static IllegalArgumentException refusal(String text, Exception cause) {
        return new IllegalArgumentException("\"" + text.strip() + "\" is no expectation; write it like 5V\u00b15%,"
                + " 4.75V..5.25V, H, or a logic family such as 74LS or 74HC", cause);
    }

    private static Range range(String lowText, String highText, String text) {
        Quantity high = whole(highText, QuantityKind.NUMBER);
        Quantity low = whole(lowText, high.kind());
        if (BARE.matcher(lowText).matches() && low.value() != 0 && scaled(highText, high)) {
            throw new IllegalArgumentException("\"" + text + "\" can be read in two ways; write the prefix at both"
                    + " ends, like 1k..2k");
        }
        QuantityKind kind = high.kind() == QuantityKind.NUMBER ? low.kind() : high.kind();
        if (low.kind() != kind && low.kind() != QuantityKind.NUMBER || kind.isState()) {
            throw new IllegalArgumentException("\"" + text + "\" is no range: " + low.text() + " and " + high.text()
                    + " are not two measures of one kind");
        }
        if (low.value() > high.value()) {
            throw new IllegalArgumentException("\"" + text + "\" runs downwards; write the lower end first");
        }
        return new Range(kind, low.value(), high.value(), text);
    }

    /** Whether a prefix stands behind the number, so that its digits alone are another number. */
    private static boolean scaled(String text, Quantity read) {
        Matcher digits = Pattern.compile("[+-]?[\\d.,]+").matcher(text);
        return digits.lookingAt() && Double.parseDouble(digits.group().replace(',', '.')) != read.value();
    }

    private static Tolerance tolerance(String nominalText, String marginText, String text) {
        Quantity nominal = whole(nominalText, QuantityKind.NUMBER);
        if (nominal.kind().isState()) {
            throw new IllegalArgumentException("a " + nominal.kind().title() + " has no tolerance; write it alone");
        }
        Matcher percent = PERCENT.matcher(marginText);
        if (percent.matches()) {
            double share = Double.parseDouble(percent.group(1).replace(',', '.')) / 100;
            return new Tolerance(nominal, Math.abs(nominal.value()) * share, text);
        }
        Quantity margin = whole(marginText, nominal.kind());
        if (margin.kind() != nominal.kind() && nominal.kind() != QuantityKind.NUMBER || margin.value() < 0) {
            throw new IllegalArgumentException("\"" + marginText + "\" is no tolerance for " + nominal.text()
                    + "; write it like 5% or in the same unit");
        }
        QuantityKind kind = nominal.kind() == QuantityKind.NUMBER ? margin.kind() : nominal.kind();
        return new Tolerance(Quantity.of(kind, nominal.value()), margin.value(), text);
    }

    private static Quantity whole(String text, QuantityKind kind) {
        BenchValue read = BenchValue.parse(text, kind);
        if (!read.remark().isEmpty()) {
            throw new IllegalArgumentException("\"" + text + "\" has more than a value in it; an expectation is like"
                    + " 5V\u00b15% or 4.75V..5.25V");
        }
        return read.quantity();
    }
}
