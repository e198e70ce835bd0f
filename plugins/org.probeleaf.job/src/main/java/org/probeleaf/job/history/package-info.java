// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** What was read at one place over time. */
package org.probeleaf.job.history;
