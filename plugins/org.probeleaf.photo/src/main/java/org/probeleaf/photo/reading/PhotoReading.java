// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo.reading;

import org.probeleaf.photo.graticule.Graticule;
import org.probeleaf.photo.trace.FollowedTrace;
import org.probeleaf.waveform.format.Imported;

/**
 * What was made of a photograph.
 *
 * @param graticule where it lies
 * @param trace     what was followed
 * @param imported  the capture, and what was assumed, in words
 */
public record PhotoReading(Graticule graticule, FollowedTrace trace, Imported imported) {
}
