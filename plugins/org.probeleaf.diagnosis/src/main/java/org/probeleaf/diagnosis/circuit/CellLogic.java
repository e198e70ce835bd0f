// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.circuit;

/** What an output does for the levels at its inputs. */
@FunctionalInterface
public interface CellLogic {

    /** An output that nothing is known of. */
    CellLogic UNKNOWN = in -> Level.UNKNOWN;

    /**
     * The level of the output.
     *
     * @param in levels of the inputs, in their order; none is {@link Level#OFF}
     * @return low, high or unknown, or {@link Level#OFF} where it has let go
     */
    int drive(int[] in);
}
