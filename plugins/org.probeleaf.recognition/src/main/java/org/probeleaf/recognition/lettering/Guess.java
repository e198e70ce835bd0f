// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.lettering;

/**
 * What a letter may be.
 *
 * @param letter the letter
 * @param score  how well it fits, 1 at most
 */
record Guess(char letter, double score) {
}
