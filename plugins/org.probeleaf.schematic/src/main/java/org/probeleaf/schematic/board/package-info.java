// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** What was done to the board on the bench, so that it differs from its drawing. */
package org.probeleaf.schematic.board;
