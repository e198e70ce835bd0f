// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/**
 * What each possible fault would show at each node. A state of a node is its level, where that is known, and how likely
 * it is that something is wrong there; observed nodes keep what was seen, so that each stretch between them is judged
 * by itself.
 */
package org.probeleaf.diagnosis.simulation;
