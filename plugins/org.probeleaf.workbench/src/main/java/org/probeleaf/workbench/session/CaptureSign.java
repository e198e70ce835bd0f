// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.session;

import java.util.Optional;

import org.probeleaf.job.expectation.Outcome;
import org.probeleaf.job.mark.CaptureMark;
import org.probeleaf.waveform.judge.Judgement;

/** Whether a capture looks good, for a sign on its card. */
public final class CaptureSign {

    private CaptureSign() {
    }

    /** The sign of a capture's first trace; empty where it is not judged, or not yet. */
    public static Optional<Outcome> of(SheetSession session, CaptureMark mark) {
        LoadedTrace first = session.captures().get(mark).filter(c -> !c.traces().isEmpty()).map(c -> c.traces().get(0))
                .orElse(null);
        if (first == null || session.facts().isEmpty()) {
            return Optional.empty();
        }
        HeldAgainst by = session.captures().answers().heldAgainst(session.facts().get(), mark).forTrace(first);
        return session.captures().answers().judgement(first, by.thresholds()).flatMap(j -> of(first, j));
    }

    /** The sign of a judgement; empty where nobody said what it is to be judged by. What moves unseen by the next stage is bad. */
    public static Optional<Outcome> of(LoadedTrace trace, Judgement judgement) {
        boolean lost = Boolean.FALSE.equals(judgement.toggles()) && trace.measures() != null
                && trace.measures().levels() != null && trace.measures().levels().two();
        if (judgement.verdict().fault() || lost) {
            return Optional.of(Outcome.BAD);
        }
        return switch (judgement.verdict()) {
            case CLOCKING, TOGGLING -> judgement.toggles() == null ? Optional.empty()
                    : Optional.of(judgement.toggles() ? Outcome.GOOD : Outcome.BAD);
            case VIDEO -> Optional.ofNullable(trace.video().locks()).map(l -> l ? Outcome.GOOD : Outcome.BAD);
            default -> Optional.of(Outcome.UNSURE);
        };
    }
}
