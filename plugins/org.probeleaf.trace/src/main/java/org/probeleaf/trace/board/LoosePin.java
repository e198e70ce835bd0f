// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.board;

import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;

/**
 * A pin that touches its pad or its track no longer.
 *
 * @param part its part, as it is on the board
 * @param pin  the pin, on the net that was joined to it since, or on none
 * @param pad  the net that it was on, as that is now, or null where the drawing has it on none
 * @param cut  whether a track is cut close to it; false where it is lifted
 */
public record LoosePin(Part part, Pin pin, Net pad, boolean cut) {
}
