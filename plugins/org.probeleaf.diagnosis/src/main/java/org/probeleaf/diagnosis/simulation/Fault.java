// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.simulation;

import org.probeleaf.diagnosis.circuit.Terminal;
import org.probeleaf.diagnosis.fault.FaultKind;

/**
 * One possible fault of a part.
 *
 * @param part     index of the part
 * @param terminal the pin, or null where it is the part as a whole
 * @param kind     what kind of fault
 * @param text     in words, without the part ({@code "pin 8 stuck low"})
 * @param effect   what it does
 * @param prior    its weight before anything was seen
 */
public record Fault(int part, Terminal terminal, FaultKind kind, String text, Effect effect, double prior) {
}
