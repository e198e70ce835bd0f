// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** How long it takes to build the signal network of a large board and to ask it. */
package org.probeleaf.benchmark.trace;
