// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/**
 * The job: one {@code *.probeleaf} file that holds the sheets as they came, what was recognised on them and what was
 * found on the board. It is opened with {@code Job.open}, looked at through {@code Job.state}, changed with
 * {@code Job.apply}; what is applied is on disk before anyone hears of it.
 */
package org.probeleaf.job;
