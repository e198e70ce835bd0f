// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.mark;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.probeleaf.job.expectation.Expectation;
import org.probeleaf.job.expectation.Outcome;
import org.probeleaf.job.expectation.Verdict;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.schematic.quantity.BenchValue;
import org.probeleaf.schematic.quantity.Bound;
import org.probeleaf.schematic.quantity.Quantity;
import org.probeleaf.schematic.quantity.QuantityKind;
import org.probeleaf.schematic.quantity.Span;

/**
 * A value measured at a place.
 *
 * @param id            unique in its job
 * @param place         what the person named
 * @param page          1-based page of the anchor
 * @param at            the anchor, in points from the top left of the page as displayed
 * @param typed         the value as the person typed it, with its remark
 * @param value         what was understood
 * @param remark        the rest of what was typed and any note on the reading; empty where there is none, never null
 * @param circumstances conditions and instrument, never null
 * @param expectation   what it should be, or null where nothing was said
 * @param judged        what follows from value and expectation, or null without an expectation
 * @param verdict       what is to be said of it: the word of the person where there is one, else {@code judged}; or null
 * @param when          when it was made
 * @param card          where the person moved its card, or null where it is laid out by itself
 */
public record ReadingMark(String id, Place place, int page, Point at, String typed, Quantity value, String remark,
        Circumstances circumstances, Expectation expectation, Verdict judged, Verdict verdict, Instant when,
        Offset card) implements Mark {

    private static final Pattern DIGITS = Pattern.compile("-?\\d+(?:\\.\\d+)?");

    public ReadingMark {
        Objects.requireNonNull(circumstances);
    }

    /** As {@link #of(Place, Anchor, String, String, Circumstances, Expectation, Instant)}, with what the typed line says. */
    public static ReadingMark of(Place place, Anchor anchor, String typed, String note, Expectation expectation,
            Instant when) {
        return of(place, anchor, typed, note, Circumstances.NONE, expectation, when);
    }

    /**
     * A new reading, judged against its expectation. Where the person says {@code good} or {@code bad}, in place of a
     * value or as the first word after it, that counts in place of the judgement.
     *
     * @param typed         the value as typed, with remark and circumstances ({@code "2.2V flat @ reset held [scope]"})
     * @param note          a further remark; may be empty
     * @param circumstances said beside; what the typed line says counts first
     * @param expectation   what it should be, or null
     * @throws IllegalArgumentException with one sentence for a person where {@code typed} is no value
     */
    public static ReadingMark of(Place place, Anchor anchor, String typed, String note, Circumstances circumstances,
            Expectation expectation, Instant when) {
        return read(UUID.randomUUID().toString(), place, anchor, typed, note, circumstances, expectation, when, null);
    }

    private static ReadingMark read(String id, Place place, Anchor anchor, String typed, String note,
            Circumstances circumstances, Expectation expectation, Instant when, Offset card) {
        Circumstances.Typed line = Circumstances.typed(typed);
        Optional<Span> span = Span.of(line.rest()).map(s -> like(s, expectation));
        BenchValue read = span.map(s -> new BenchValue(s.middle(), s.remark())).orElseGet(() -> expectation == null
                ? BenchValue.parse(line.rest()) : BenchValue.parse(line.rest(), expectation.kind()));
        String remark = note.isBlank() ? read.remark()
                : read.remark().isEmpty() ? note.strip() : read.remark() + "; " + note.strip();
        Verdict judged = expectation == null ? null : span.map(expectation::judge)
                .orElseGet(() -> expectation.judge(read.quantity(), Bound.of(line.rest())));
        Verdict verdict = WordOfPerson.over(judged, read.quantity(), remark);
        return new ReadingMark(id, place, anchor.page(), anchor.at(), line.rest(), read.quantity(), remark,
                line.circumstances().or(circumstances), expectation, judged, verdict, when, card);
    }

    /** Ends without a unit are of the kind that is expected. */
    private static Span like(Span span, Expectation expectation) {
        boolean open = expectation != null && span.low().kind() == QuantityKind.NUMBER && !expectation.kind().isState();
        return !open ? span : new Span(Quantity.of(expectation.kind(), span.low().value()),
                Quantity.of(expectation.kind(), span.high().value()), span.remark());
    }

    /**
     * The ends between which the value moves, where it does not stand still ({@code 4.7-5.1V}); {@code value} is then half
     * way between them.
     */
    public Optional<Span> span() {
        return Span.of(typed).map(s -> new Span(Quantity.of(value.kind(), s.low().value()),
                Quantity.of(value.kind(), s.high().value()), s.remark())).filter(s -> s.middle().equals(value));
    }

    /**
     * This reading, typed anew: same place, moment and card, judged afresh; a word of the person that is not typed again
     * is gone.
     *
     * @throws IllegalArgumentException with one sentence for a person where {@code text} is no value
     */
    public ReadingMark typedAnew(String text, String note, Circumstances others, Expectation other) {
        return read(id, place, new Anchor(page, at), text, note, others, other, when, card);
    }

    /**
     * This reading with the person's verdict.
     *
     * @param outcome good, bad or unsure; null takes the person's word back, so that the judgement counts
     * @param why     the reason, empty where there is none
     */
    public ReadingMark withWord(Outcome outcome, String why) {
        Verdict said = outcome == null ? judged : WordOfPerson.verdict(outcome, why.strip(), judged);
        return new ReadingMark(id, place, page, at, typed, value, remark, circumstances, expectation, judged, said, when, card);
    }

    /** Whether the verdict is the person's, not what follows from the value. */
    public boolean overruled() {
        return verdict != null && !verdict.equals(judged);
    }

    /** The line that it can be typed with: value, remark and circumstances. */
    public String line() {
        return circumstances.isEmpty() ? typed : typed + " " + circumstances.text();
    }

    /**
     * The value as shown, with the digits that were typed: {@code 4.00 MHz} where the value alone would be
     * {@code 4 MHz}, for the digits say how closely it was read.
     */
    public String shown() {
        Optional<Span> span = span();
        if (span.isPresent()) {
            return Bound.of(typed).sign() + span.get().text();
        }
        String text = value.text();
        Matcher full = DIGITS.matcher(typed.replace(',', '.'));
        return Bound.of(typed).sign() + digits(text, full);
    }

    private static String digits(String text, Matcher full) {
        Matcher brief = DIGITS.matcher(text);
        boolean sameNumber = full.find() && brief.lookingAt() && full.group().length() > brief.group().length()
                && new BigDecimal(full.group()).compareTo(new BigDecimal(brief.group())) == 0;
        return sameNumber ? full.group() + text.substring(brief.end()) : text;
    }

    @Override
    public ReadingMark withCard(Offset other) {
        return new ReadingMark(id, place, page, at, typed, value, remark, circumstances, expectation, judged, verdict, when,
                other);
    }
}
