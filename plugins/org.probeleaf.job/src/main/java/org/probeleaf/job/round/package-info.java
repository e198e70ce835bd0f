// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** A probe round: the pins of one part, and what is to be seen at each. */
package org.probeleaf.job.round;
