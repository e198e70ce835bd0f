// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.board;

/**
 * A part with another value than the drawing says.
 *
 * @param ref   its designator
 * @param drawn what the drawing says, or null
 * @param now   what it is
 */
public record ChangedValue(String ref, String drawn, String now) {
}
