// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.follow;

import org.probeleaf.trace.TracedPin;

/**
 * Why a signal is not followed further, at a net as a whole or at one of its pins.
 *
 * @param kind   why
 * @param at     the pin at which it ends, or null where it ends at the net as a whole
 * @param count  how many, for {@link StopKind#FAN_OUT} and {@link StopKind#BUS}; else 0
 * @param reason the same in plain words, for the technician
 */
public record Stop(StopKind kind, TracedPin at, int count, String reason) {

    static Stop ofNet(StopKind kind, String reason) {
        return new Stop(kind, null, 0, reason);
    }

    static Stop ofPin(StopKind kind, TracedPin at, String reason) {
        return new Stop(kind, at, 0, reason);
    }
}
