// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.view;

import org.probeleaf.job.expectation.Outcome;

/** The icon that stands for a verdict. */
public final class VerdictIcons {

    private VerdictIcons() {
    }

    /** The icon of a verdict. */
    public static String of(Outcome outcome) {
        return switch (outcome) {
            case GOOD -> "verdict-good";
            case BAD -> "verdict-bad";
            case UNSURE -> "verdict-unsure";
        };
    }
}
