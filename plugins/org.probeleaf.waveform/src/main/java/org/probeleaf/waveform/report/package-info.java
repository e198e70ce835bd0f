// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** All that is said of a capture at once: figures, verdicts, video, the difference from a reference. */
package org.probeleaf.waveform.report;
