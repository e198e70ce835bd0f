// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** The named changes of a job. Each knows what it does to the marks and how to say so. */
package org.probeleaf.job.change;
