// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** Points and boxes in PDF points, origin at the top left corner of the displayed page, y downwards. */
package org.probeleaf.schematic.geometry;
