// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** Sheets of any size, drawn by us together with their netlists. */
package org.probeleaf.benchmark.sheet;
