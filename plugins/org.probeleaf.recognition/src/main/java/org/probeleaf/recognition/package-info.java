// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** From the primitives of a drawing's pages to its netlist, with doubts. */
package org.probeleaf.recognition;
