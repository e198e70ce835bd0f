// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis;

import java.util.List;

import org.probeleaf.diagnosis.fault.FaultKind;

/**
 * A part that may be to blame.
 *
 * @param ref    its designator
 * @param pin    number or name of the pin that is most to blame, or null where it is the part as a whole
 * @param kind   the likeliest kind of fault
 * @param fault  the likeliest fault in words ({@code "pin 8 stuck low"})
 * @param weight its share of all that is suspected, 0 to 1; over all suspects they add up to 1
 * @param why    in one sentence for a person
 * @param faults all its possible faults, the likeliest first; their weights add up to {@code weight}
 */
public record Suspect(String ref, String pin, FaultKind kind, String fault, double weight, String why,
        List<PossibleFault> faults) {

    public Suspect {
        faults = List.copyOf(faults);
    }
}
