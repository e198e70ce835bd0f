// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** What a job says of the unit on the bench: whose it is, what is wrong with it, what can hurt. */
package org.probeleaf.job.details;
