// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** Checksums, by which a file is known again. */
package org.probeleaf.schematic.checksum;
