// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.simulation;

import org.probeleaf.diagnosis.circuit.Terminal;
import org.probeleaf.diagnosis.fault.FaultKind;

/**
 * One possible fault of a part.
 *
 * @param ref      designator of the part
 * @param part     index of the part
 * @param terminal the pin, or null where it is the part as a whole
 * @param beside   what the pin is joined to, or null
 * @param kind     what kind of fault
 * @param text     in words, without the part ({@code "pin 8 stuck low"})
 * @param effect   what it does
 * @param prior    its weight before anything was seen
 */
public record Fault(String ref, int part, Terminal terminal, String beside, FaultKind kind, String text, Effect effect,
        double prior) {

    /** Number or name of the pin, or null. */
    public String pin() {
        return terminal == null ? null : terminal.label();
    }

    /** The same for the same fault of the same part, whatever else is otherwise on the board. */
    public String key() {
        return String.join("|", ref, String.valueOf(pin()), kind.name(), String.valueOf(beside),
                effect instanceof Effect.Sees ? "in" : "");
    }
}
