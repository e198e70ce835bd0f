// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/**
 * What a person says about the reading of a sheet, and how it is put to a netlist. {@code Corrections.apply} takes a
 * netlist as recognised and the corrections in the order they were made, and gives the netlist that a person wants to
 * see. Corrections are pinned to spots on the sheet, so that they hold for another reading of the same sheet too.
 */
package org.probeleaf.recognition.correction;
