// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/**
 * The example sheet of Probeleaf: the TL-8 harbour tide logger of Tern Instruments, a firm that never was. Run
 * {@link org.probeleaf.example.tl8.TideLogger} to draw the sheet and write the netlist it was drawn from.
 */
package org.probeleaf.example.tl8;
