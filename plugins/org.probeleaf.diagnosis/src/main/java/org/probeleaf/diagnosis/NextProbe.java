// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis;

import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.place.Place;

/**
 * Where to probe next.
 *
 * @param at             the pin to touch
 * @param net            its net, or null for a pin that is on none
 * @param expectedProbes how many probes it will take on the average, this one counted, until what is left cannot be
 *                       told apart by probing
 * @param why            in one sentence for a person
 */
public record NextProbe(Place at, Net net, double expectedProbes, String why) {
}
