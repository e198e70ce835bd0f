// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** Values as they are written on the bench, in and out; plain SI doubles in between. */
package org.probeleaf.schematic.quantity;
