// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** What was read at a place over time: the list, its trend, and what can be done to a reading. */
package org.probeleaf.workbench.reading;
