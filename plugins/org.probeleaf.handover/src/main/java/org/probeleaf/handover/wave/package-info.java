// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** The captures of a job as they are handed over: read, measured, judged. */
package org.probeleaf.handover.wave;
