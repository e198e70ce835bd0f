// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis;

import org.probeleaf.diagnosis.fault.FaultKind;

/**
 * One way in which a suspect may be to blame.
 *
 * @param pin    number or name of the pin, or null where it is the part as a whole
 * @param kind   what kind of fault
 * @param fault  the same in words ({@code "pin 8 stuck low"})
 * @param weight its share of all that is suspected, 0 to 1
 */
public record PossibleFault(String pin, FaultKind kind, String fault, double weight) {
}
