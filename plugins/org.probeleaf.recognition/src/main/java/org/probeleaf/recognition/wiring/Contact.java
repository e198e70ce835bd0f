// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.wiring;

import org.probeleaf.schematic.geometry.Point;

/**
 * A place where a conductor meets a body.
 *
 * @param body    id of the body
 * @param segment number of the conductor's segment that meets it
 * @param inner   the place on the body
 * @param outer   where a wire meets the pin: the far end of a lead, else the same place
 */
public record Contact(int body, int segment, Point inner, Point outer) {
}
