// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.mark;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.probeleaf.job.expectation.Outcome;
import org.probeleaf.job.expectation.Verdict;
import org.probeleaf.schematic.quantity.Quantity;
import org.probeleaf.schematic.quantity.QuantityKind;

/** The technician's own verdict, which counts before the reckoned one. */
final class WordOfPerson {

    private static final Pattern WORD = Pattern.compile("(?i)(good|ok|okay|fine|bad|wrong|faulty)(?![\\p{L}\\p{N}-])[\\s,;:.]*(.*)");

    private static final String START = "said to be ";

    private WordOfPerson() {
    }

    /**
     * The verdict on a reading.
     *
     * @param judged what follows from the value, or null where nothing was expected
     * @param value  what was read
     * @param remark what was typed after it
     * @return the technician's where there is one, else {@code judged}
     */
    static Verdict over(Verdict judged, Quantity value, String remark) {
        Matcher word = WORD.matcher(remark);
        boolean alone = value.kind() == QuantityKind.CONDITION;
        if (!alone && !word.matches()) {
            return judged;
        }
        boolean good = alone ? value.value() == 1 : word.group(1).matches("(?i)good|ok|okay|fine");
        Outcome outcome = good ? Outcome.GOOD : Outcome.BAD;
        String why = alone ? remark : word.group(2).strip();
        return verdict(outcome, why, alone ? null : judged);
    }

    /** The verdict that a technician gives; what is known against it stands behind. */
    static Verdict verdict(Outcome outcome, String why, Verdict judged) {
        boolean against = judged != null && judged.outcome() != outcome;
        String word = outcome == Outcome.UNSURE ? "not certain" : outcome == Outcome.GOOD ? "good" : "bad";
        return new Verdict(outcome, START + word + (why.isEmpty() ? "" : ": " + why)
                + (against ? " (though " + judged.reason() + ")" : ""));
    }
}
