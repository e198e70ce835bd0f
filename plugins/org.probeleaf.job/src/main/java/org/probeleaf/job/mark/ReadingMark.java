// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.mark;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.probeleaf.job.expectation.Expectation;
import org.probeleaf.job.expectation.Verdict;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.schematic.quantity.BenchValue;
import org.probeleaf.schematic.quantity.Quantity;

/**
 * A value measured at a place.
 *
 * @param id          unique in its job
 * @param place       what the person named
 * @param page        1-based page of the anchor
 * @param at          the anchor, in points from the top left of the page as displayed
 * @param typed       the value as the person typed it
 * @param value       what was understood
 * @param remark      the rest of what was typed and any note on the reading; empty where there is none, never null
 * @param expectation what it should be, or null where nothing was said
 * @param verdict     what is to be said of it, or null without an expectation and a word of the person
 * @param when        when it was made
 * @param card        where the person moved its card, or null where it is laid out by itself
 */
public record ReadingMark(String id, Place place, int page, Point at, String typed, Quantity value, String remark,
        Expectation expectation, Verdict verdict, Instant when, Offset card) implements Mark {

    private static final Pattern DIGITS = Pattern.compile("-?\\d+(?:\\.\\d+)?");

    /**
     * A new reading, judged against its expectation. Where the person says {@code good} or {@code bad}, in place of a
     * value or as the first word after it, that counts in place of the judgement.
     *
     * @param typed       the value as typed, with its remark ({@code "2.2V flat"})
     * @param note        a further remark; may be empty
     * @param expectation what it should be, or null
     * @throws IllegalArgumentException with one sentence for a person where {@code typed} is no value
     */
    public static ReadingMark of(Place place, Anchor anchor, String typed, String note, Expectation expectation,
            Instant when) {
        BenchValue read = expectation == null ? BenchValue.parse(typed) : BenchValue.parse(typed, expectation.kind());
        String remark = note.isBlank() ? read.remark()
                : read.remark().isEmpty() ? note.strip() : read.remark() + "; " + note.strip();
        Verdict judged = expectation == null ? null : expectation.judge(read.quantity());
        Verdict verdict = WordOfPerson.over(judged, read.quantity(), remark);
        return new ReadingMark(UUID.randomUUID().toString(), place, anchor.page(), anchor.at(), typed.strip(),
                read.quantity(), remark, expectation, verdict, when, null);
    }

    /**
     * The value as shown, with the digits that were typed: {@code 4.00 MHz} where the value alone would be
     * {@code 4 MHz}, for the digits say how closely it was read.
     */
    public String shown() {
        String text = value.text();
        Matcher full = DIGITS.matcher(typed.replace(',', '.'));
        Matcher brief = DIGITS.matcher(text);
        boolean sameNumber = full.lookingAt() && brief.lookingAt() && full.group().length() > brief.group().length()
                && new BigDecimal(full.group()).compareTo(new BigDecimal(brief.group())) == 0;
        return sameNumber ? full.group() + text.substring(brief.end()) : text;
    }

    @Override
    public ReadingMark withCard(Offset other) {
        return new ReadingMark(id, place, page, at, typed, value, remark, expectation, verdict, when, other);
    }
}
