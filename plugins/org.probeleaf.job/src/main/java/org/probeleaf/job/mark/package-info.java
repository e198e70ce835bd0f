// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** What a person has put on the sheets: labels, notes, readings, each pinned to a place. */
package org.probeleaf.job.mark;
