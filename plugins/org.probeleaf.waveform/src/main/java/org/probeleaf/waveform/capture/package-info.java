// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
/** What was captured: channels of samples over time, digital traces with four states, and what drawing needs of them. */
package org.probeleaf.waveform.capture;
