// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.expectation;

/** What is to be said of a reading. */
public enum Outcome {
    /** As it should be. */
    GOOD,
    /** Not as it should be. */
    BAD,
    /** Cannot be told. */
    UNSURE
}
