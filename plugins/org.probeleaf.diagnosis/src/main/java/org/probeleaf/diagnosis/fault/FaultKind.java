// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.fault;

import java.util.Locale;

/** A way for a part to fail. */
public enum FaultKind {
    /** A pin stays low, whatever it should do: an output, or what an input takes in. */
    STUCK_LOW,
    /** A pin stays high. */
    STUCK_HIGH,
    /** A pin makes no contact: a broken bond, a dry joint, a tired socket; of a part in series, no way through. */
    OPEN,
    /** A part that only listens to a net, or bypasses it, pulls it low. */
    LOADS_LOW,
    /** A part that only listens to a net pulls it high. */
    LOADS_HIGH,
    /** A pin is joined to its neighbour on the part, or the two ends of a part to each other. */
    BRIDGED,
    /** The part does nothing sensible any more. */
    DEAD,
    /** Wrong in some way: one of several parts that are to blame together. */
    WRONG;

    /** The word for it in files ({@code "stuck-low"}). */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
