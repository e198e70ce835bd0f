// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** What the readings of a job say to the diagnosis: good, bad, low or high, on the board as it was when they were taken. */
package org.probeleaf.job.observation;
