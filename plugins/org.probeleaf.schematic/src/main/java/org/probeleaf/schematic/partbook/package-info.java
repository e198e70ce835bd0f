// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** What is known of parts beyond the drawing: classes by designator, pin names and directions by type. */
package org.probeleaf.schematic.partbook;
