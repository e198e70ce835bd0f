// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.lettering;

import java.util.List;

/**
 * A line of lettering as read.
 *
 * @param direction which way it is written
 * @param cells     its letters' places, in the order of writing
 * @param letters   the letter read at each place
 * @param text      what it says, with spaces
 * @param base      v of its base line
 * @param capital   height of its capitals in points
 */
record Line(Direction direction, List<Cell> cells, List<Guess> letters, String text, double base, double capital) {

    /** How well the letters fit, on the average. */
    double fit() {
        return letters.stream().mapToDouble(Guess::score).average().orElse(0);
    }
}
