// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.follow;

/** Why a signal is not followed further. */
public enum StopKind {
    /** The net is a supply. */
    SUPPLY,
    /** The net is ground. */
    GROUND,
    /** From the net it would go to too many places. */
    FAN_OUT,
    /** The net is a bus: many parts put something on it by turns. */
    BUS,
    /** The net stands elsewhere in the tree. */
    SHOWN,
    /** As deep as was asked for. */
    DEPTH,
    /** As many nets as were asked for. */
    SIZE,
    /** It leaves the sheet by a connector. */
    CONNECTOR,
    /** What the part does with it is not known, or has a life of its own. */
    FUNCTION,
    /** Which of the part's pins belong together is not known. */
    PAIRS,
    /** It only switches three-state outputs on and off, or turns a transceiver round. */
    ENABLE,
    /** The output is switched off for good, by a pin on a supply. */
    DISABLED,
    /** An output that always drives the net has it, so that what comes through a passive part does not count. */
    DRIVEN,
    /** A diode conducts the other way only. */
    AGAINST,
    /** The other end of the part is on no net. */
    OPEN,
    /** It ends in a part that uses it or makes it: a loudspeaker, a crystal, a battery. */
    USED,
    /** Such parts were not to be followed. */
    NOT_ASKED
}
