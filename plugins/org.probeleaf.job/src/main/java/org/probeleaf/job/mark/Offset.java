// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.mark;

/**
 * Where a card stands relative to what it is pinned to.
 *
 * @param dx points from the anchor to the card's left edge, rightwards
 * @param dy points from the anchor to the card's top edge, downwards
 */
public record Offset(double dx, double dy) {
}
