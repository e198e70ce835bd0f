// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.format;

/**
 * What a column of a text is.
 *
 * @param role   what it holds
 * @param name   of the channel
 * @param unit   of its values, without prefix; empty where nothing tells
 * @param factor what one of the file's units is in {@code unit}
 * @param clock  for a channel, the index of its time column among the columns; -1 where there is none
 * @param units  for a channel, the index of the column in which each row names its unit; -1 where there is none
 */
record Column(Role role, String name, String unit, double factor, int clock, int units) {

    /** What a column may hold. */
    enum Role {
        SKIP, TIME, INDEX, VALUE
    }

    static final Column SKIP = new Column(Role.SKIP, "", "", 1, -1, -1);
}
