// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** How fast the window's plot of a long capture moves. */
package org.probeleaf.benchmark.pan;
