// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/**
 * Where the symbols are: the lines that are not wires are sorted into leads (straight lines that stick out, to which
 * wires come) and body ink; body ink that belongs together becomes a body.
 */
package org.probeleaf.recognition.symbol;
