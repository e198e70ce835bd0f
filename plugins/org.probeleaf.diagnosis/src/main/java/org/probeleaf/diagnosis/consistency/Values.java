// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.consistency;

/** The values known so far, as a rule sees them. */
public interface Values {

    boolean known(int variable);

    /** The value of a known variable. */
    int value(int variable);

    /**
     * Draws a conclusion.
     *
     * @param because the known variables that it follows from, together with the rule
     */
    void conclude(int variable, int value, int... because);
}
